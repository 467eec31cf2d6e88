package twostrides.race;

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
 * a)/s)), T the carrier's time. The mean over the draws takes in the legs of both teams (10 %
 * either side) and velocities that are not known (0, each way with a standard deviation of {@link
 * #SPEED_SPREAD}).
 *
 * <p>A checker who stands farther down ice never makes the chance smaller. One farther up ice may:
 * he has time to turn to a carrier who would have flown past him. Not in the model: that a checker
 * who is there may fail to take the puck, or back off instead of coming (so the chance is a low
 * one), passes, boards on the way, and whoever was not seen.
 */
public final class MeasuredGain {

  /** Standard deviation of an unknown velocity, along and across, m/s. Assumed. */
  public static final double SPEED_SPREAD = 2;

  /** Directions in degrees from straight up ice, nearest to straight first. Assumed. */
  private static final double[] FAN = {0, 15, -15, 30, -30, 45, -45, 60, -60};

  /** Least distance of a crossing point from the side boards, m. Assumed: a skater's width. */
  private static final double OFF_BOARDS = 0.5;

  /** Looks at the way every so many seconds; between looks the gap is taken as straight. */
  private static final double STEP = 0.05;

  /** Seconds past the red line in which a checker's arrival is still sought: nine scales. */
  private static final double AFTER = 1.5;

  /** Longest way looked at, s: 60 m at 5 m/s. */
  private static final double LONGEST = 12;

  /** Ways whose chances differ by less are alike: the straightest of them is shown. Assumed. */
  private static final double ALIKE = 0.01;

  /** First variable of a draw; those of {@link RaceModel} lie below. */
  private static final int CARRIER_LEGS = 1000;

  private static final int CHECKER_LEGS = 1001;
  private static final int CARRIER_SPEED = 1002;
  private static final int CHECKER_SPEED = 1004;

  private final Sighting carrier;
  private final List<Sighting> checkers;
  private final SkaterSettings legs;
  private final double scale;
  private final double distance;
  private final boolean[] open = new boolean[FAN.length];
  private final double[] coast;
  private final double[] drift;
  private final double[] stride;

  /** Velocities of a draw: the carrier's, then the checkers'. */
  private final double[] v;

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
    this(rink, carrier, checkers, skaters, 0);
  }

  /**
   * A race of one release whose places were clicked.
   *
   * @param rink the rink
   * @param carrier who let the puck go, at its place; acting team's frame
   * @param checkers the opponents who were seen
   * @param skaters what a skater of this game can do
   * @param placeError standard error of each place along and across, metres; 0 for tracking. A
   *     known speed is then taken to come from two such places half a second apart
   */
  public MeasuredGain(
      Rink rink,
      Sighting carrier,
      List<Sighting> checkers,
      SkaterSettings skaters,
      double placeError) {
    this.carrier = carrier;
    this.checkers = List.copyOf(checkers);
    this.legs = skaters;
    this.scale = Arrival.scale(legs.sigma());
    this.distance = rink.shortOfCenter(carrier.racer().x());
    for (int k = 0; k < FAN.length; k++) {
      double y = carrier.racer().y() + side(k);
      open[k] = k == 0 || Math.abs(y) <= rink.width() / 2 - OFF_BOARDS;
    }
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
    v = new double[2 * (checkers.size() + 1)];
  }

  /** How far across the rink a direction of the fan leads, m. */
  private double side(int k) {
    return distance * Math.tan(Math.toRadians(FAN[k]));
  }

  /**
   * Draws the race.
   *
   * @param draws the chance of this release
   * @param n number of draws, 1 or more
   */
  public GainChance run(Draws draws, int n) {
    if (distance <= 0) {
      return new GainChance(Chance.SURE, GainGrade.MEASURED, 1, 0, 0, 0);
    }
    double[] sum = new double[FAN.length];
    double[] squares = new double[FAN.length];
    double[] seconds = new double[FAN.length];
    for (int i = 0; i < n; i++) {
      double own = legs.carryingSpeed() * draws.triangular(i, CARRIER_LEGS, 0.9, 1, 1.1);
      double theirs = legs.topSpeed() * draws.triangular(i, CHECKER_LEGS, 0.9, 1, 1.1);
      velocity(0, carrier, draws, i, CARRIER_SPEED);
      for (int c = 0; c < checkers.size(); c++) {
        velocity(c + 1, checkers.get(c), draws, i, CHECKER_SPEED + 2 * c);
      }
      for (int k = 0; k < FAN.length; k++) {
        if (open[k]) {
          double t = Skater.timeTo(distance, side(k), v[0], v[1], own, legs.tau(), 0, 0);
          double p = gained(t, distance, side(k), own, theirs);
          sum[k] += p;
          squares[k] += p * p;
          seconds[k] += t;
        }
      }
    }
    int best = 0;
    for (int k = 1; k < FAN.length; k++) {
      best = sum[k] > sum[best] ? k : best;
    }
    int way = 0;
    while (sum[way] < sum[best] - ALIKE * n) {
      way++;
    }
    double mean = sum[best] / n;
    double spread = Math.sqrt(Math.max(0, squares[best] / n - mean * mean) / n);
    Chance chance =
        new Chance(mean, Math.max(0, mean - 2 * spread), Math.min(1, mean + 2 * spread));
    return new GainChance(chance, GainGrade.MEASURED, mean, spread, seconds[way] / n, FAN[way]);
  }

  private void velocity(int at, Sighting skater, Draws draws, int draw, int variable) {
    boolean known = skater.speedKnown();
    v[2 * at] = known ? skater.racer().vx() : SPEED_SPREAD * draws.normal(draw, variable);
    v[2 * at + 1] = known ? skater.racer().vy() : SPEED_SPREAD * draws.normal(draw, variable + 1);
  }

  /** Chance that no checker is there by the time at which the puck is at the line. */
  private double gained(double time, double dx, double dy, double own, double theirs) {
    double u = legs.tau() * (1 - Math.exp(-time / legs.tau()));
    double wx = dx - v[0] * u;
    double wy = dy - v[1] * u;
    double length = Math.hypot(wx, wy);
    double push = length > 0 ? own / length : 0;
    double chance = 1;
    for (int c = 0; c < checkers.size(); c++) {
      double a = arrival(c, time + AFTER, push * wx, push * wy, theirs);
      chance *= (1 + Math.exp(-a / scale)) / (1 + Math.exp((time - a) / scale));
    }
    return chance;
  }

  /** When a checker can have his stick at the carrier; infinite when not by then. */
  private double arrival(int c, double until, double wx, double wy, double topSpeed) {
    Racer r = checkers.get(c).racer();
    double px = carrier.racer().x() - r.x();
    double py = carrier.racer().y() - r.y();
    double vx = v[2 * c + 2];
    double vy = v[2 * c + 3];
    double before = 0;
    for (int j = 0; j < coast.length && (j - 1) * STEP < until; j++) {
      double push = j * STEP - coast[j];
      double qx = px + v[0] * coast[j] + wx * push - vx * drift[j];
      double qy = py + v[1] * coast[j] + wy * push - vy * drift[j];
      double late = Math.sqrt(qx * qx + qy * qy) - legs.reach() - topSpeed * stride[j];
      if (late <= 0) {
        return j == 0 ? 0 : STEP * (j - 1 + before / (before - late));
      }
      before = late;
    }
    return Double.POSITIVE_INFINITY;
  }
}
