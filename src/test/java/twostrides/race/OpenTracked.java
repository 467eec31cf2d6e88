package twostrides.race;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Real games in which every skater was tracked (open data), where their folders are present. The
 * files never enter the project. More games may lie in more folders of the same kind.
 */
final class OpenTracked {

  static final Path FOLDER =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  private OpenTracked() {}

  /** Skips the tests of a class, and says so, where no such folder is present. */
  static void need() {
    boolean there = Files.isDirectory(FOLDER.resolve("tracked-2023"));
    String absent = "no tracked games at " + FOLDER + " (set -Dtwostrides.openData)";
    if (!there) {
      System.err.println("SKIPPED: " + absent);
    }
    assumeTrue(there, absent);
  }

  /** The rows of a table of every such folder, its keys made one by the folder's name. */
  static List<CSVRecord> csv(Path folder, String name) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(folder.resolve(name), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  /** Folders with tracked games, by name. */
  static List<Path> folders() throws IOException {
    try (Stream<Path> list = Files.list(FOLDER)) {
      return list.filter(f -> f.getFileName().toString().startsWith("tracked-")).sorted().toList();
    }
  }

  /**
   * A row and the rows of a second table that name it.
   *
   * @param row the row
   * @param others the others, in order
   */
  record Joined(CSVRecord row, List<CSVRecord> others) {}

  /**
   * The rows of a table with those of a second one that name them.
   *
   * @param name the table
   * @param others the second table
   * @param key the column that names a row, the same in both
   */
  static List<Joined> joined(String name, String others, String key) throws IOException {
    List<Joined> out = new ArrayList<>();
    for (Path folder : folders()) {
      Map<String, List<CSVRecord>> of =
          csv(folder, others).stream().collect(Collectors.groupingBy(r -> r.get(key)));
      for (CSVRecord r : csv(folder, name)) {
        out.add(new Joined(r, of.getOrDefault(r.get(key), List.of())));
      }
    }
    return out;
  }

  /** A skater of a row, in the frame of the team that has or had the puck. */
  static Sighting sighting(CSVRecord r) {
    boolean known = !r.get("vx_m_s").isEmpty();
    double vx = known ? number(r, "vx_m_s") : 0;
    double vy = known ? number(r, "vy_m_s") : 0;
    double over = Math.max(1, Math.hypot(vx, vy) / (Racer.FASTEST - 0.1));
    return new Sighting(
        new Racer(
            !r.get("side").equals("opponent"),
            number(r, "x_m"),
            number(r, "y_m"),
            vx / over,
            vy / over),
        known);
  }

  /** Level of play of a game: the women's of February 2024, else men. */
  static SkaterLevel level(String game) {
    return game.startsWith("2024-02-25") ? SkaterLevel.ELITE_WOMEN : SkaterLevel.ELITE_MEN;
  }

  static double number(CSVRecord r, String column) {
    return Double.parseDouble(r.get(column));
  }
}
