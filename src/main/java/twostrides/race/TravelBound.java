package twostrides.race;

/**
 * The simplest honest bound on how long a released puck travels: no sooner than at the fastest
 * speed a puck has been shot, no later than the slowest slide that still arrives.
 *
 * <p>Formulas: earliest t = d / vmax. Latest: a puck that comes to rest exactly at distance d under
 * Coulomb friction, d = v0^2 / (2 mu g), t = v0 / (mu g) = sqrt(2 d / (mu g)). Drag only shortens
 * both the slide and this bound's use, so it is left out. Valid for a straight path on the ice; a
 * rim is longer, which the latest time forgives.
 *
 * @param fastest fastest release, m/s
 * @param friction least coefficient of kinetic friction of a puck on ice
 */
public record TravelBound(double fastest, double friction) {

  /** Standard gravity, m/s2 (CGPM 1901). */
  private static final double GRAVITY = 9.80665;

  /**
   * 45 m/s: top slap shot, Cross, The Physics Teacher 56:7, 2018 (abstract). 0.05: low end of the
   * plausible range, an engineering judgement, assumed.
   */
  public static final TravelBound DEFAULT = new TravelBound(45.0, 0.05);

  /** Rejects values outside physics. */
  public TravelBound {
    if (!(fastest > 0) || !(friction > 0 && friction < 1)) {
      throw new IllegalArgumentException(
          "a travel bound needs a speed above 0 m/s and a friction between 0 and 1, not "
              + fastest
              + " and "
              + friction);
    }
  }

  /**
   * Seconds below which no puck covers a distance.
   *
   * @param distance metres, 0 or more
   */
  public double earliest(double distance) {
    return distance / fastest;
  }

  /**
   * Seconds after which a puck that reaches a distance at all has reached it.
   *
   * @param distance metres, 0 or more
   */
  public double latest(double distance) {
    return Math.sqrt(2 * distance / (friction * GRAVITY));
  }

  /**
   * Whether a puck can have covered a distance in a gap read from a clock with a finite step: two
   * readings in whole seconds that differ by 3 lie between 2 and 4 s apart.
   *
   * @param distance metres
   * @param gap seconds between the two clock readings
   * @param clockStep smallest step of the clock, seconds
   */
  public boolean fits(double distance, double gap, double clockStep) {
    return gap + clockStep >= earliest(distance) && gap - clockStep <= latest(distance);
  }
}
