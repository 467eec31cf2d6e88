package twostrides.race;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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

  private final Rink rink;
  private final SkaterSettings legs;
  private final double scale;
  private final List<Instant> instants;

  /**
   * What a skater has at an instant, whoever he is.
   *
   * @param coast seconds' worth of the velocity he had that a carrier has come
   * @param push seconds' worth of his push that a carrier has come
   * @param drift seconds' worth of the velocity he had that a checker has come
   * @param stride seconds' worth of top speed that a checker can have come beyond that
   */
  private record Instant(double coast, double push, double drift, double stride) {}

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
    this.scale = legs.errorScale();
    instants =
        IntStream.rangeClosed(0, (int) Math.round(LONGEST / STEP))
            .mapToObj(j -> instant(j * STEP))
            .toList();
  }

  private Instant instant(double t) {
    double s = Math.max(0, t - legs.reaction());
    double coast = coast(t);
    double u = coast(s);
    return new Instant(coast, t - coast, t - s + u, s - u);
  }

  /** Seconds' worth of the velocity that a skater has come who lets himself glide. */
  private double coast(double t) {
    return legs.tau() * (1 - Math.exp(-t / legs.tau()));
  }

  /**
   * The carrier's way in one direction; empty where it ends at the boards or beyond, or where he is
   * at the line already. Straight up ice nothing is in the way.
   *
   * @param bodies everybody where he is, the carrier first
   * @param degrees direction from straight up ice, positive to the left
   */
  Optional<Run> run(List<Body> bodies, double degrees) {
    Body carrier = bodies.get(0);
    double ahead = rink.shortOfCenter(carrier.x());
    double side = ahead * Math.tan(Math.toRadians(degrees));
    boolean open = degrees == 0 || Math.abs(carrier.y() + side) <= rink.width() / 2 - OFF_BOARDS;
    if (ahead <= 0 || !open) {
      return Optional.empty();
    }
    double time = legs.carrier().timeTo(ahead, side, carrier.vx(), carrier.vy());
    double wx = ahead - carrier.vx() * coast(time);
    double wy = side - carrier.vy() * coast(time);
    double length = Math.hypot(wx, wy);
    double push = length > 0 ? legs.carryingSpeed() / length : 0;
    double chance = 1;
    for (Body checker : bodies.subList(1, bodies.size())) {
      double a = arrival(carrier, push * wx, push * wy, checker, time + AFTER * scale);
      chance *= (1 + Math.exp(-a / scale)) / (1 + Math.exp((time - a) / scale));
    }
    return Optional.of(new Run(time, chance));
  }

  /** When a checker can have his stick at a carrier who pushes so; infinite when not by then. */
  private double arrival(Body carrier, double wx, double wy, Body checker, double until) {
    double px = carrier.x() - checker.x();
    double py = carrier.y() - checker.y();
    double before = 0;
    for (int j = 0; j < instants.size() && (j - 1) * STEP < until; j++) {
      Instant now = instants.get(j);
      double qx = px + carrier.vx() * now.coast() + wx * now.push() - checker.vx() * now.drift();
      double qy = py + carrier.vy() * now.coast() + wy * now.push() - checker.vy() * now.drift();
      double late = Math.sqrt(qx * qx + qy * qy) - legs.reach() - legs.topSpeed() * now.stride();
      if (late <= 0) {
        return j == 0 ? 0 : STEP * (j - 1 + before / (before - late));
      }
      before = late;
    }
    return Double.POSITIVE_INFINITY;
  }
}
