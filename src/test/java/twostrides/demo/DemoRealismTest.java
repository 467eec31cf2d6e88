package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
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
    within(33, 41, share("kept in", ""), "kept in");
    within(12, 16.5, share("carry", "gained"), "carry, gained");
    within(3, 6.5, share("carry", "released short"), "carry, released short");
    within(15.5, 21.5, share("pass", ""), "pass");
    within(8, 13, share("missed pass", ""), "missed pass");
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
    within(0.45, 0.62, missed / (double) iced, "share of icings from missed passes");
    double said = RELEASES.stream().mapToDouble(r -> Tables.number(r, "p_icing")).sum();
    // The chances in the truth add up to the icings, within four standard errors of the count.
    within(said - 4 * Math.sqrt(said), said + 4 * Math.sqrt(said), (double) iced, "icings");
  }

  /** After an icing a team wins fewer face-offs and gives up more attempts, as in open games. */
  @Test
  void icingsCostMoreThanOtherFaceOffs() {
    double[] icing = afterDraws("icing");
    double[] other = afterDraws("goalkeeper");
    // Decided with .42 and .48; four standard errors of some 500 and 900 face-offs.
    within(0.33, 0.51, icing[1] / icing[0], "face-offs won after an icing");
    within(0.41, 0.55, other[1] / other[0], "face-offs won after a held puck");
    within(0.5, 0.95, icing[2] / icing[0], "attempts within 20 s after an icing");
    assertTrue(
        icing[2] / icing[0] > 1.1 * other[2] / other[0],
        icing[2] / icing[0] + " attempts after icings, " + other[2] / other[0] + " after others");
  }

  /** Face-offs in the own zone after a stoppage: how many, how many won, attempts against. */
  private static double[] afterDraws(String stoppage) {
    double[] sum = new double[3];
    for (int i = 1; i + 1 < ROWS.size(); i++) {
      CSVRecord draw = ROWS.get(i);
      if (!is(draw, "faceoff", "") || !ROWS.get(i - 1).get("stoppage").equals(stoppage)) {
        continue;
      }
      boolean own = Tables.number(draw, "x_m") < 0;
      String winner = draw.get("team");
      String loser = winner.equals(draw.get("home")) ? draw.get("away") : draw.get("home");
      String defends = own ? winner : loser;
      sum[0]++;
      sum[1] += own ? 1 : 0;
      for (int j = i + 1; j < ROWS.size() && within20(draw, ROWS.get(j)); j++) {
        sum[2] +=
            Tables.is(ROWS.get(j), "action", "shot") && !ROWS.get(j).get("team").equals(defends)
                ? 1
                : 0;
      }
    }
    assertTrue(sum[0] > 400, stoppage + ": too few face-offs to say: " + sum[0]);
    return sum;
  }

  private static boolean within20(CSVRecord draw, CSVRecord row) {
    return row.get("game").equals(draw.get("game"))
        && row.get("period").equals(draw.get("period"))
        && Tables.elapsed(row) >= Tables.elapsed(draw)
        && Tables.elapsed(row) <= Tables.elapsed(draw) + 20;
  }

  /**
   * Who lets the puck go between blue line and center is more pressed than who keeps it: by the
   * log-odds of the mean chance of gaining center, 4 to 8 m short. Tracked games: -0.9 for pucks
   * sent on, -1.5 for missed passes.
   */
  @Test
  void whoLetsGoIsMorePressedThanWhoKeeps() {
    List<TruthBook.Kept> kept =
        DemoLeague.simulate(36, 3, Chance.Telling.KEPT_TOO).games().stream()
            .flatMap(g -> g.kept().stream())
            .filter(k -> k.shortOfCenter() > 4 && k.shortOfCenter() < 8)
            .toList();
    double base = logOdds(kept.stream().mapToDouble(TruthBook.Kept::chance));
    double sent = logOdds(chances("sent")) - base;
    double missed = logOdds(chances("missed_pass")) - base;
    System.err.printf(
        Locale.ROOT,
        "more pressed than who keeps the puck, log-odds: sent %.2f, missed pass %.2f, n kept %d%n",
        sent,
        missed,
        kept.size());
    within(-1.4, -0.6, sent, "log-odds of pucks sent on");
    within(-2.0, -1.1, missed, "log-odds of missed passes");
    assertTrue(missed < sent, missed + " and " + sent);
  }

  private static DoubleStream chances(String kind) {
    return RELEASES.stream()
        .filter(r -> r.get("kind").equals(kind))
        .filter(r -> Math.abs(Tables.number(r, "short_of_center_m") - 6) < 2)
        .mapToDouble(r -> Tables.number(r, "p_gain_center"));
  }

  private static double logOdds(DoubleStream chances) {
    double p = chances.average().orElseThrow();
    return Math.log(p / (1 - p));
  }

  /** As in the tracked games: metres from the puck to the nearest checker, at the median. */
  @Test
  void checkersAreAsNearAsInTrackedGames() {
    within(3.4, 5.2, nearest(Words.Action.PASS, Words.Outcome.COMPLETE), "pass received");
    within(2.5, 4.1, nearest(Words.Action.PASS, Words.Outcome.MISSED), "missed pass");
    within(2.5, 4.1, nearest(Words.Action.RELEASE, Words.Outcome.LOST), "sent on");
  }

  private static double nearest(Words.Action action, Words.Outcome outcome) {
    double[] metres =
        games.stream()
            .flatMap(g -> g.rows().stream())
            .filter(r -> r.action == action && r.outcome.equals(Optional.of(outcome)))
            .filter(r -> r.seen.isPresent() && r.at.orElseThrow().x() < -7.6)
            .mapToDouble(
                r ->
                    r.seen.get().opponents().stream()
                        .mapToDouble(
                            s -> Math.hypot(s.x() - r.at.get().x(), s.y() - r.at.get().y()))
                        .min()
                        .orElseThrow())
            .sorted()
            .toArray();
    return metres[metres.length / 2];
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
    assertTrue(hasty > 1.5 * steady, hasty + " releases with time on the puck, against " + steady);
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
