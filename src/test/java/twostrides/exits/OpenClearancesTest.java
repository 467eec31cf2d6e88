package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.game.Game;
import twostrides.race.Delivery;
import twostrides.race.RaceChances;
import twostrides.race.RaceModel;
import twostrides.race.Racer;
import twostrides.race.Scene;
import twostrides.race.SeededRandom;
import twostrides.race.SkaterSet;
import twostrides.rulebook.RaceQuestion;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.stats.Calibration;
import twostrides.stats.Forecast;
import twostrides.tracking.ClockMatch;
import twostrides.tracking.GameOutline;
import twostrides.tracking.Motion;
import twostrides.tracking.SeenSkater;
import twostrides.tracking.Skaters;
import twostrides.tracking.Smoother;
import twostrides.tracking.Sync;
import twostrides.tracking.SyncSheets;
import twostrides.tracking.TrackForm;
import twostrides.tracking.TrackedGame;
import twostrides.tracking.Tracks;
import twostrides.tracking.VideoClock;

/**
 * Who is first to a puck that the shorthanded side sends up the ice: the race, run from the skaters
 * that the open tracking sheets show, against the next touch in the event sheets.
 *
 * <p>Only where the clock ran through the whole window of tracking: elsewhere the release may lie
 * twelve seconds or more from where it is looked for. Goalkeepers and skaters out of the picture
 * are not in the race; a penalty-killer who turns to the bench is.
 */
class OpenClearancesTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final RaceQuestion FIRST_TOUCH =
      new RaceQuestion(RaceQuestion.Deadline.TOUCH, true);

  /** Where the same players' events are nearest to their tracks (OpenTrackingTest), s. */
  private static final double LAG = 0.5;

  private static List<Game> games;
  private static Table releases;

  /** A release and what was made of it; chances are the opponent's of being first. */
  private record Clearance(
      double nextX, boolean opponent, int own, int other, double tracked, double drawn) {
    Forecast byTracks() {
      return new Forecast(tracked, opponent);
    }

    Forecast byDraws() {
      return new Forecast(drawn, opponent);
    }
  }

  @BeforeAll
  static void read() throws IOException, SheetException {
    OpenData.need();
    games = OpenData.games();
    releases =
        twostrides.season.Season.of(games, List.of(), OpenData.SETTINGS, SkatersAtRelease.NONE)
            .releases();
  }

  @Test
  void whoIsFirst() throws SheetException {
    int[] count = new int[4];
    List<Clearance> list = new ArrayList<>();
    for (Game game : games) {
      List<Path> pairs = List.of(OpenData.FOLDER.resolve("power_plays.csv"));
      Sync sync =
          SyncSheets.read(
                  pairs,
                  List.of(
                      map("womens-2022-power-play-starts.toml").orElseThrow(),
                      map("womens-2022-power-play-ends.toml").orElseThrow()),
                  GameOutline.byId(List.of(GameOutline.of(game)), List.of()),
                  true)
              .of(game.id());
      Tracks tracks =
          Tracks.read(
              SheetFiles.find(List.of(OpenData.FOLDER + "/" + game.id() + "*.tracking.csv")),
              map("womens-2022-tracking.toml"),
              TrackedGame.of(GameOutline.of(game)),
              sync);
      VideoClock clock = tracks.clock(sync);
      for (int i = 0; i < releases.rowCount(); i++) {
        if (!text(Columns.GAME, i).equals(game.id())
            || !text(Columns.STRENGTH, i).equals("shorthanded")) {
          continue;
        }
        count[0]++;
        int period = Cells.count(releases, Columns.PERIOD, i).orElseThrow();
        double elapsed = number(Columns.RELEASE_ELAPSED_S, i);
        if (!(clock.videoAt(period, elapsed, 1) instanceof ClockMatch.At at)) {
          continue;
        }
        count[1]++;
        if (at.clockRan()) {
          count[2]++;
          Skaters seen = tracks.at(period, at.seconds() + LAG, Smoother.over(1));
          clearance(game, i, seen).ifPresent(list::add);
        }
      }
    }
    FIGURES.say(
        "shorthanded releases %d, inside a window of tracking %d, clock ran %d, both teams seen %d",
        count[0], count[1], count[2], list.size());
    score("all", list);
    List<Clearance> far = list.stream().filter(c -> c.nextX() > 0).toList();
    score("touched next beyond center", far);
    assertEquals(80, count[0]);
    assertTrue(list.size() >= 15, "too few to look at: " + list.size());
    // The finding of docs/checks.md: everybody chases in the race, which penalty-killers do not.
    double mean = list.stream().mapToDouble(Clearance::tracked).average().orElseThrow();
    assertTrue(mean > 0.5 && mean < 0.9, "the opponent's mean chance is " + mean);
  }

  private static void score(String what, List<Clearance> list) {
    Calibration tracked =
        Calibration.of(list.stream().map(Clearance::byTracks).toList(), 5).orElseThrow();
    Calibration drawn =
        Calibration.of(list.stream().map(Clearance::byDraws).toList(), 5).orElseThrow();
    IntSummaryStatistics own = list.stream().mapToInt(Clearance::own).summaryStatistics();
    IntSummaryStatistics other = list.stream().mapToInt(Clearance::other).summaryStatistics();
    FIGURES.say(
        "%s: n %d, opponent next %d; mean chance from tracks %.2f, from drawn places %.2f; Brier"
            + " %.3f, %.3f, base rate %.3f; given under a half %d, %d; seen %d to %d of its own skaters, %d to %d of the"
            + " opponent",
        what,
        list.size(),
        tracked.observed().successes(),
        list.stream().mapToDouble(Clearance::tracked).average().orElseThrow(),
        list.stream().mapToDouble(Clearance::drawn).average().orElseThrow(),
        tracked.brier(),
        drawn.brier(),
        tracked.parts().uncertainty(),
        list.stream().filter(c -> c.tracked() < 0.5).count(),
        list.stream().filter(c -> c.drawn() < 0.5).count(),
        own.getMin(),
        own.getMax(),
        other.getMin(),
        other.getMax());
  }

  private static Optional<Clearance> clearance(Game game, int i, Skaters seen) {
    boolean home = text(Columns.TEAM, i).equals(game.home());
    Skaters view = home ? seen : seen.seenByOpponent();
    int own = view.of(home).size();
    int other = view.of(!home).size();
    String next = Cells.text(releases, "next_touch", i).orElse("none");
    if (own == 0 || other == 0 || next.equals("none")) {
      return Optional.empty();
    }
    List<Racer> racers = view.seen().stream().map(s -> racer(s, home)).toList();
    return Optional.of(
        new Clearance(
            number("next_touch_x_m", i),
            next.equals("opponent"),
            own,
            other,
            opponentFirst(game, i, racers),
            opponentFirst(game, i, List.of())));
  }

  /** A skater without a speed is taken to stand. */
  private static Racer racer(SeenSkater s, boolean home) {
    boolean own = s.home() == home;
    return s.motion() instanceof Motion.Moving m
        ? new Racer(own, s.place().x(), s.place().y(), m.vx(), m.vy())
        : new Racer(own, s.place().x(), s.place().y(), 0, 0);
  }

  /** Of the draws that somebody wins; a puck that stops short or is in the net is left out. */
  private static double opponentFirst(Game game, int i, List<Racer> racers) {
    boolean missed = text(Columns.KIND, i).equals("missed_pass");
    Scene scene =
        new Scene(
            game.rink(),
            number(Columns.RELEASE_X_M, i),
            number(Columns.RELEASE_Y_M, i),
            (missed ? Delivery.MISSED_PASS : Delivery.SENT).forLevel(OpenData.LEVEL),
            OptionalDouble.empty(),
            racers,
            SkaterSet.of(OpenData.LEVEL));
    RaceChances c =
        new RaceModel(scene, Optional.of(FIRST_TOUCH))
            .run(new SeededRandom(1, game.id() + "#" + i), 2000);
    double opponent = c.icing() + c.touched();
    return opponent / (opponent + c.wavedOff());
  }

  private static String text(String column, int i) {
    return Cells.text(releases, column, i).orElseThrow();
  }

  private static double number(String column, int i) {
    return Cells.number(releases, column, i).orElseThrow();
  }

  private static Optional<SheetMap> map(String name) throws SheetException {
    return Optional.of(SheetMap.read(Path.of("docs/maps").resolve(name), TrackForm.ALL));
  }
}
