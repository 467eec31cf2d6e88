package twostrides.exits;

import java.util.Optional;

/**
 * A team at an instant: who let the puck go or touched it last, when, where and how things stood.
 *
 * @param when when, and where in the sheets
 * @param team the team
 * @param opponent the other team, where the sheet names it
 * @param player who let the puck go, or touched it last, where the sheet names him
 * @param where where
 * @param onward where the puck was going
 * @param state how things stood
 */
public record Situation(
    When when,
    String team,
    Optional<String> opponent,
    Optional<String> player,
    Where where,
    Onward onward,
    GameState state) {

  /** Shares the names. */
  public Situation {
    opponent = Shared.of(opponent);
    player = Shared.of(player);
  }
}
