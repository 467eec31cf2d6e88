package twostrides.findings;

import twostrides.game.Strength;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/**
 * Attempts of one way out at one strength, and the defensive-zone face-offs that followed, by
 * cause: an icing, a penalty and a frozen puck are different things to a coach.
 *
 * @param way the way out
 * @param strength the strength at the release
 * @param byGame icings of the attempts for which the sheet can say: of a team game by game, the
 *     same games in the same order for all its ways; of a player in one
 * @param penalties how many of the same attempts a face-off after a penalty followed
 * @param others how many of them one for another reason, or one that the sheet does not tell
 * @param attempts all attempts, also those whose ending is not in the sheet
 */
public record WayCount(
    ShownWay way, Strength strength, Clustered byGame, int penalties, int others, int attempts) {

  /** Rejects more endings than attempts. */
  public WayCount {
    Count iced = byGame.total();
    if (iced.trials() > attempts || iced.successes() + penalties + others > iced.trials()) {
      throw new IllegalArgumentException("more endings than attempts: " + way + ", " + strength);
    }
  }

  /** Icings of all games together. */
  public Count iced() {
    return byGame.total();
  }
}
