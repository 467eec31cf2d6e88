package twostrides.race;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import twostrides.race.CenterRun.Body;
import twostrides.race.CenterRun.Run;
import twostrides.rink.Rink;

/**
 * Could he have brought the puck to the red line: a race between the carrier and the opponents
 * whose places are known.
 *
 * <p>The carrier goes as {@link Skater}'s disc model allows at his top speed with the puck, without
 * a reaction time, since it is his own choice: x(t) = x + v u + w (t - u), u = tau (1 -
 * e^(-t/tau)), w the push of length vm that brings him to a point of the red line soonest. The
 * points lie in a small fan about straight up ice, every 15 degrees to 60 either side; points
 * within half a metre of the boards are left out. The chance is that of the best point in each
 * simulation. Each takes the straightest way that is alike to its best: time is the mean of these
 * ways, direction that of most of them.
 *
 * <p>A checker is there when the carrier's place lies in his disc, widened by the reach of his
 * stick. His arrival a has the logistic error of {@link SkaterSettings#errorScale}, and none had
 * taken the puck by the release, so P(gained | simulation) = product over checkers of S(T)/S(0),
 * S(t) = 1/(1 + e^((t - a)/s)), T the carrier's time. The chance is the mean over simulated places
 * and velocities, which are not exact: a velocity that is not known is simulated about standing
 * still, each way with a standard deviation of {@link #SPEED_SPREAD}, one that comes from two
 * clicked places about what both say together.
 *
 * <p>A checker who stands farther down ice never makes the race's chance smaller. One farther up
 * ice may: he has time to turn to a carrier who would have flown past him. Not in the race: that a
 * checker who is there may fail to take the puck, or back off instead of coming, passes, boards on
 * the way, and whoever was not seen. So its chance is a low one, and is put right by what became of
 * real carriers: by a line in its log odds and the metres to the nearest opponent, one where speeds
 * are known and one where they are not ({@link Fitted}).
 */
public final class MeasuredGain {

  /**
   * Standard deviation of an unknown velocity, along and across, m/s: 3.3 along and 2.8 across
   * about standing still for 7,458 skaters at the touches of carriers (tracked games, {@link
   * Fitted}).
   */
  static final double SPEED_SPREAD = 3;

  /**
   * Standard error of a tracked place, along and across, metres, and of what skaters do other than
   * the race has it: of 0, 0.25, 0.5, 0.75 and 1 the one whose chances did best on the game left
   * out (Brier score .118, .110, .101, .101, .104; {@code OpenPlacesTest}).
   */
  static final double OWN_ERROR = 0.5;

  /** Seconds between the two clicks from which a clicked skater's speed comes. */
  static final double CLICKS_APART = 0.5;

  /** Whose speeds must be known for a measured chance: the carrier's and so many opponents'. */
  private static final int SPEEDS_NEEDED = 2;

  /** Directions in degrees from straight up ice, nearest to straight first. Assumed. */
  private static final double[] FAN = {0, 15, -15, 30, -30, 45, -45, 60, -60};

  private static final double[] SLOPES =
      Arrays.stream(FAN).map(d -> Math.tan(Math.toRadians(d))).toArray();

  /** Below every chance. */
  private static final double NONE = -1;

  /** Ways whose chances differ by less are alike: the straightest of them is shown. Assumed. */
  private static final double ALIKE = 0.01;

  /** Random numbers of a skater: place along and across, velocity along and across. */
  private static final int OF_EACH = 4;

  private final Rink rink;

  /** The carrier, then the opponents, the nearest to the puck first. */
  private final List<Sighting> seen;

  private final double ownError;
  private final GainGrade grade;
  private final CenterRun runs;

  /**
   * A race of one release.
   *
   * @param rink the rink
   * @param carrier who let the puck go, at its place; acting team's frame
   * @param checkers the opponents who were seen
   * @param skaters what a skater of this game can do
   */
  public MeasuredGain(
      Rink rink, Sighting carrier, List<Sighting> checkers, SkaterSettings skaters) {
    this(rink, carrier, checkers, skaters, OWN_ERROR);
  }

  /** The same with an error of one's own in place of {@link #OWN_ERROR}, 0 for exact places. */
  MeasuredGain(
      Rink rink,
      Sighting carrier,
      List<Sighting> checkers,
      SkaterSettings skaters,
      double ownError) {
    this.rink = rink;
    this.ownError = ownError;
    Comparator<Sighting> nearest =
        Comparator.comparingDouble(c -> apart(carrier.racer(), c.racer()));
    seen = Stream.concat(Stream.of(carrier), checkers.stream().sorted(nearest)).toList();
    boolean moving = seen.stream().limit(1 + SPEEDS_NEEDED).allMatch(Sighting::speedKnown);
    boolean byHand = seen.stream().anyMatch(s -> s.clickError() > 0);
    grade = !moving ? GainGrade.PLACES_ONLY : byHand ? GainGrade.CLICKED : GainGrade.MEASURED;
    runs = new CenterRun(rink, skaters);
  }

  private static double apart(Racer a, Racer b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  /**
   * Simulates the race.
   *
   * @param random the random numbers of this release
   * @param n number of simulations, 1 or more
   */
  public GainChance run(SeededRandom random, int n) {
    return run(random, n, grade == GainGrade.PLACES_ONLY ? Fitted.PLACES_ONLY : Fitted.MEASURED);
  }

  /**
   * Simulates the race and puts it right by a line of one's own.
   *
   * @param line log odds by those of the race and metres to the nearest opponent
   */
  GainChance run(SeededRandom random, int n, LogisticLine line) {
    EvenSimulations luck = new EvenSimulations(random, OF_EACH * seen.size());
    double[] best = new double[exact() ? 1 : n];
    int[] taken = new int[FAN.length];
    double seconds = 0;
    for (int i = 0; i < best.length; i++) {
      List<Body> bodies = bodies(luck, i);
      if (rink.shortOfCenter(bodies.get(0).x()) <= 0) {
        best[i] = 1;
        continue;
      }
      List<Try> better = better(bodies);
      best[i] = better.get(better.size() - 1).run().chance();
      double alike = best[i] - ALIKE;
      Try way = better.stream().filter(t -> t.run().chance() >= alike).findFirst().orElseThrow();
      taken[way.direction()]++;
      seconds += way.run().time();
    }
    Estimate raw = Estimate.of(best);
    int way = IntStream.range(0, FAN.length).reduce(0, (a, b) -> taken[b] > taken[a] ? b : a);
    int raced = Arrays.stream(taken).sum();
    return new GainChance(
        chance(raw, line),
        grade,
        raw.value(),
        raw.error(),
        raced > 0 ? seconds / raced : 0,
        FAN[way]);
  }

  /** A way in one of the directions of {@link #FAN}. */
  private record Try(int direction, Run run) {}

  /** Each way that is better than every straighter one: the last of them is the best of all. */
  private List<Try> better(List<Body> bodies) {
    List<Try> better = new ArrayList<>();
    double most = NONE;
    // None is better than a way on which nobody is ever in time.
    for (int k = 0; k < FAN.length && most < 1; k++) {
      Optional<Run> run = runs.run(bodies, SLOPES[k], most);
      if (run.isPresent()) {
        better.add(new Try(k, run.get()));
        most = run.get().chance();
      }
    }
    return better;
  }

  /** Whether every simulation would be the same. */
  private boolean exact() {
    return seen.stream().allMatch(s -> s.speedKnown() && placeError(s) == 0);
  }

  private double placeError(Sighting s) {
    return Math.hypot(s.clickError(), ownError);
  }

  /** The race's chance put right by what became of real carriers, with its interval. */
  private Chance chance(Estimate raw, LogisticLine line) {
    if (rink.shortOfCenter(seen.get(0).racer().x()) <= 0) {
      return Chance.SURE;
    }
    double[] x = places(raw.value());
    double held = LogisticLine.chance(x[0]);
    double simulated = line.coefficient(1) * raw.error() / (held * (1 - held));
    return Chance.of(line.at(x), line.variance(x) + square(simulated));
  }

  private static double square(double v) {
    return v * v;
  }

  /**
   * Where a fitted line is asked: log odds of the race's chance, and metres to the nearest opponent
   * who was seen.
   */
  double[] places(double raw) {
    double nearest = seen.size() > 1 ? apart(seen.get(0).racer(), seen.get(1).racer()) : Fitted.FAR;
    return new double[] {LogisticLine.logOdds(raw, Fitted.HOLD), Math.min(Fitted.FAR, nearest)};
  }

  /** Everybody where he may have been in a simulation, the carrier first. */
  private List<Body> bodies(EvenSimulations luck, int simulation) {
    List<Body> bodies = new ArrayList<>();
    for (Sighting s : seen) {
      double placeError = placeError(s);
      // Clicked twice, a velocity is off by so much; it comes from both that and what skaters do.
      double off = Math.sqrt(2) * placeError / CLICKS_APART;
      double share = square(SPEED_SPREAD) / (square(SPEED_SPREAD) + square(off));
      Racer r = s.racer();
      double weight = s.speedKnown() ? share : 0;
      double spread = SPEED_SPREAD * Math.sqrt(1 - weight);
      int variable = OF_EACH * bodies.size();
      bodies.add(
          new Body(
              r.x() + placeError * luck.normal(simulation, variable),
              r.y() + placeError * luck.normal(simulation, variable + 1),
              weight * r.vx() + spread * luck.normal(simulation, variable + 2),
              weight * r.vy() + spread * luck.normal(simulation, variable + 3)));
    }
    return bodies;
  }
}
