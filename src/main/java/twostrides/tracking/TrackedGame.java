package twostrides.tracking;

import twostrides.game.Usual;

/**
 * The game whose tracking is read.
 *
 * @param id its id; rows of other games are passed over
 * @param home the home team, as the tracking sheet names it
 * @param away the other team, as the tracking sheet names it
 * @param usual its rink and the seconds of a period, where the map of the tracking sheets does not
 *     say
 */
public record TrackedGame(String id, String home, String away, Usual usual) {
  /**
   * Checks that the two teams differ.
   *
   * @throws IllegalArgumentException when they do not
   */
  public TrackedGame {
    if (home.isBlank() || away.isBlank() || home.equals(away)) {
      throw new IllegalArgumentException(
          "a game has two teams, not \"" + home + "\" and \"" + away + "\"");
    }
  }

  /**
   * A game whose play sheet was read.
   *
   * @param game its outline
   */
  public static TrackedGame of(GameOutline game) {
    Usual usual = new Usual(game.rink(), game.periodLength());
    return new TrackedGame(game.id(), game.home().orElseThrow(), game.away().orElseThrow(), usual);
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
