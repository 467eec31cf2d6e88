package twostrides.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the written text back, as anybody would who has only the files. */
final class Tables {
  private static final int PERIOD_S = 1200;

  private Tables() {}

  static List<CSVRecord> parse(String csv) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(csv, format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** 60 games: five seeds of twelve. */
  static List<DemoGame> manyGames() {
    List<DemoGame> games = new ArrayList<>();
    for (long seed = 1; seed <= 5; seed++) {
      games.addAll(DemoLeague.simulate(12, seed).games());
    }
    return games;
  }

  static int elapsed(CSVRecord row) {
    String[] parts = row.get("clock").split(":", -1);
    return PERIOD_S - Integer.parseInt(parts[0]) * 60 - Integer.parseInt(parts[1]);
  }

  static boolean is(CSVRecord row, String column, String word) {
    return row.get(column).equals(word);
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static boolean has(CSVRecord row, String column) {
    return !row.get(column).isEmpty();
  }

  /** The row of the release that a stoppage for icing ends; a whistle touch may stand between. */
  static int releaseBefore(List<CSVRecord> rows, int icing) {
    boolean theirs = !rows.get(icing - 1).get("team").equals(rows.get(icing).get("team"));
    return theirs ? icing - 2 : icing - 1;
  }
}
