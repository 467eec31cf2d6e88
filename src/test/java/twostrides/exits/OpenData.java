package twostrides.exits;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import twostrides.game.Game;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.race.Delivery;
import twostrides.race.SkaterLevel;
import twostrides.rink.Units;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.IcingBook;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/**
 * Three real games (open data, women's internationals of February 2022), where their folder is
 * present. Its files never enter the project.
 */
final class OpenData {

  static final Path FOLDER =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  /** The level of these games. */
  static final SkaterLevel LEVEL = SkaterLevel.ELITE_WOMEN;

  /** The book of these games' rules. */
  static final IcingBook BOOK = Bookshelf.book("iihf");

  /** The games' level and book; seed and draws are the defaults. */
  static final Settings SETTINGS =
      Settings.DEFAULT
          .withBook(BOOK)
          .withRace(new RaceSettings(1, RaceSettings.DEFAULT_SIMULATIONS, LEVEL, 0.6));

  private OpenData() {}

  /** Skips the tests of a class, and says so, where the folder is not present. */
  static void need() {
    String absent = "no open games at " + FOLDER + " (set -Dtwostrides.openData)";
    if (!Files.isDirectory(FOLDER)) {
      System.err.println("SKIPPED: " + absent);
    }
    assumeTrue(Files.isDirectory(FOLDER), absent);
  }

  /** The games in the order of their dates. */
  static List<Game> games() throws IOException, SheetException {
    List<Path> sheets;
    try (Stream<Path> files = Files.list(FOLDER)) {
      sheets = files.filter(f -> f.toString().endsWith(".events.csv")).sorted().toList();
    }
    SheetMap map = SheetMap.read(Path.of("docs/maps/womens-2022-open-data.toml"), SheetForms.ALL);
    return SeasonReader.read(sheets, Optional.of(map), false, n -> {}).games();
  }

  /** The rows of a list of the folder. */
  static List<CSVRecord> csv(String name) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(FOLDER.resolve(name), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  /** Icings by the independent reading of own-zone restarts. */
  static List<CSVRecord> icings() throws IOException {
    return csv("women-2022/own_zone_restarts.csv").stream()
        .filter(r -> r.get("reading").equals("icing"))
        .toList();
  }

  /** Metres from center ice of a place along the rink in feet, as the sheets write it. */
  static double x(CSVRecord r) {
    return Units.FOOT.toMetres(Double.parseDouble(r.get("x_ft")) - 100);
  }

  /** Metres from the long axis of a place across the rink in feet, as the sheets write it. */
  static double y(CSVRecord r) {
    return Units.FOOT.toMetres(Double.parseDouble(r.get("y_ft")) - 42.5);
  }

  static boolean missedPass(CSVRecord r) {
    return r.get("action").equals("Play:f");
  }

  /** The default delivery of the level for a release of the list. */
  static Delivery delivery(CSVRecord r) {
    return (missedPass(r) ? Delivery.MISSED_PASS : Delivery.SENT).forLevel(LEVEL);
  }
}
