package twostrides.race;

import java.util.OptionalDouble;
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

  /** Halvings of the interval: to a millionth of a metre a second. */
  private static final int HALVINGS = 26;

  /** A line that a puck may reach. */
  private interface Line {
    double time(PuckPath path);
  }

  /**
   * The speeds of a place and a direction; NaN for a line that no speed reaches.
   *
   * @param rink the rink
   * @param x place of the release, metres from center ice
   * @param y place of the release, metres from the long axis
   * @param direction radians, 0 straight up ice
   */
  static SoftSpeeds of(Rink rink, double x, double y, double direction) {
    PuckPath path = new PuckPath(rink);
    return new SoftSpeeds(
        rink.inOwnZone(x)
            ? OptionalDouble.of(least(path, x, y, direction, PuckPath::pastOwnBlueLine))
            : OptionalDouble.empty(),
        least(path, x, y, direction, PuckPath::touchesRedLine),
        least(path, x, y, direction, PuckPath::pastFarBlueLine),
        least(path, x, y, direction, PuckPath::pastFarGoalLine));
  }

  private static double least(PuckPath path, double x, double y, double direction, Line line) {
    double low = 0;
    double high = HARDEST;
    if (!reaches(path, x, y, high, direction, line)) {
      return Double.NaN;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (reaches(path, x, y, middle, direction, line)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private static boolean reaches(
      PuckPath path, double x, double y, double speed, double direction, Line line) {
    return line.time(path.slide(PuckSettings.DEFAULT, x, y, speed, direction)) >= 0;
  }

  /** How far a puck of a speed slides on ordinary ice, metres. */
  static double slides(double speed) {
    PuckSettings d = PuckSettings.DEFAULT;
    return Slide.stoppingDistance(speed, d.deceleration(), d.drag());
  }
}
