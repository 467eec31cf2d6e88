package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.demo.DemoGame;
import twostrides.demo.DemoLeague;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;

/**
 * The pipeline against simulated games whose truth is known: what the simulator decided before it
 * wrote its rows. The simulator shares no deciding code with the pipeline.
 */
class DemoTruthTest {

  private static final int GAMES = 24;
  private static final long SEED = 20311004;

  /** The definition of done: at least 99 % right on a clean season. */
  private static final double RIGHT = 0.99;

  @RegisterExtension static final Printed FIGURES = new Printed();

  /** Icings found and others taken for them where no stoppage is written, of the icings. */
  private static final double HIDDEN_RECALL = 0.9;

  private static final double HIDDEN_WRONG = 0.05;

  @TempDir static Path dir;

  private static twostrides.season.Season tables;
  private static List<DemoGame> games;

  @BeforeAll
  static void simulate() throws IOException, SheetException {
    games = DemoLeague.simulate(GAMES, SEED).games();
    for (DemoGame g : games) {
      Files.writeString(dir.resolve(g.fileStem() + ".csv"), g.sheetCsv());
    }
    SheetsRead season =
        SeasonReader.read(
            SheetFiles.find(List.of(dir.toString())), Optional.empty(), false, n -> {});
    assertEquals(List.of(), season.setAside());
    assertEquals(GAMES, season.games().size());
    tables =
        twostrides.season.Season.of(
            season.games(), season.tagged(), Settings.DEFAULT, SkatersAtRelease.NONE);
  }

  @Test
  void waysOutAndMarksAtCenterAndCausesAreRight() throws IOException {
    Table exits = tables.exits();
    Map<String, Deque<Integer>> ours = new HashMap<>();
    for (int i = 0; i < exits.rowCount(); i++) {
      ours.computeIfAbsent(
              key(
                  text(exits, Columns.GAME, i),
                  exits.intColumn(Columns.PERIOD).getInt(i),
                  text(exits, Columns.TEAM, i),
                  (long) exits.doubleColumn(Columns.ELAPSED_S).getDouble(i)),
              k -> new ArrayDeque<>())
          .add(i);
    }
    Score way = new Score("way out");
    Score center = new Score("mark at center");
    Score cause = new Score("restart cause");
    Score player = new Score("player");
    Score strength = new Score("strength");
    int truths = 0;
    for (DemoGame g : games) {
      for (CSVRecord t : csv(g.exitTruthCsv())) {
        truths++;
        String key =
            key(
                t.get("game"),
                Integer.parseInt(t.get("period")),
                t.get("team"),
                Long.parseLong(t.get("start_elapsed_s")));
        Deque<Integer> found = ours.getOrDefault(key, new ArrayDeque<>());
        if (found.isEmpty()) {
          way.miss(key + ": no attempt");
          cause.miss(key + ": no attempt");
          continue;
        }
        int i = found.removeFirst();
        way.check(key, t.get("way_out"), text(exits, Columns.WAY_OUT, i));
        center.check(key, t.get("at_center"), text(exits, Columns.AT_CENTER, i));
        cause.check(key, t.get("cause"), simple(text(exits, Columns.RESTART_CAUSE, i)));
        player.check(key, t.get("player"), text(exits, Columns.PLAYER, i));
        strength.check(key, t.get("strength"), text(exits, Columns.STRENGTH, i));
      }
    }

    assertEquals(truths, exits.rowCount(), "attempts");
    for (Score s : List.of(way, center, cause, player, strength)) {
      s.holds();
    }
  }

  @Test
  void everyReleaseShortOfCenterIsFoundWithItsCause() throws IOException {
    Table releases = tables.releases();
    Map<String, Integer> ours = new HashMap<>();
    for (int i = 0; i < releases.rowCount(); i++) {
      ours.put(
          key(
                  text(releases, Columns.GAME, i),
                  releases.intColumn(Columns.PERIOD).getInt(i),
                  text(releases, Columns.TEAM, i),
                  (long) releases.doubleColumn(Columns.RELEASE_ELAPSED_S).getDouble(i))
              + text(releases, Columns.PLAYER, i),
          i);
    }
    Score kind = new Score("kind");
    Score cause = new Score("icing");
    int icings = 0;
    for (DemoGame g : games) {
      for (CSVRecord t : csv(g.releaseTruthCsv())) {
        String key =
            key(
                    t.get("game"),
                    Integer.parseInt(t.get("period")),
                    t.get("team"),
                    Long.parseLong(t.get("release_elapsed_s")))
                + t.get("player");
        Integer i = ours.get(key);
        if (i == null) {
          kind.miss(key + ": no release");
          continue;
        }
        icings += t.get("cause").equals("icing") ? 1 : 0;
        kind.check(key, t.get("kind"), text(releases, Columns.KIND, i));
        cause.check(
            key,
            String.valueOf(t.get("cause").equals("icing")),
            String.valueOf(text(releases, Columns.RESTART_CAUSE, i).startsWith("icing")));
      }
    }
    assertTrue(icings > 5 * GAMES, "icings in the truth: " + icings);
    kind.holds();
    cause.holds();
  }

  /**
   * The same season with every stoppage row taken out: causes must then be inferred from the
   * face-offs. Those missed are pucks that the demo sends the length quicker than nineteen in
   * twenty real ones.
   */
  @Test
  void icingsAreInferredWhereNoStoppageIsWritten(@TempDir Path bare)
      throws IOException, SheetException {
    for (DemoGame g : games) {
      StringBuilder sheet = new StringBuilder();
      g.sheetCsv()
          .lines()
          .filter(l -> l.startsWith("game,") || !l.contains(",stoppage,"))
          .forEach(l -> sheet.append(l).append('\n'));
      Files.writeString(bare.resolve(g.fileStem() + ".csv"), sheet);
    }
    SheetsRead season =
        SeasonReader.read(
            SheetFiles.find(List.of(bare.toString())), Optional.empty(), false, n -> {});
    Table inferred =
        twostrides.season.Season.of(
                season.games(), season.tagged(), Settings.DEFAULT, SkatersAtRelease.NONE)
            .restarts();
    Map<String, String> written = new HashMap<>();
    for (int i = 0; i < tables.restarts().rowCount(); i++) {
      written.put(
          restartKey(tables.restarts(), i), text(tables.restarts(), Columns.RESTART_CAUSE, i));
    }
    int icings = 0;
    int found = 0;
    int wrong = 0;
    for (int i = 0; i < inferred.rowCount(); i++) {
      boolean truth =
          written
              .getOrDefault(restartKey(inferred, i), "")
              .equals(RestartCause.ICING_WRITTEN.label());
      boolean ours =
          text(inferred, Columns.RESTART_CAUSE, i).equals(RestartCause.ICING_INFERRED.label());
      icings += truth ? 1 : 0;
      found += truth && ours ? 1 : 0;
      wrong += !truth && ours ? 1 : 0;
    }
    FIGURES.say(
        "without stoppage rows: %d of %d icings inferred, %d others taken for icings",
        found, icings, wrong);
    assertTrue(found >= HIDDEN_RECALL * icings, found + " of " + icings);
    assertTrue(wrong <= HIDDEN_WRONG * icings, wrong + " wrongly inferred beside " + icings);
  }

  private static String restartKey(Table t, int i) {
    return text(t, Columns.GAME, i)
        + t.intColumn(Columns.PERIOD).getInt(i)
        + text(t, Columns.TEAM, i)
        + t.doubleColumn(Columns.RESTART_ELAPSED_S).getDouble(i);
  }

  private static String simple(String cause) {
    return cause.startsWith("icing") ? "icing" : cause.equals("penalty") ? "other" : cause;
  }

  private static String text(Table t, String column, int row) {
    return Cells.text(t, column, row).orElse("");
  }

  private static String key(String game, int period, String team, long elapsed) {
    return game + " P" + period + " " + team + " " + elapsed + " s ";
  }

  private static List<CSVRecord> csv(String text) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return parser.getRecords();
    }
  }

  /** So many right of so many, with the first few that are not. */
  private static final class Score {
    private final String what;
    private int right;
    private int all;
    private final List<String> wrong = new ArrayList<>();

    Score(String what) {
      this.what = what;
    }

    void check(String where, String truth, String ours) {
      all++;
      if (truth.equals(ours)) {
        right++;
      } else if (wrong.size() < 20) {
        wrong.add(where + ": " + truth + ", here " + ours);
      }
    }

    void miss(String where) {
      all++;
      if (wrong.size() < 20) {
        wrong.add(where);
      }
    }

    void holds() {
      FIGURES.say("%s: %d of %d as simulated", what, right, all);
      assertTrue(
          right >= RIGHT * all,
          what + ": " + right + " of " + all + " " + String.join("\n", wrong));
    }
  }
}
