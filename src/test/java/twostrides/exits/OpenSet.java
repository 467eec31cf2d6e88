package twostrides.exits;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.SheetsRead;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/**
 * The sets of open games that were read independently of this program, each through its own map and
 * with no hand in the sheets. Their files never enter the project; where the folder is not present
 * tests are skipped, and say so.
 */
enum OpenSet {
  WOMEN_2022("women-2022", "", ".events.csv", "womens-2022-open-data"),
  WOMEN_2018_19("women-2018-19", "women-2018-19/sheets", ".csv", "women-2018-19"),
  WOMEN_2023("women-2023", "women-2023/sheets", ".csv", "women-2023"),
  MEN_2024("men-2024", "men-2024/sheets", ".csv", "men-2024"),
  WOMEN_LEAGUE_2021("women-league-2021", "women-league-2021/sheets", ".csv", "women-league-2021");

  private static final Map<OpenSet, SheetsRead> SEASONS = new ConcurrentHashMap<>();
  private static final Map<OpenSet, twostrides.season.Season> TABLES = new ConcurrentHashMap<>();

  private final String folder;
  private final String sheets;
  private final String ending;
  private final String map;

  OpenSet(String folder, String sheets, String ending, String map) {
    this.folder = folder;
    this.sheets = sheets;
    this.ending = ending;
    this.map = map;
  }

  /** Skips the test, and says so, where the set is not present. */
  void need() {
    OpenData.need();
    boolean here = Files.isDirectory(OpenData.FOLDER.resolve(folder));
    if (!here) {
      System.err.println("SKIPPED: no open games at " + OpenData.FOLDER.resolve(folder));
    }
    assumeTrue(here, "no open games at " + folder);
  }

  /** The set's games. */
  SheetsRead season() throws IOException, SheetException {
    SheetsRead known = SEASONS.get(this);
    if (known == null) {
      known = read(OpenData.FOLDER.resolve(sheets), ending, map);
      SEASONS.put(this, known);
    }
    return known;
  }

  /** The set's tables, by the book and the level of the open games. */
  twostrides.season.Season tables() throws IOException, SheetException {
    twostrides.season.Season known = TABLES.get(this);
    if (known == null) {
      SheetsRead s = season();
      known =
          twostrides.season.Season.of(
              s.games(), s.tagged(), OpenData.SETTINGS, SkatersAtRelease.NONE);
      TABLES.put(this, known);
    }
    return known;
  }

  /**
   * Reads the sheets of a folder through one of our maps.
   *
   * @param dir the folder
   * @param ending how its sheets end
   * @param map name of the map
   */
  static SheetsRead read(Path dir, String ending, String map) throws IOException, SheetException {
    List<Path> files;
    try (Stream<Path> all = Files.list(dir)) {
      files = all.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
    return SeasonReader.read(files, Optional.of(map(map)), false, n -> {});
  }

  private static SheetMap map(String name) throws SheetException {
    return SheetMap.read(Path.of("docs/maps/" + name + ".toml"), SheetForms.ALL);
  }

  /** The set's map. */
  SheetMap map() throws SheetException {
    return map(map);
  }

  /** The readings of own-zone restarts. */
  List<CSVRecord> restarts() throws IOException {
    return csv(OpenData.FOLDER.resolve(folder).resolve("own_zone_restarts.csv"));
  }

  /** The readings of exit attempts. */
  List<CSVRecord> exits() throws IOException {
    return csv(OpenData.FOLDER.resolve(folder).resolve("exit_attempts.csv"));
  }

  /** A game's id as the readings write it. */
  static String game(String id) {
    return id.replace("Team ", "").replace(' ', '-');
  }

  /**
   * Disagreements that docs/checks.md does not list.
   *
   * @param said disagreements, each beginning with game, period and clock
   */
  static List<String> unlisted(List<String> said) throws IOException {
    String page = Files.readString(Path.of("docs/checks.md"));
    return said.stream()
        .filter(
            d -> !page.contains("| " + d.replaceFirst("^(.*?, \\d+, \\d+:\\d\\d),.*", "$1") + " |"))
        .toList();
  }

  /** The rows of a file. */
  static List<CSVRecord> csv(Path file) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  @Override
  public String toString() {
    return folder;
  }
}
