package twostrides.rates;

/**
 * A share drawn toward the shares of its group.
 *
 * @param count what was counted
 * @param share the share after drawing, 0 to 1
 * @param interval 95 % equal-tail interval of the share. It holds on average over a group, not for
 *     each of its members: one far from the rest is drawn too far and missed more often
 * @param priorWeight how much of the share comes from the group, 0 to 1
 * @param common whether share and interval are the group's common ones: then they say nothing of
 *     how far this member may lie from it
 */
public record Shrunk(
    Count count, double share, Interval interval, double priorWeight, boolean common) {

  /** Rejects numbers that are no shares. */
  public Shrunk {
    if (!(0 <= share && share <= 1 && 0 <= priorWeight && priorWeight <= 1)) {
      throw new IllegalArgumentException(
          "a drawn share and its weight lie in 0 to 1, not " + share + ", " + priorWeight);
    }
  }
}
