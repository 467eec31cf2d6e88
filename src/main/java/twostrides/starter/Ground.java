package twostrides.starter;

/**
 * In which numbers a sheet writes places, by the smallest and the largest of them.
 *
 * @param unit ft or m
 * @param centerX center ice
 * @param centerY center ice
 * @param rink the rink's name
 * @param sure whether the numbers fit one rink only
 */
record Ground(String unit, String centerX, String centerY, String rink, boolean sure) {

  /** Farther than any place on a rink in metres from its center, or from its corner. */
  private static final double METRES = 33;

  private static final double METRES_FROM_CORNER = 66;

  /** A rink in feet from its center, some feet outside the boards. */
  private static final double HALF_FEET = 104;

  private static final double FEET = 206;

  /** Behind the boards of the narrower rink, m from the long axis. */
  private static final double NARROW = 13.5;

  static Ground of(Column x, Column y) {
    boolean fromCorner = x.least() > -3 && y.least() > -3;
    if (fromCorner) {
      if (x.most() > METRES_FROM_CORNER) {
        return new Ground("ft", "100", "42.5", "nhl", x.most() <= FEET);
      }
      boolean wide = y.most() > 2 * NARROW;
      return wide
          ? new Ground("m", "30", "15", "iihf", true)
          : new Ground("m", "30.48", "12.955", "nhl", false);
    }
    if (Math.max(x.most(), -x.least()) > METRES) {
      return new Ground("ft", "0", "0", "nhl", Math.max(x.most(), -x.least()) <= HALF_FEET);
    }
    boolean wide = Math.max(y.most(), -y.least()) > NARROW;
    return new Ground("m", "0", "0", wide ? "iihf" : "nhl", wide);
  }
}
