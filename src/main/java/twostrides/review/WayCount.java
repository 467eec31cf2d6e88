package twostrides.review;

import twostrides.rates.Clustered;
import twostrides.rates.Count;

/**
 * Attempts of one way out at one strength, and what came of them.
 *
 * @param way the way out
 * @param strength the strength at the release
 * @param byGame own-zone restarts of the attempts for which the sheet can say: of a team game by
 *     game, the same games in the same order for all its ways; of a player in one
 * @param icings icings of the same attempts
 * @param attempts all attempts, also those whose ending is not in the sheet
 */
public record WayCount(
    ShownWay way, ShownStrength strength, Clustered byGame, int icings, int attempts) {

  /** Rejects more endings than attempts. */
  public WayCount {
    Count restarts = byGame.total();
    if (restarts.trials() > attempts || icings > restarts.successes()) {
      throw new IllegalArgumentException("more endings than attempts: " + way + ", " + strength);
    }
  }

  /** Without games apart. */
  public WayCount(ShownWay way, ShownStrength strength, Count restarts, int icings, int attempts) {
    this(way, strength, new Clustered(restarts), icings, attempts);
  }

  /** Own-zone restarts of all games together. */
  public Count restarts() {
    return byGame.total();
  }
}
