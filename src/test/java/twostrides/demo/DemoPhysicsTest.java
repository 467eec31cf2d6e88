package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/** What no sheet of a real game could show must not be in a simulated one. */
class DemoPhysicsTest {
  private static final Rink RINK = Rink.NORTH_AMERICAN;

  /** A clock written in whole seconds hides up to one second of each gap. */
  private static final double HIDDEN_S = 1;

  /** Faster than a player gets from touch to touch, with a stick's reach at both ends, m/s. */
  private static final double TOO_FAST = 9;

  private record Stood(int period, int when, Place at) {}

  @Test
  void timeNeverRunsBackward() {
    for (DemoGame game : games()) {
      int period = 1;
      int elapsed = 0;
      double video = 0;
      for (CSVRecord row : Tables.parse(game.sheetCsv())) {
        int thisPeriod = Integer.parseInt(row.get("period"));
        int now = Tables.elapsed(row);
        assertTrue(thisPeriod > period ? thisPeriod == period + 1 : thisPeriod == period);
        assertTrue(thisPeriod > period || now >= elapsed, () -> where(game, row));
        assertTrue(now >= 0 && now <= GameClock.PERIOD_S, () -> where(game, row));
        assertTrue(Tables.number(row, "video_s") >= video, () -> where(game, row));
        period = thisPeriod;
        elapsed = now;
        video = Tables.number(row, "video_s");
      }
      assertEquals(3, period);
      assertEquals(GameClock.PERIOD_S, elapsed);
    }
  }

  @Test
  void placesLieInsideTheBoards() {
    for (DemoGame game : games()) {
      for (CSVRecord row : Tables.parse(game.sheetCsv())) {
        if (Tables.has(row, "x_m")) {
          assertTrue(
              inside(Tables.number(row, "x_m"), Tables.number(row, "y_m")), () -> where(game, row));
        }
        if (Tables.has(row, "to_x_m")) {
          assertTrue(
              inside(Tables.number(row, "to_x_m"), Tables.number(row, "to_y_m")),
              () -> where(game, row));
        }
      }
    }
  }

  @Test
  void nobodySkatesFasterThanAPlayerCan() {
    int checked = 0;
    for (DemoGame game : games()) {
      Map<String, Stood> last = new HashMap<>();
      for (CSVRecord row : Tables.parse(game.sheetCsv())) {
        if (Tables.is(row, "action", "stoppage")) {
          last.clear();
        }
        boolean puckOnly = Tables.is(row, "outcome", "dumped");
        if (puckOnly || !Tables.has(row, "x_m") || Tables.is(row, "action", "faceoff")) {
          continue;
        }
        Stood now = stood(game, row);
        Stood before = last.put(row.get("team") + row.get("player"), now);
        if (before != null && before.period() == now.period()) {
          double seconds = now.when() - before.when() + HIDDEN_S;
          assertTrue(before.at().distanceTo(now.at()) / seconds < TOO_FAST, () -> where(game, row));
          checked++;
        }
      }
    }
    assertTrue(checked > 10_000, "too few pairs of touches to say: " + checked);
  }

  /** As those of the open games: 2 s or more, mostly 3 to 6, at 5 to 15 m/s to the goal line. */
  @Test
  void icedPucksTravelLikePucks() {
    List<Integer> gaps = new ArrayList<>();
    for (DemoGame game : games()) {
      List<CSVRecord> rows = Tables.parse(game.sheetCsv());
      for (int i = 1; i < rows.size(); i++) {
        if (Tables.is(rows.get(i), "stoppage", "icing")) {
          CSVRecord release = rows.get(Tables.releaseBefore(rows, i));
          double metres = RINK.goalLine() - Tables.number(release, "x_m");
          int gap = Tables.elapsed(rows.get(i)) - Tables.elapsed(release);
          String where = where(game, release);
          assertTrue(gap >= 2 && gap <= 9, where);
          assertTrue(metres / (gap - HIDDEN_S) >= 6, where);
          assertTrue(metres / (gap + HIDDEN_S) <= 15, where);
          assertTrue(RINK.shortOfCenter(Tables.number(release, "x_m")) > 0, where);
          gaps.add(gap);
        }
      }
    }
    assertTrue(gaps.size() > 50, "too few icings to say: " + gaps.size());
    long usual = gaps.stream().filter(g -> g >= 3 && g <= 6).count();
    assertTrue(usual > 0.8 * gaps.size(), usual + " of " + gaps.size() + " took 3 to 6 s");
  }

  /**
   * In the sheets of tracked games: who has the puck is at it, and everybody skates like people.
   */
  @Test
  void skatersInTheSheetsAreBodiesThatMove() {
    Map<String, At> bodies = new HashMap<>();
    int checked = 0;
    for (DemoGame game : games()) {
      for (SheetRow row : game.rows()) {
        if (row.action == Words.Action.STOPPAGE) {
          bodies.clear();
        }
        if (row.seen.isEmpty() || row.pressure.isEmpty()) {
          continue;
        }
        Seen seen = row.seen.get();
        Place puck = row.at.orElseThrow();
        boolean keeper = row.skater.orElseThrow().role() == Skater.Role.GOALKEEPER;
        assertEquals(
            keeper ? 0 : 1,
            seen.own().stream()
                .filter(s -> s.skater().equals(row.skater.get()))
                .filter(s -> Math.hypot(s.x() - puck.x(), s.y() - puck.y()) < 0.8)
                .count(),
            () -> game.fileStem() + " at " + row.elapsed);
        checked += check(game, row, seen.own(), row.side.get(), bodies);
        checked += check(game, row, seen.opponents(), row.side.get().other(), bodies);
      }
    }
    assertTrue(checked > 50_000, "too few places to say: " + checked);
  }

  private static int check(
      DemoGame game, SheetRow row, List<Seen.Spot> skaters, Side side, Map<String, At> bodies) {
    int dir = row.side.orElseThrow() == Side.HOME ? 1 : -1;
    int checked = 0;
    for (Seen.Spot s : skaters) {
      String where = game.fileStem() + " at " + row.period + ", " + row.elapsed + ": " + s;
      assertTrue(inside(s.x(), s.y()), where);
      assertTrue(Math.hypot(s.vx(), s.vy()) < 9.5, where);
      At now = new At(row.video, dir * s.x(), dir * s.y());
      At before = bodies.put(side + s.skater().label(), now);
      if (before != null) {
        double metres = Math.hypot(now.x() - before.x(), now.y() - before.y());
        // A stick's length where a puck is taken; 9.3 m/s is the fastest of the league.
        assertTrue(metres < 1.2 + 9.3 * (now.video() - before.video()), where + " from " + before);
        checked++;
      }
    }
    return checked;
  }

  /** Home team's frame. */
  private record At(double video, double x, double y) {}

  private static List<DemoGame> games() {
    return DemoLeague.simulate(12, 21).games();
  }

  private static Stood stood(DemoGame game, CSVRecord row) {
    Place own = new Place(Tables.number(row, "x_m"), Tables.number(row, "y_m"));
    boolean home = row.get("team").equals(game.team(Side.HOME).name());
    return new Stood(
        Integer.parseInt(row.get("period")),
        Tables.elapsed(row),
        home ? own : own.seenByOpponent());
  }

  private static boolean inside(double x, double y) {
    double dx = Math.abs(x) - (RINK.length() / 2 - RINK.cornerRadius());
    double dy = Math.abs(y) - (RINK.width() / 2 - RINK.cornerRadius());
    if (dx > 0 && dy > 0) {
      return Math.hypot(dx, dy) < RINK.cornerRadius();
    }
    return Math.abs(x) < RINK.length() / 2 && Math.abs(y) < RINK.width() / 2;
  }

  private static String where(DemoGame game, CSVRecord row) {
    return game.fileStem() + ", row " + row.getRecordNumber();
  }
}
