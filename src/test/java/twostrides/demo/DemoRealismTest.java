package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Whether simulated games look like the open games; the figures stand in docs/demo.md. */
class DemoRealismTest {
  private static List<DemoGame> games;
  private static final List<CSVRecord> ROWS = new ArrayList<>();
  private static final List<CSVRecord> EXITS = new ArrayList<>();
  private static final List<CSVRecord> RELEASES = new ArrayList<>();

  @BeforeAll
  static void play() {
    games = Tables.manyGames();
    for (DemoGame game : games) {
      ROWS.addAll(Tables.parse(game.sheetCsv()));
      EXITS.addAll(Tables.parse(game.exitTruthCsv()));
      RELEASES.addAll(Tables.parse(game.releaseTruthCsv()));
    }
  }

  @Test
  void attemptsForEachTeamAndPeriod() {
    within(44, 54, EXITS.size() / (games.size() * 6.0), "attempts a team a period");
    List<Integer> each = new ArrayList<>();
    for (DemoGame game : games) {
      Map<String, Integer> counts = new TreeMap<>();
      for (CSVRecord exit : Tables.parse(game.exitTruthCsv())) {
        counts.merge(exit.get("team") + exit.get("period"), 1, Integer::sum);
      }
      each.addAll(counts.values());
    }
    assertEquals(games.size() * 6, each.size());
    long usual = each.stream().filter(n -> n >= 35 && n <= 60).count();
    within(0.9, 1, usual / (double) each.size(), "share of team periods with 35 to 60 attempts");
  }

  @Test
  void waysOut() {
    within(33, 40, share("kept in", ""), "kept in");
    within(13.5, 18.5, share("carry", "gained"), "carry, gained");
    within(3, 6, share("carry", "released short"), "carry, released short");
    within(17.5, 23.5, share("pass", ""), "pass");
    within(7, 10.5, share("missed pass", ""), "missed pass");
    within(5.5, 8.5, share("long clearance", ""), "long clearance");
    within(5.5, 8.5, share("chip", ""), "chip");
  }

  @Test
  void waysOutComeInTheSameOrder() {
    // In the open games carry and pass are one point apart, and so are the three least: no order
    // within those.
    double carryOrPassLeast = Math.min(share("carry", ""), share("pass", ""));
    double carryOrPassMost = Math.max(share("carry", ""), share("pass", ""));
    assertTrue(share("kept in", "") > carryOrPassMost);
    for (String rest : List.of("missed pass", "long clearance", "chip")) {
      assertTrue(carryOrPassLeast > 1.5 * share(rest, ""), rest);
    }
    assertTrue(share("missed pass", "") > share("chip", ""));
  }

  @Test
  void icings() {
    long iced = stoppages("icing");
    within(6, 10, iced / (double) games.size(), "icings a game");
    long missed =
        RELEASES.stream()
            .filter(r -> r.get("cause").equals("icing") && r.get("kind").equals("missed_pass"))
            .count();
    within(0.32, 0.48, missed / (double) iced, "share of icings from missed passes");
  }

  @Test
  void stoppagesPenaltiesAndGoals() {
    within(4, 9, stoppages("penalty") / (double) games.size(), "penalties a game");
    within(4, 7, stoppages("goal") / (double) games.size(), "goals a game");
    within(3, 7, stoppages("offside") / (double) games.size(), "offsides a game");
    for (String rare : List.of("goalkeeper", "out_of_play", "net_off", "injury")) {
      assertTrue(stoppages(rare) > 0, rare);
    }
    assertEquals(games.size() * 3L, stoppages("period_end"));
  }

  @Test
  void rowsForEachGame() {
    long received = ROWS.stream().filter(r -> is(r, "pass", "complete")).count();
    double rows = ROWS.size() / (double) games.size();
    within(1_950, 2_350, rows, "rows a game");
    within(
        1_700,
        1_950,
        rows - received / (double) games.size(),
        "rows a game without those of passes received");
  }

  @Test
  void shorthandedTeamsClearLongAndAreNotIced() {
    List<CSVRecord> shorthanded =
        EXITS.stream().filter(e -> e.get("strength").equals("shorthanded")).toList();
    within(0.07, 0.14, shorthanded.size() / (double) EXITS.size(), "shorthanded share");
    long cleared =
        shorthanded.stream().filter(e -> e.get("way_out").equals("long clearance")).count();
    within(0.2, 0.4, cleared / (double) shorthanded.size(), "long clearances when shorthanded");
    assertEquals(
        0,
        shorthanded.stream()
            .filter(e -> e.get("way_out").equals("long clearance"))
            .filter(e -> e.get("cause").equals("icing"))
            .count());
  }

  @Test
  void shotsAtAnEmptyNetFromBehindCenterAreSometimesIced() {
    int iced = 0;
    int extra = 0;
    for (int i = 0; i + 1 < ROWS.size(); i++) {
      CSVRecord row = ROWS.get(i);
      extra += row.get("net_for_empty").equals("yes") ? 1 : 0;
      boolean fromAfar =
          is(row, "shot", "missed")
              && row.get("net_against_empty").equals("yes")
              && Tables.number(row, "x_m") < 0;
      iced += fromAfar && ROWS.get(i + 1).get("stoppage").equals("icing") ? 1 : 0;
    }
    assertTrue(extra > 100, "rows with an extra attacker: " + extra);
    assertTrue(iced >= 5, "iced shots at an empty net: " + iced);
  }

  @Test
  void playersDiffer() {
    List<CSVRecord> own =
        RELEASES.stream().filter(r -> r.get("team").equals("Glasswater Herons")).toList();
    long hasty = withTime(own, "4 ");
    long steady = withTime(own, "17 ");
    assertTrue(hasty > 1.7 * steady, hasty + " releases with time on the puck, against " + steady);
  }

  /** Releases of a player who would probably have gained center. */
  private static long withTime(List<CSVRecord> releases, String number) {
    return releases.stream()
        .filter(r -> r.get("player").startsWith(number))
        .filter(r -> Tables.number(r, "p_gain_center") > 0.6)
        .count();
  }

  private static double share(String way, String mark) {
    long n =
        EXITS.stream()
            .filter(e -> e.get("way_out").equals(way))
            .filter(e -> mark.isEmpty() || e.get("at_center").equals(mark))
            .count();
    return 100.0 * n / EXITS.size();
  }

  private static long stoppages(String word) {
    return ROWS.stream().filter(r -> r.get("stoppage").equals(word)).count();
  }

  private static boolean is(CSVRecord row, String action, String outcome) {
    return Tables.is(row, "action", action) && Tables.is(row, "outcome", outcome);
  }

  private static void within(double low, double high, double found, String what) {
    assertTrue(
        found >= low && found <= high,
        () -> what + ": expected " + low + " to " + high + ", found " + found);
  }
}
