package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Strength;

/**
 * A face-off in a team's own zone.
 *
 * @param faceOff the face-off
 * @param at the team of the zone: at its last touch, where it had the puck last, else at the
 *     face-off
 * @param ownLast whether the team itself had the puck last; empty where no touch is written since
 *     the face-off before
 * @param behind what was behind it, where the team had the puck last
 */
public record Restart(
    FaceOff faceOff, Situation at, Optional<Boolean> ownLast, Optional<Behind> behind) {

  /**
   * The face-off.
   *
   * @param when when, where the sheet has a row of it; of a tag sheet the tag's own instant
   * @param elapsed seconds of play since the period began; empty in rows of tag sheets
   * @param cause why it is there
   * @param reason why the cause was found so, in words
   * @param won whether the team of the zone won it; empty in rows of tag sheets
   * @param strength strength of the team of the zone at the face-off: after a penalty not that of
   *     the release
   * @param against shots and goals that followed
   * @param shifts how long the team's skaters had been and stayed on the ice
   */
  public record FaceOff(
      When when,
      OptionalDouble elapsed,
      RestartCause cause,
      String reason,
      Optional<Boolean> won,
      Optional<Strength> strength,
      Optional<Against> against,
      ShiftTimes shifts) {}

  /**
   * Mean seconds of play of the team's skaters, where the row lists them.
   *
   * @param before on the ice before the face-off
   * @param after on the ice after it
   */
  public record ShiftTimes(OptionalDouble before, OptionalDouble after) {

    /** Nobody is listed. */
    static final ShiftTimes UNKNOWN =
        new ShiftTimes(OptionalDouble.empty(), OptionalDouble.empty());
  }

  /**
   * The team's own last touch.
   *
   * @param release the release that it was, if it was one short of center
   * @param exit the exit attempt that it belongs to
   * @param ruling what the book says of it
   * @param secondsToFaceOff seconds of play until the face-off
   */
  public record Behind(
      Optional<Release> release,
      Optional<Exit> exit,
      BookRuling ruling,
      OptionalDouble secondsToFaceOff) {}
}
