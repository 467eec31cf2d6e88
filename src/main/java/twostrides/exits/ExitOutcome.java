package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.stats.CensoredTime;

/**
 * What followed an exit or a release.
 *
 * @param next who touched the puck next; empty where a tag does not say
 * @param restarted whether the next face-off was in the own zone with no control by the opponent in
 *     between; empty when the sheet does not say
 * @param cause why that face-off was there
 * @param restartElapsed seconds of play since the period began, at that face-off
 * @param restartWithinWindow whether any own-zone face-off of the team came within the window;
 *     empty in rows of tag sheets
 * @param reentry seconds of play until the opponent controlled the puck in the team's zone again; a
 *     stop cuts it short
 * @param against shots and goals that followed, from the release, or from the face-off where one
 *     followed in the own zone
 */
public record ExitOutcome(
    Optional<NextTouch> next,
    Optional<Boolean> restarted,
    RestartCause cause,
    OptionalDouble restartElapsed,
    Optional<Boolean> restartWithinWindow,
    Optional<CensoredTime> reentry,
    Optional<Against> against) {

  /** Shares what has few values. */
  public ExitOutcome {
    restarted = Shared.of(restarted);
    restartElapsed = Shared.tenths(restartElapsed);
    restartWithinWindow = Shared.of(restartWithinWindow);
    against = Shared.of(against);
  }
}
