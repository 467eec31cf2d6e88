package twostrides.review;

import twostrides.rates.Count;

/**
 * Attempts of one way out at one strength, and what came of them.
 *
 * @param way the way out
 * @param strength the strength at the release
 * @param restarts own-zone restarts of the attempts for which the sheet can say
 * @param icings icings of the same attempts
 * @param attempts all attempts, also those whose ending is not in the sheet
 */
public record WayCount(
    ShownWay way, ShownStrength strength, Count restarts, int icings, int attempts) {

  /** Rejects more endings than attempts. */
  public WayCount {
    if (restarts.trials() > attempts || icings > restarts.successes()) {
      throw new IllegalArgumentException("more endings than attempts: " + way + ", " + strength);
    }
  }
}
