package twostrides.demo;

import twostrides.demo.ExitTruth.Cause;

/** What was really so with one release short of center. */
final class ReleaseTruth {
  /** From 1. */
  final int period;

  /** Second of play since the period began. */
  final int release;

  /** Who let the puck go, and where. */
  final Carrier by;

  /** Sent, or a missed pass. */
  final Kind kind;

  /** Metres from the puck to the near edge of the red line, above 0. */
  final double shortOfCenter;

  /** Chance that the carrier would have gained center had he kept the puck, 0 to 1. */
  final double chance;

  /** Chance that a release such as this one by this player is iced, 0 to 1. */
  final double iced;

  /** Where the skaters were. */
  final Seen seen;

  /** Cause of the own-zone restart that this release brought. */
  Cause cause = Cause.NONE;

  /** A release now. */
  ReleaseTruth(
      GameClock clock,
      Carrier by,
      Kind kind,
      double shortOfCenter,
      double chance,
      double iced,
      Seen seen) {
    if (shortOfCenter <= 0 || chance < 0 || chance > 1) {
      throw new IllegalArgumentException(
          "a release short of center needs a distance above 0 m and a chance from 0 to 1, not "
              + shortOfCenter
              + " and "
              + chance);
    }
    period = clock.period();
    release = clock.shown();
    this.by = by;
    this.kind = kind;
    this.shortOfCenter = shortOfCenter;
    this.chance = chance;
    this.iced = iced;
    this.seen = seen;
  }

  /** Sent on with no receiver, or meant for one who did not get it. */
  enum Kind {
    SENT,
    MISSED_PASS
  }
}
