package twostrides.demo;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.demo.PenaltyBox.Manpower;

/** What was really so with one exit attempt; filled in while it happens. */
final class ExitTruth {
  /** From 1. */
  final int period;

  /** Second of play since the period began at which the attempt began. */
  final int start;

  /** The team that leaves its zone. */
  final Side side;

  /** Second at which the puck left, or was sent on short of center, or was lost inside. */
  int release;

  /** Who carried, passed or sent the puck out, or lost it inside. */
  Skater skater;

  /** How it left. */
  Way way;

  /** What became of it at center, after a carry or a pass. */
  Optional<CenterMark> center = Optional.empty();

  /** Manpower at the release. */
  Manpower manpower;

  /** Cause of the own-zone restart that followed. */
  Cause cause = Cause.NONE;

  /** Second of that restart. */
  OptionalInt restart = OptionalInt.empty();

  /** Chance that the player who sent it on short of center would have gained center, 0 to 1. */
  OptionalDouble chance = OptionalDouble.empty();

  /** An attempt that begins now. */
  ExitTruth(GameClock clock, Side side) {
    period = clock.period();
    start = clock.shown();
    this.side = side;
  }

  /** It left the zone now, or was lost inside. */
  void left(Way how, Skater by, GameClock clock, Manpower now) {
    way = how;
    skater = by;
    release = clock.shown();
    manpower = now;
  }

  /**
   * It is known whether an own-zone restart followed.
   *
   * @param why its cause
   * @param when its second; empty without one
   * @throws IllegalStateException when something about the attempt is not known
   */
  void settled(Cause why, OptionalInt when) {
    boolean marked = way == Way.CARRY || way == Way.PASS;
    if (marked != center.isPresent() || (why == Cause.NONE) == when.isPresent()) {
      throw new IllegalStateException(
          "a carry or pass has a mark at center and a cause has a restart: "
              + way
              + " in period "
              + period
              + " at "
              + start
              + " s");
    }
    cause = why;
    restart = when;
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
