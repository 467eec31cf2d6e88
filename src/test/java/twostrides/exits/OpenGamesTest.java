package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.Table;
import twostrides.game.Season;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/**
 * The pipeline against three real games (open data, women's internationals of February 2022) and
 * two readings of them made independently of it. Skipped, and said so, where the folder is not
 * present: its files never enter the project.
 *
 * <p>The disagreements are listed with their reasons in docs/checks.md.
 */
class OpenGamesTest {

  private static final Path DATA =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  private static Season season;
  private static ExitTables tables;

  @BeforeAll
  static void read() throws IOException, SheetException {
    if (!Files.isDirectory(DATA)) {
      System.err.println("SKIPPED: no open games at " + DATA + " (set -Dtwostrides.openData)");
    }
    assumeTrue(Files.isDirectory(DATA), "no open games at " + DATA);
    List<Path> sheets;
    try (Stream<Path> files = Files.list(DATA)) {
      sheets = files.filter(f -> f.toString().endsWith(".events.csv")).sorted().toList();
    }
    SheetMap map = SheetMap.read(Path.of("docs/maps/womens-2022-open-data.toml"), SheetForms.ALL);
    season = SeasonReader.read(sheets, Optional.of(map), false, n -> {});
    tables = Pipeline.run(season.games(), season.tagged(), Settings.DEFAULT);
  }

  @Test
  void everyRowIsAccountedFor() {
    assertEquals(5295, season.rowsRead());
    assertEquals(season.rowsRead(), season.rowsUsed() + season.setAside().size());
    assertEquals(List.of(), season.setAside());
  }

  /** Two writings of the same thing in one sheet: manpower beside each row, and penalty rows. */
  @Test
  void manpowerColumnsAgreeWithThePenaltyRows() {
    Table m = tables.manpower();
    int disagree = 0;
    int turned = 0;
    for (int i = 0; i < m.rowCount(); i++) {
      int rows = m.intColumn(Columns.ROWS).getInt(i);
      disagree += rows;
      String columns = m.stringColumn(Columns.BY_COLUMNS).get(i);
      String[] skaters = m.stringColumn(Columns.BY_PENALTIES).get(i).split(" on ", -1);
      turned += columns.equals(skaters[1] + " on " + skaters[0]) ? rows : 0;
    }
    System.err.println(
        "manpower: "
            + disagree
            + " of "
            + tables.manpowerCompared()
            + " rows disagree, "
            + turned
            + " of them the other way round");
    assertTrue(tables.manpowerCompared() > 5000);
    assertTrue(disagree <= 0.02 * tables.manpowerCompared(), disagree + " rows");
  }

  /** Every icing released within 5 m of center is in the flags table, flagged or with a reason. */
  @Test
  void everyIcingNearCenterIsFlaggedOrHasItsReason() throws IOException {
    int near = 0;
    for (CSVRecord r : csv("own_zone_restarts.csv")) {
      double shortBy = (100 - Double.parseDouble(r.get("x_ft"))) * 0.3048;
      if (!r.get("reading").equals("icing") || shortBy > 5) {
        continue;
      }
      near++;
      Table f = tables.flags();
      int elapsed = 1200 - Integer.parseInt(r.get("release_clock_s"));
      boolean found = false;
      for (int i = 0; i < f.rowCount(); i++) {
        found |=
            f.stringColumn(Columns.GAME).get(i).equals(r.get("game"))
                && f.intColumn(Columns.PERIOD).getInt(i) == Integer.parseInt(r.get("period"))
                && Math.round(f.doubleColumn(Columns.RELEASE_ELAPSED_S).getDouble(i)) == elapsed
                && !f.stringColumn(Columns.FLAG_SENTENCE).get(i).isEmpty();
      }
      assertTrue(found, "no flag or reason for " + r);
    }
    System.err.println(
        "icings released within 5 m of center: " + near + ", all in the flags table");
    assertTrue(near > 0);
  }

  @Test
  void ownZoneRestartsAndTheirIcingsAgree() throws IOException {
    List<String> disagree = new ArrayList<>();
    int decided = 0;
    for (CSVRecord r : csv("own_zone_restarts.csv")) {
      Optional<Integer> row = restartRow(r);
      assertTrue(row.isPresent(), "no restart for " + r);
      String reading = r.get("reading");
      if (reading.equals("unclear")) {
        continue;
      }
      decided++;
      String cause = tables.restarts().stringColumn(Columns.RESTART_CAUSE).get(row.get());
      boolean icing = cause.startsWith("icing");
      if (icing != reading.equals("icing")) {
        disagree.add(where(r, "release_clock_s") + " reads " + reading + ", here " + cause);
      }
    }
    System.err.println(
        "own-zone restarts: " + decided + " decided readings, disagreements " + disagree);
    assertTrue(disagree.size() <= 0.05 * decided, disagree.toString());
  }

  @Test
  void exitAttemptsAgree() throws IOException {
    Map<String, List<Integer>> ours = new HashMap<>();
    Table exits = tables.exits();
    for (int i = 0; i < exits.rowCount(); i++) {
      ours.computeIfAbsent(
              key(
                  exits.stringColumn(Columns.GAME).get(i),
                  exits.intColumn(Columns.PERIOD).getInt(i),
                  exits.stringColumn(Columns.TEAM).get(i),
                  1200 - (int) Math.round(exits.doubleColumn(Columns.ELAPSED_S).getDouble(i))),
              k -> new ArrayList<>())
          .add(i);
    }
    List<String> disagree = new ArrayList<>();
    int strengths = 0;
    int same = 0;
    int total = 0;
    for (CSVRecord r : csv("exit_attempts.csv")) {
      total++;
      List<Integer> found =
          ours.getOrDefault(
              key(
                  r.get("game"),
                  Integer.parseInt(r.get("period")),
                  r.get("team"),
                  Integer.parseInt(r.get("start_s"))),
              List.of());
      if (found.isEmpty()) {
        disagree.add(where(r, "start_s") + " reads " + marks(r) + ", here no attempt starts then");
        continue;
      }
      int i = found.remove(0);
      String here =
          CaseFilesTest.cell(exits, Columns.WAY_OUT, i)
              + "/"
              + CaseFilesTest.cell(exits, Columns.AT_CENTER, i);
      if (here.equals(marks(r))) {
        same++;
        strengths +=
            CaseFilesTest.cell(exits, Columns.STRENGTH, i).equals(r.get("strength")) ? 1 : 0;
      } else {
        disagree.add(where(r, "start_s") + " reads " + marks(r) + ", here " + here);
      }
    }
    List<String> extra = new ArrayList<>();
    ours.forEach(
        (k, v) ->
            v.forEach(i -> extra.add(k + " " + CaseFilesTest.cell(exits, Columns.WAY_OUT, i))));
    extra.sort(null);
    System.err.println(
        "exit attempts: "
            + same
            + " of "
            + total
            + " agree, strength in "
            + strengths
            + "; only here: "
            + extra);
    disagree.forEach(System.err::println);
    assertTrue(same >= 0.95 * total, same + " of " + total);
  }

  private static String marks(CSVRecord r) {
    return r.get("way_out") + "/" + r.get("at_center");
  }

  private static String where(CSVRecord r, String clock) {
    return r.get("game")
        + " period "
        + r.get("period")
        + " clock "
        + r.get(clock)
        + " "
        + r.get("team");
  }

  private static String key(String game, int period, String team, int clock) {
    return game + " period " + period + " " + team + " clock " + clock;
  }

  private static Optional<Integer> restartRow(CSVRecord r) {
    Table t = tables.restarts();
    for (int i = 0; i < t.rowCount(); i++) {
      if (t.stringColumn(Columns.GAME).get(i).equals(r.get("game"))
          && t.intColumn(Columns.PERIOD).getInt(i) == Integer.parseInt(r.get("period"))
          && t.stringColumn(Columns.TEAM).get(i).equals(r.get("team"))
          && t.doubleColumn(Columns.RESTART_ELAPSED_S).getDouble(i)
              == 1200 - Integer.parseInt(r.get("restart_clock_s"))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static List<CSVRecord> csv(String name) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(DATA.resolve(name), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }
}
