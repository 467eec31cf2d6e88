package twostrides.tracking;

import twostrides.rink.Rink;

/**
 * The game whose tracking is read.
 *
 * @param id its id; rows of other games are passed over
 * @param home the home team, as the tracking sheet names it
 * @param away the other team, as the tracking sheet names it
 * @param rink its rink, where the map of the tracking sheets does not say
 */
public record TrackedGame(String id, String home, String away, Rink rink) {
  /** Checks that the two teams differ. */
  public TrackedGame {
    if (home.isBlank() || away.isBlank() || home.equals(away)) {
      throw new IllegalArgumentException(
          "a game has two teams, not \"" + home + "\" and \"" + away + "\"");
    }
  }

  /**
   * Whether a team is one of the two.
   *
   * @param team its name
   */
  boolean plays(String team) {
    return team.equals(home) || team.equals(away);
  }
}
