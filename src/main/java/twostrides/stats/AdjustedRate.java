package twostrides.stats;

/**
 * A share adjusted by the shares of others, see {@link AdjustedRates}.
 *
 * @param count what was counted
 * @param share the adjusted rate, 0 to 1: the mean of what the share may be
 * @param interval 95 % of what it may be, equal tails
 */
public record AdjustedRate(Count count, double share, Interval interval) {

  /** Rejects a number that is no share. */
  public AdjustedRate {
    if (!(0 <= share && share <= 1)) {
      throw new IllegalArgumentException("an adjusted rate lies in 0 to 1, not " + share);
    }
  }
}
