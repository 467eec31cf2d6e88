package twostrides.race;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.solvers.BisectionSolver;
import twostrides.race.puck.Ice;
import twostrides.race.puck.PuckPath;
import twostrides.race.puck.PuckRelease;
import twostrides.race.puck.Slide;
import twostrides.rink.Rink;

/**
 * How hard a puck must be laid along the ice to die where it is meant to, on ordinary ice and in
 * one direction. Found by halving an interval of speeds, as if a harder puck always went farther;
 * rebounds off the side boards keep to that in every case looked at.
 *
 * @param leavesZone least speed that takes it wholly past the own blue line, m/s; empty when
 *     released beyond it
 * @param redLine least speed that takes it to the red line, m/s
 * @param farBlueLine least speed that takes it wholly past the far blue line, m/s
 * @param goalLine least speed that takes it wholly past the far goal line, m/s; a softer one dies
 *     short of it
 */
public record SoftSpeeds(
    OptionalDouble leavesZone, double redLine, double farBlueLine, double goalLine) {

  /** Hardest speed tried, m/s: the top slap shot, Cross, The Physics Teacher 56:7, 2018. */
  private static final double HARDEST = 45;

  /** How exactly a speed is found, m/s. */
  private static final double EXACT = 1e-6;

  /**
   * The speeds of a place and a direction; infinite for a line that no speed reaches.
   *
   * @param rink the rink
   * @param x place of the release, metres from center ice
   * @param y place of the release, metres from the long axis
   * @param direction radians, 0 straight up ice
   */
  static SoftSpeeds of(Rink rink, double x, double y, double direction) {
    DoubleFunction<PuckPath> laid =
        speed -> PuckPath.of(rink, Ice.ORDINARY, PuckRelease.alongTheIce(x, y, speed, direction));
    return new SoftSpeeds(
        rink.inOwnZone(x)
            ? OptionalDouble.of(least(speed -> laid.apply(speed).pastOwnBlueLine()))
            : OptionalDouble.empty(),
        least(speed -> laid.apply(speed).touchesRedLine()),
        least(speed -> laid.apply(speed).pastFarBlueLine()),
        least(speed -> laid.apply(speed).pastFarGoalLine()));
  }

  /** The least speed at which a line is reached. */
  private static double least(DoubleFunction<OptionalDouble> line) {
    if (line.apply(HARDEST).isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    if (line.apply(0).isPresent()) {
      return 0;
    }
    return new BisectionSolver(EXACT)
        .solve(100, speed -> line.apply(speed).isPresent() ? 1 : -1, 0, HARDEST);
  }

  /** How far a puck of a speed slides on ordinary ice, metres; infinite for an infinite speed. */
  static double slides(double speed) {
    return Double.isInfinite(speed)
        ? speed
        : new Slide(speed, Ice.ORDINARY.deceleration(), Ice.ORDINARY.drag()).stoppingDistance();
  }
}
