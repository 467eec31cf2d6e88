package twostrides.rates;

/**
 * A share drawn toward the shares of its group.
 *
 * @param count what was counted
 * @param share the share after drawing, 0 to 1
 * @param interval 95 % equal-tail interval of the share; it takes the group's own spread as known,
 *     so it is somewhat too narrow when the groups are few
 * @param priorWeight how much of the share comes from the group, 0 to 1
 */
public record Shrunk(Count count, double share, Interval interval, double priorWeight) {

  /** Rejects numbers that are no shares. */
  public Shrunk {
    if (!(0 <= share && share <= 1 && 0 <= priorWeight && priorWeight <= 1)) {
      throw new IllegalArgumentException(
          "a drawn share and its weight lie in 0 to 1, not " + share + ", " + priorWeight);
    }
  }
}
