package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twostrides.rink.Rink;

/** The truth and the sheet are written apart; here they are held against each other. */
class DemoTruthTest {
  private static final Rink RINK = Rink.NORTH_AMERICAN;
  private static final Map<DemoGame, List<CSVRecord>> SHEETS = new HashMap<>();
  private static final Map<DemoGame, List<CSVRecord>> EXITS = new HashMap<>();
  private static final Map<DemoGame, List<CSVRecord>> RELEASES = new HashMap<>();
  private static List<DemoGame> games;

  @BeforeAll
  static void play() {
    games = DemoLeague.simulate(12, 4).games();
    for (DemoGame game : games) {
      SHEETS.put(game, Tables.parse(game.sheetCsv()));
      EXITS.put(game, Tables.parse(game.exitTruthCsv()));
      RELEASES.put(game, Tables.parse(game.releaseTruthCsv()));
    }
  }

  @Test
  void everyIcingHasExactlyOneReleaseAndThatIsTheLastRowOfItsTeam() {
    int icings = 0;
    for (DemoGame game : games) {
      List<CSVRecord> rows = SHEETS.get(game);
      List<String> written = new ArrayList<>();
      for (int i = 1; i < rows.size(); i++) {
        if (Tables.is(rows.get(i), "stoppage", "icing")) {
          CSVRecord release = rows.get(Tables.releaseBefore(rows, i));
          assertEquals(rows.get(i).get("team"), release.get("team"));
          written.add(
              release.get("period")
                  + " "
                  + Tables.elapsed(release)
                  + " "
                  + release.get("player")
                  + " "
                  + release.get("x_m"));
          icings++;
        }
      }
      List<String> decided =
          RELEASES.get(game).stream()
              .filter(r -> Tables.is(r, "cause", "icing"))
              .map(
                  r ->
                      r.get("period")
                          + " "
                          + r.get("release_elapsed_s")
                          + " "
                          + r.get("player")
                          + " "
                          + r.get("x_m"))
              .toList();
      assertEquals(written, decided, game.id());
    }
    assertTrue(icings > 50, "too few icings to say: " + icings);
  }

  @Test
  void everyPuckSentOnFromBehindCenterIsInTheTruth() {
    for (DemoGame game : games) {
      long rows =
          SHEETS.get(game).stream()
              .filter(DemoTruthTest::sentOn)
              .filter(r -> RINK.shortOfCenter(Tables.number(r, "x_m")) > 0)
              .count();
      assertEquals(rows, RELEASES.get(game).size(), game.id());
    }
  }

  private static boolean sentOn(CSVRecord row) {
    return Tables.is(row, "action", "release")
        || (Tables.is(row, "action", "pass") && Tables.is(row, "outcome", "missed"))
        || Tables.is(row, "action", "shot");
  }

  @Test
  void restartsAreFaceOffsInTheOwnZone() {
    int restarts = 0;
    for (DemoGame game : games) {
      Set<String> ownZoneDraws = new TreeSet<>();
      for (CSVRecord row : SHEETS.get(game)) {
        if (Tables.is(row, "action", "faceoff") && Tables.number(row, "x_m") != 0) {
          boolean winnersZone = Tables.number(row, "x_m") < -RINK.blueLineNeutralEdge();
          boolean losersZone = Tables.number(row, "x_m") > RINK.blueLineNeutralEdge();
          if (winnersZone || losersZone) {
            String winner = row.get("team");
            String home = game.team(Side.HOME).name();
            String away = game.team(Side.AWAY).name();
            String loser = winner.equals(home) ? away : home;
            ownZoneDraws.add(
                row.get("period")
                    + " "
                    + Tables.elapsed(row)
                    + " "
                    + (winnersZone ? winner : loser));
          }
        }
      }
      for (CSVRecord exit : EXITS.get(game)) {
        assertEquals(
            Tables.is(exit, "cause", "none"), !Tables.has(exit, "restart_elapsed_s"), game.id());
        if (Tables.has(exit, "restart_elapsed_s")) {
          String draw =
              exit.get("period") + " " + exit.get("restart_elapsed_s") + " " + exit.get("team");
          assertTrue(ownZoneDraws.contains(draw), draw);
          restarts++;
        }
      }
    }
    assertTrue(restarts > 100, "too few restarts to say: " + restarts);
  }

  @Test
  void everyAttemptBeginsWithAControlRowInTheOwnZone() {
    Set<String> control = Set.of("recovery", "takeaway", "touch");
    for (DemoGame game : games) {
      Set<String> controls =
          SHEETS.get(game).stream()
              .filter(r -> control.contains(r.get("action")))
              .filter(r -> RINK.inOwnZone(Tables.number(r, "x_m")))
              .map(r -> r.get("period") + " " + Tables.elapsed(r) + " " + r.get("team"))
              .collect(Collectors.toSet());
      for (CSVRecord exit : EXITS.get(game)) {
        String start =
            exit.get("period") + " " + exit.get("start_elapsed_s") + " " + exit.get("team");
        assertTrue(controls.contains(start), start);
        assertTrue(
            Tables.number(exit, "release_elapsed_s") >= Tables.number(exit, "start_elapsed_s"));
      }
    }
  }

  @Test
  void attemptsOfAGameDoNotOverlap() {
    for (DemoGame game : games) {
      int period = 0;
      double end = 0;
      for (CSVRecord exit : EXITS.get(game)) {
        int now = Integer.parseInt(exit.get("period"));
        if (now == period) {
          assertTrue(Tables.number(exit, "start_elapsed_s") >= end, game.id());
        }
        period = now;
        end = Tables.number(exit, "release_elapsed_s");
      }
    }
  }

  @Test
  void clearancesEndWhereTheirNamesSay() {
    int chips = 0;
    int clearances = 0;
    for (DemoGame game : games) {
      List<CSVRecord> rows = SHEETS.get(game);
      for (CSVRecord exit : EXITS.get(game)) {
        boolean chip = Tables.is(exit, "way_out", "chip");
        if (!chip && !Tables.is(exit, "way_out", "long clearance")) {
          continue;
        }
        int i = sender(rows, exit);
        CSVRecord next = rows.get(i + 1);
        if (Tables.is(next, "outcome", "dumped")) {
          next = rows.get(i + 2);
        }
        if (Tables.is(next, "action", "stoppage")) {
          assertTrue(!chip, exit::toString);
          clearances++;
          continue;
        }
        boolean same = next.get("team").equals(exit.get("team"));
        double x = Tables.number(next, "x_m") * (same ? 1 : -1);
        assertEquals(chip, !RINK.pastFarBlueLine(x), exit::toString);
        assertTrue(!RINK.inOwnZone(x), exit::toString);
        chips += chip ? 1 : 0;
        clearances += chip ? 0 : 1;
      }
    }
    assertTrue(chips > 100 && clearances > 100, chips + " chips, " + clearances + " clearances");
  }

  private static int sender(List<CSVRecord> rows, CSVRecord exit) {
    for (int i = 0; i < rows.size(); i++) {
      CSVRecord row = rows.get(i);
      if (sentOn(row)
          && row.get("period").equals(exit.get("period"))
          && Tables.elapsed(row) == Integer.parseInt(exit.get("release_elapsed_s"))
          && row.get("player").equals(exit.get("player"))
          && row.get("team").equals(exit.get("team"))) {
        return i;
      }
    }
    throw new AssertionError("no row for " + exit);
  }

  @Test
  void whatWasGainedReachedCenterInTheSheet() {
    int checked = 0;
    for (DemoGame game : games) {
      List<CSVRecord> rows = SHEETS.get(game);
      for (CSVRecord exit : EXITS.get(game)) {
        boolean gained = Tables.is(exit, "at_center", "gained");
        boolean lost = Tables.is(exit, "at_center", "lost short");
        if (gained || lost) {
          assertEquals(gained, furthest(rows, exit), exit::toString);
          checked++;
        }
      }
    }
    assertTrue(checked > 500, "too few to say: " + checked);
  }

  /** Whether the team's next rows reach center before the opponent has a row or play stops. */
  private static boolean furthest(List<CSVRecord> rows, CSVRecord exit) {
    int from = 0;
    while (!rows.get(from).get("period").equals(exit.get("period"))
        || Tables.elapsed(rows.get(from)) < Integer.parseInt(exit.get("release_elapsed_s"))
        || !rows.get(from).get("team").equals(exit.get("team"))) {
      from++;
    }
    for (int i = from; i < rows.size(); i++) {
      CSVRecord row = rows.get(i);
      if (!row.get("team").equals(exit.get("team")) || Tables.is(row, "action", "stoppage")) {
        return false;
      }
      if (RINK.shortOfCenter(Tables.number(row, "x_m")) <= 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Players who keep the puck short of center and go for it: as many gain center as the futures
   * before it promised, in every fifth. The futures are other chance than the game.
   */
  @Test
  void thoseWhoKeepThePuckGainCenterAsOftenAsTheirFuturesSay() {
    List<TruthBook.Kept> kept =
        DemoLeague.simulate(24, 4, Chance.Telling.KEPT_TOO).games().stream()
            .flatMap(g -> g.kept().stream())
            .toList();
    assertTrue(kept.size() > 1_500, "too few to say: " + kept.size());
    for (int fifth = 0; fifth < 5; fifth++) {
      int bin = fifth;
      List<TruthBook.Kept> in =
          kept.stream().filter(k -> Math.min(4, (int) (5 * k.chance())) == bin).toList();
      double promised = in.stream().mapToDouble(TruthBook.Kept::chance).average().orElseThrow();
      double gained = in.stream().filter(TruthBook.Kept::gained).count() / (double) in.size();
      String found =
          String.format(
              Locale.ROOT,
              "kept the puck, n %d: futures said %.3f, gained center %.3f",
              in.size(),
              promised,
              gained);
      System.err.println(found);
      // Four standard errors of the count, and what 40 futures are off at the ends of a fifth.
      double allowed = 4 * Math.sqrt(promised * (1 - promised) / in.size()) + 0.02;
      assertEquals(promised, gained, allowed, found);
    }
  }
}
