package twostrides.race;

import java.util.List;
import java.util.Optional;
import twostrides.rink.Rink;

/**
 * A carrier's ways to the red line against the checkers, all of them exactly where they are:
 * formulas in {@link MeasuredGain}.
 */
final class CenterRun {

  /** Least distance of a crossing point from the side boards, m. Assumed: a skater's width. */
  private static final double OFF_BOARDS = 0.5;

  /** Looks at the way every so many seconds; between looks the gap is taken as straight. */
  private static final double STEP = 0.05;

  /** Scales of the arrival error past the red line in which an arrival is still sought. */
  private static final double AFTER = 9;

  /** Longest way looked at, s: 60 m at 5 m/s. */
  private static final double LONGEST = 12;

  private static final int LOOKS = 1 + (int) Math.round(LONGEST / STEP);

  private final Rink rink;
  private final SkaterSettings legs;
  private final Skater carrying;
  private final double scale;

  /** Seconds' worth of the velocity he had that a carrier has come, at each look. */
  private final double[] coast = new double[LOOKS];

  /** Seconds' worth of his push that a carrier has come. */
  private final double[] push = new double[LOOKS];

  /** Seconds' worth of the velocity he had that a checker has come. */
  private final double[] drift = new double[LOOKS];

  /** Seconds' worth of top speed that a checker can have come beyond that. */
  private final double[] stride = new double[LOOKS];

  /** What is left, over tau, of the difference of a carrier's velocity and his push. */
  private final double[] ease = new double[LOOKS];

  /** What is left, over tau, of a checker's velocity. */
  private final double[] fade = new double[LOOKS];

  /** What a checker's drift has of fade for one of ease, from his reaction on. */
  private final double later;

  /**
   * A skater in one simulation.
   *
   * @param x metres from center ice
   * @param y metres from the long axis
   * @param vx metres a second
   * @param vy metres a second
   */
  record Body(double x, double y, double vx, double vy) {}

  /**
   * One way to the red line in one simulation.
   *
   * @param time seconds that it takes
   * @param chance the chance that no checker is there before
   */
  record Run(double time, double chance) {}

  /**
   * Runs of skaters alike.
   *
   * @param rink the rink
   * @param legs what a skater of this game can do
   */
  CenterRun(Rink rink, SkaterSettings legs) {
    this.rink = rink;
    this.legs = legs;
    this.carrying = legs.carrier();
    this.scale = legs.errorScale();
    this.later = Math.exp(legs.reaction() / legs.tau());
    for (int j = 0; j < LOOKS; j++) {
      double t = j * STEP;
      double s = Math.max(0, t - legs.reaction());
      double u = coast(s);
      coast[j] = coast(t);
      push[j] = t - coast[j];
      drift[j] = t - s + u;
      stride[j] = s - u;
      ease[j] = Math.exp(-t / legs.tau()) / legs.tau();
      fade[j] = Math.exp(-s / legs.tau()) / legs.tau();
    }
  }

  /** Seconds' worth of the velocity that a skater has come who lets himself glide. */
  private double coast(double t) {
    return legs.tau() * (1 - Math.exp(-t / legs.tau()));
  }

  /**
   * The carrier's way in one direction; empty where it ends at the boards or beyond, where he is at
   * the line already, or where it is no better than another. Straight up ice nothing is in the way.
   *
   * @param bodies everybody where he is, the carrier first
   * @param slope metres to the left for each metre up ice
   * @param other the chance of another way, below 0 for none
   */
  Optional<Run> run(List<Body> bodies, double slope, double other) {
    Body carrier = bodies.get(0);
    double ahead = rink.shortOfCenter(carrier.x());
    double side = ahead * slope;
    boolean open = slope == 0 || Math.abs(carrier.y() + side) <= rink.width() / 2 - OFF_BOARDS;
    if (ahead <= 0 || !open) {
      return Optional.empty();
    }
    double time = carrying.timeTo(ahead, side, carrier.vx(), carrier.vy());
    double come = coast(time);
    double wx = ahead - carrier.vx() * come;
    double wy = side - carrier.vy() * come;
    double length = Math.hypot(wx, wy);
    double push = length > 0 ? legs.carryingSpeed() / length : 0;
    double chance = 1;
    for (int i = 1; i < bodies.size() && chance > other; i++) {
      double a = arrival(carrier, push * wx, push * wy, bodies.get(i), time + AFTER * scale);
      if (a < Double.POSITIVE_INFINITY) {
        chance *= (1 + Math.exp(-a / scale)) / (1 + Math.exp((time - a) / scale));
      }
    }
    return chance > other ? Optional.of(new Run(time, chance)) : Optional.empty();
  }

  /**
   * When a checker can have his stick at a carrier who pushes so; infinite when not by then. Looks
   * at which he cannot yet be there are left out. The gap |q| - reach - vm d, d the seconds in
   * {@link #stride}, is at a time h from a look at least g + g' h - m h^2/2: |q| bends downward by
   * no more than |q''|, and q'' and d'' only fade.
   */
  private double arrival(Body carrier, double wx, double wy, Body checker, double until) {
    double ax = carrier.x() - checker.x();
    double ay = carrier.y() - checker.y();
    double vx = carrier.vx();
    double vy = carrier.vy();
    double ox = checker.vx();
    double oy = checker.vy();
    double bend =
        Math.max(length(wx - vx, wy - vy), length(wx - vx + later * ox, wy - vy + later * oy));
    int skipped = 0;
    double before = 0;
    for (int j = 0; j < LOOKS && (j - 1) * STEP < until; j += skipped) {
      double qx = ax + vx * coast[j] + wx * push[j] - ox * drift[j];
      double qy = ay + vy * coast[j] + wy * push[j] - oy * drift[j];
      double q = length(qx, qy);
      double late = q - legs.reach() - legs.topSpeed() * stride[j];
      if (late <= 0) {
        double last = skipped > 1 ? late(carrier, wx, wy, checker, j - 1) : before;
        return j == 0 ? 0 : STEP * (j - 1 + last / (last - late));
      }
      before = late;
      double pace = legs.tau() * ease[j];
      double drive = legs.tau() * fade[j];
      double rate =
          ((wx + pace * (vx - wx) - drive * ox) * qx + (wy + pace * (vy - wy) - drive * oy) * qy)
                  / q
              - legs.topSpeed() * (1 - drive);
      double most = bend * ease[j] + legs.topSpeed() * fade[j];
      double root = Math.sqrt(rate * rate + 2 * late * most);
      double sooner = rate < 0 ? 2 * late / (root - rate) : (root + rate) / most;
      skipped = Math.max(1, (int) (sooner / STEP));
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double length(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  /** Metres by which a checker's stick is short of the carrier at a look. */
  private double late(Body carrier, double wx, double wy, Body checker, int j) {
    double qx =
        carrier.x()
            - checker.x()
            + carrier.vx() * coast[j]
            + wx * push[j]
            - checker.vx() * drift[j];
    double qy =
        carrier.y()
            - checker.y()
            + carrier.vy() * coast[j]
            + wy * push[j]
            - checker.vy() * drift[j];
    return length(qx, qy) - legs.reach() - legs.topSpeed() * stride[j];
  }
}
