package twostrides.stats;

/**
 * A closed interval of any finite numbers: differences, ratios, seconds.
 *
 * @param low lower end
 * @param high upper end, not below the lower
 */
public record Range(double low, double high) {

  /** Rejects ends out of order, infinite or not a number. */
  public Range {
    if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
      throw new IllegalArgumentException(
          "a range needs finite low <= high, not " + low + ", " + high);
    }
  }

  /** Whether the value lies inside; the ends belong to it. */
  public boolean contains(double value) {
    return low <= value && value <= high;
  }
}
