package twostrides.race.puck;

/**
 * A puck as it leaves the stick.
 *
 * @param x place, metres from center ice; outside the boards counts as at them
 * @param y place, metres from the long axis
 * @param speed speed, m/s, 0 to 60
 * @param direction radians, 0 straight up ice, positive to the left
 * @param loft angle above the ice, radians, 0 to under pi/2
 */
public record PuckRelease(double x, double y, double speed, double direction, double loft) {

  /** Fastest release taken, m/s (assumed: a third above the hardest slap shot read of, 45 m/s). */
  private static final double FASTEST = 60;

  /**
   * Rejects values outside the ranges named at each parameter.
   *
   * @throws IllegalArgumentException for these
   */
  public PuckRelease {
    if (!(speed >= 0 && speed <= FASTEST) || !Double.isFinite(direction)) {
      throw new IllegalArgumentException(
          "a release needs a speed from 0 to 60 m/s and a finite direction, not %s and %s"
              .formatted(speed, direction));
    }
    if (!(loft >= 0 && loft < Math.PI / 2)) {
      throw new IllegalArgumentException("a loft lies from 0 to under pi/2, not " + loft);
    }
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a release needs a place, not " + x + ", " + y);
    }
  }

  /**
   * A puck along the ice.
   *
   * @param x place, metres from center ice; outside the boards counts as at them
   * @param y place, metres from the long axis
   * @param speed speed, m/s, 0 to 60
   * @param direction radians, 0 straight up ice, positive to the left
   * @throws IllegalArgumentException for values outside these ranges
   */
  public static PuckRelease alongTheIce(double x, double y, double speed, double direction) {
    return new PuckRelease(x, y, speed, direction, 0);
  }
}
