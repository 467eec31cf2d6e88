package twostrides.demo;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.demo.PenaltyBox.Manpower;

/**
 * What was really so with one exit attempt.
 *
 * @param period from 1
 * @param start second of play since the period began at which the attempt began
 * @param release second at which the puck left, or was sent on short of center, or was lost inside
 * @param side the team that leaves its zone
 * @param skater who carried, passed or sent the puck out, or lost it inside
 * @param way how it left
 * @param center what became of it at center, after a carry or a pass
 * @param manpower at the release
 * @param cause of the own-zone restart that followed
 * @param restart second of that restart
 * @param chance that the player who sent it on short of center would have gained center, 0 to 1
 */
record ExitTruth(
    int period,
    int start,
    int release,
    Side side,
    Skater skater,
    Way way,
    Optional<CenterMark> center,
    Manpower manpower,
    Cause cause,
    OptionalInt restart,
    OptionalDouble chance) {

  ExitTruth {
    boolean marked = way == Way.CARRY || way == Way.PASS;
    if (marked != center.isPresent() || (cause == Cause.NONE) == restart.isPresent()) {
      throw new IllegalArgumentException(
          "a carry or pass has a mark at center and a cause has a restart: "
              + way
              + " in period "
              + period
              + " at "
              + start
              + " s");
    }
  }

  /** How an exit attempt left the zone, as the simulator decided it. */
  enum Way {
    CARRY,
    PASS,
    CHIP,
    LONG_CLEARANCE,
    MISSED_PASS,
    KEPT_IN
  }

  /** What became of a carry or a pass at center, as the simulator decided it. */
  enum CenterMark {
    GAINED,
    RELEASED_SHORT,
    LOST_SHORT,
    BROUGHT_BACK,
    STOPPED
  }

  /** Why the next face-off was in the own zone, as the simulator decided it. */
  enum Cause {
    ICING,
    OTHER,
    NONE
  }
}
