package twostrides.stats;

/**
 * A closed interval of shares.
 *
 * @param low lower end, 0 to 1
 * @param high upper end, 0 to 1
 */
public record Interval(double low, double high) {

  /** Rejects ends out of order or outside 0 to 1. */
  public Interval {
    if (!(0 <= low && low <= high && high <= 1)) {
      throw new IllegalArgumentException(
          "an interval of shares needs 0 <= low <= high <= 1, not " + low + ", " + high);
    }
  }
}
