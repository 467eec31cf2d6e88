package twostrides.race;

/**
 * A skater in a race, where he is at the release.
 *
 * @param chases whether he plays for the team that let the puck go
 * @param x metres from center ice, frame of the team that let it go
 * @param y metres from the long axis
 * @param vx metres a second
 * @param vy metres a second
 */
public record Racer(boolean chases, double x, double y, double vx, double vy) {

  /** Fastest skater taken, m/s: above every top speed read of (10.95 m/s, league tracking). */
  public static final double FASTEST = 12;

  /**
   * Rejects a skater whom no rink has seen.
   *
   * @throws IllegalArgumentException for these
   */
  public Racer {
    double speed = Math.hypot(vx, vy);
    if (!(speed <= FASTEST)) {
      throw new IllegalArgumentException(
          "a skater at %s m/s: found more than %s m/s, expected a speed that skaters reach"
              .formatted(speed, FASTEST));
    }
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a skater needs a place, not " + x + ", " + y);
    }
  }
}
