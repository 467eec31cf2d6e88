package twostrides.race;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import twostrides.rink.Rink;

/**
 * Could he have brought the puck to the red line: a race between the carrier and the opponents
 * whose places are known.
 *
 * <p>The carrier goes as {@link Skater}'s disc model allows at his top speed with the puck, without
 * a reaction time, since it is his own choice: x(t) = x + v u + w (t - u), u = tau (1 -
 * e^(-t/tau)), w the push of length vm that brings him to a point of the red line soonest. The
 * points lie in a small fan about straight up ice, every 15 degrees to 60 either side; points
 * within half a metre of the boards are left out. The chance is that of the best point; time and
 * direction are those of the straightest way that is alike to it.
 *
 * <p>A checker is there when the carrier's place lies in his disc, widened by the reach of his
 * stick. His arrival a has the logistic error of {@link Arrival}, and none had taken the puck by
 * the release, so P(gained | draw) = product over checkers of S(T)/S(0), S(t) = 1/(1 + e^((t -
 * a)/s)), T the carrier's time. The chance is the mean over draws of places and velocities, which
 * are not exact: a velocity that is not known is drawn about standing still, each way with a
 * standard deviation of {@link #SPEED_SPREAD}, one that comes from two clicked places about what
 * both say together.
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

  /** Least distance of a crossing point from the side boards, m. Assumed: a skater's width. */
  private static final double OFF_BOARDS = 0.5;

  /** Looks at the way every so many seconds; between looks the gap is taken as straight. */
  private static final double STEP = 0.05;

  /** Scales of the arrival error past the red line in which an arrival is still sought. */
  private static final double AFTER = 9;

  /** Longest way looked at, s: 60 m at 5 m/s. */
  private static final double LONGEST = 12;

  /** Ways whose chances differ by less are alike: the straightest of them is shown. Assumed. */
  private static final double ALIKE = 0.01;

  /** First variable of a draw; those of {@link RaceModel} lie below. */
  private static final int FIRST_SKATER = 1000;

  /** Numbers of a skater in a draw: place along and across, velocity along and across. */
  private static final int OF_EACH = 4;

  private final Rink rink;

  /** The carrier, then the opponents, the nearest to the puck first. */
  private final List<Sighting> seen = new ArrayList<>();

  private final SkaterSettings legs;
  private final double scale;
  private final double placeError;
  private final GainGrade grade;
  private final double[] coast;
  private final double[] drift;
  private final double[] stride;

  /** A draw: x, y, vx, vy of everyone seen. */
  private final double[] now;

  /**
   * A race of one release whose places were tracked.
   *
   * @param rink the rink
   * @param carrier who let the puck go, at its place; acting team's frame
   * @param checkers the opponents who were seen
   * @param skaters what a skater of this game can do
   */
  public MeasuredGain(
      Rink rink, Sighting carrier, List<Sighting> checkers, SkaterSettings skaters) {
    this(rink, carrier, checkers, skaters, 0);
  }

  /**
   * A race of one release whose places were clicked.
   *
   * @param rink the rink
   * @param carrier who let the puck go, at its place; acting team's frame
   * @param checkers the opponents who were seen
   * @param skaters what a skater of this game can do
   * @param clickError standard error of each place along and across, metres, 0 to 5; 0 for
   *     tracking. A known speed is then taken to come from two such places {@link #CLICKS_APART}
   *     apart
   */
  public MeasuredGain(
      Rink rink,
      Sighting carrier,
      List<Sighting> checkers,
      SkaterSettings skaters,
      double clickError) {
    this(rink, carrier, checkers, skaters, clickError, Math.hypot(clickError, OWN_ERROR));
  }

  /** The same with an error of places of one's own, 0 for a race by exact places. */
  MeasuredGain(
      Rink rink,
      Sighting carrier,
      List<Sighting> checkers,
      SkaterSettings skaters,
      double clickError,
      double placeError) {
    if (!(clickError >= 0 && clickError <= 5)) {
      throw new IllegalArgumentException(
          "the standard error of a clicked place lies from 0 to 5 m, not " + clickError);
    }
    this.rink = rink;
    this.legs = skaters;
    this.scale = Arrival.scale(legs.sigma());
    this.placeError = placeError;
    seen.add(carrier);
    checkers.stream()
        .sorted(Comparator.comparingDouble(c -> apart(carrier.racer(), c.racer())))
        .forEach(seen::add);
    boolean moving = seen.stream().limit(1 + SPEEDS_NEEDED).allMatch(Sighting::speedKnown);
    grade =
        !moving ? GainGrade.PLACES_ONLY : clickError > 0 ? GainGrade.CLICKED : GainGrade.MEASURED;
    int looks = (int) Math.round(LONGEST / STEP) + 1;
    coast = new double[looks];
    drift = new double[looks];
    stride = new double[looks];
    for (int j = 0; j < looks; j++) {
      double t = j * STEP;
      double s = Math.max(0, t - legs.reaction());
      double u = legs.tau() * (1 - Math.exp(-s / legs.tau()));
      coast[j] = legs.tau() * (1 - Math.exp(-t / legs.tau()));
      drift[j] = t - s + u;
      stride[j] = s - u;
    }
    now = new double[OF_EACH * seen.size()];
  }

  private static double apart(Racer a, Racer b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  /**
   * Draws the race.
   *
   * @param draws the chance of this release
   * @param n number of draws, 1 or more
   */
  public GainChance run(Draws draws, int n) {
    return run(draws, n, grade == GainGrade.PLACES_ONLY ? Fitted.PLACES_ONLY : Fitted.MEASURED);
  }

  /**
   * Draws the race and puts it right by a line of one's own.
   *
   * @param line log odds by those of the race and metres to the nearest opponent
   */
  GainChance run(Draws draws, int n, LogisticLine line) {
    Estimate.Sum raw = new Estimate.Sum();
    double[] sum = new double[FAN.length];
    double[] seconds = new double[FAN.length];
    int[] open = new int[FAN.length];
    int used = exact() ? 1 : n;
    double own = legs.carryingSpeed();
    for (int i = 0; i < used; i++) {
      place(draws, i);
      double distance = rink.shortOfCenter(now[0]);
      double best = distance > 0 ? 0 : 1;
      for (int k = 0; k < FAN.length && distance > 0; k++) {
        double side = distance * Math.tan(Math.toRadians(FAN[k]));
        if (k == 0 || Math.abs(now[1] + side) <= rink.width() / 2 - OFF_BOARDS) {
          double t = Skater.timeTo(distance, side, now[2], now[3], own, legs.tau(), 0, 0);
          double p = gained(t, distance, side);
          open[k]++;
          sum[k] += p;
          seconds[k] += t;
          best = Math.max(best, p);
        }
      }
      raw.add(best);
    }
    int way = straightest(sum, used);
    return new GainChance(
        chance(raw.estimate(), line),
        grade,
        raw.estimate().value(),
        raw.estimate().error(),
        open[way] > 0 ? seconds[way] / open[way] : 0,
        FAN[way]);
  }

  /** Whether every draw would be the same. */
  private boolean exact() {
    return placeError == 0 && seen.stream().allMatch(Sighting::speedKnown);
  }

  private static int straightest(double[] sum, int n) {
    double best = Arrays.stream(sum).max().orElseThrow();
    int way = 0;
    while (sum[way] < best - ALIKE * n) {
      way++;
    }
    return way;
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

  /** Puts everyone where he may have been in a draw. */
  private void place(Draws draws, int draw) {
    // Clicked twice, a velocity is off by so much; it is drawn from both that and what skaters do.
    double off = Math.sqrt(2) * placeError / CLICKS_APART;
    double share = square(SPEED_SPREAD) / (square(SPEED_SPREAD) + square(off));
    for (int s = 0; s < seen.size(); s++) {
      Racer r = seen.get(s).racer();
      double weight = seen.get(s).speedKnown() ? share : 0;
      double spread = SPEED_SPREAD * Math.sqrt(1 - weight);
      int at = OF_EACH * s;
      now[at] = about(r.x(), placeError, draws, draw, at);
      now[at + 1] = about(r.y(), placeError, draws, draw, at + 1);
      now[at + 2] = about(weight * r.vx(), spread, draws, draw, at + 2);
      now[at + 3] = about(weight * r.vy(), spread, draws, draw, at + 3);
    }
  }

  private static double about(double middle, double error, Draws draws, int draw, int at) {
    return error > 0 ? middle + error * draws.normal(draw, FIRST_SKATER + at) : middle;
  }

  /** Chance that no checker is there by the time at which the puck is at the line. */
  private double gained(double time, double dx, double dy) {
    double u = legs.tau() * (1 - Math.exp(-time / legs.tau()));
    double wx = dx - now[2] * u;
    double wy = dy - now[3] * u;
    double length = Math.hypot(wx, wy);
    double push = length > 0 ? legs.carryingSpeed() / length : 0;
    double chance = 1;
    for (int at = OF_EACH; at < now.length; at += OF_EACH) {
      double a = arrival(at, time + AFTER * scale, push * wx, push * wy);
      chance *= (1 + Math.exp(-a / scale)) / (1 + Math.exp((time - a) / scale));
    }
    return chance;
  }

  /** When a checker can have his stick at the carrier; infinite when not by then. */
  private double arrival(int at, double until, double wx, double wy) {
    double px = now[0] - now[at];
    double py = now[1] - now[at + 1];
    double before = 0;
    for (int j = 0; j < coast.length && (j - 1) * STEP < until; j++) {
      double push = j * STEP - coast[j];
      double qx = px + now[2] * coast[j] + wx * push - now[at + 2] * drift[j];
      double qy = py + now[3] * coast[j] + wy * push - now[at + 3] * drift[j];
      double late = Math.sqrt(qx * qx + qy * qy) - legs.reach() - legs.topSpeed() * stride[j];
      if (late <= 0) {
        return j == 0 ? 0 : STEP * (j - 1 + before / (before - late));
      }
      before = late;
    }
    return Double.POSITIVE_INFINITY;
  }
}
