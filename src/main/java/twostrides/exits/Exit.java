package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An exit attempt.
 *
 * @param number number in its game, from 1
 * @param began seconds of play since the period began, when the attempt began
 * @param at the team at the release, or at the touch at which the exit was settled; its player let
 *     the puck go there
 * @param player who carried, passed or sent the puck out, or lost it inside: the same player but
 *     after a pass that a teammate released short
 * @param way the way out
 * @param mark what happened at center; empty for ways out that have no mark
 * @param outcome what followed
 * @param shift mean seconds of play that the team's skaters had been on the ice at the release
 */
public record Exit(
    int number,
    double began,
    Situation at,
    Optional<String> player,
    WayOut way,
    Optional<AtCenter> mark,
    ExitOutcome outcome,
    OptionalDouble shift) {

  /** Shares what has few values. */
  public Exit {
    player = Shared.of(player);
    mark = Shared.of(mark);
    shift = Shared.tenths(shift);
  }
}
