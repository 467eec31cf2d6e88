package twostrides.race;

/**
 * A chance of gaining center, with how sure it is.
 *
 * @param p the chance, 0 to 1
 * @param low lower end of its 95 % interval
 * @param high upper end
 */
public record Chance(double p, double low, double high) {

  /** Certain: the puck is at the red line. */
  public static final Chance SURE = new Chance(1, 1, 1);

  /**
   * Rejects ends out of order or outside 0 to 1.
   *
   * @throws IllegalArgumentException for these
   */
  public Chance {
    if (!(0 <= low && low <= p && p <= high && high <= 1)) {
      throw new IllegalArgumentException(
          "a chance needs 0 <= low <= p <= high <= 1, not " + low + ", " + p + ", " + high);
    }
  }

  /** Normal 95 % either side. */
  static final double TWO_SIDED = 1.959964;

  /**
   * A chance whose log odds are normal.
   *
   * @param logOdds log odds of the chance
   * @param variance theirs
   */
  static Chance of(double logOdds, double variance) {
    double off = TWO_SIDED * Math.sqrt(variance);
    return new Chance(
        LogisticLine.chance(logOdds),
        LogisticLine.chance(logOdds - off),
        LogisticLine.chance(logOdds + off));
  }
}
