package twostrides.demo;

import twostrides.demo.ExitTruth.Cause;
import twostrides.rink.Place;

/**
 * What was really so with one release short of center.
 *
 * @param period from 1
 * @param release second of play since the period began
 * @param side whose release
 * @param skater who released
 * @param kind sent, or a missed pass
 * @param cause of the own-zone restart that this release brought
 * @param at place, metres in the releasing team's frame
 * @param shortOfCenter metres from the puck to the near edge of the red line, above 0
 * @param chance that the carrier would have gained center had he kept the puck, 0 to 1
 * @param iced chance that a release such as this one by this player is iced, 0 to 1
 * @param seen where the skaters were
 */
record ReleaseTruth(
    int period,
    int release,
    Side side,
    Skater skater,
    Kind kind,
    Cause cause,
    Place at,
    double shortOfCenter,
    double chance,
    double iced,
    Seen seen) {

  /** Sent on with no receiver, or meant for one who did not get it. */
  enum Kind {
    SENT,
    MISSED_PASS
  }

  ReleaseTruth {
    if (shortOfCenter <= 0 || chance < 0 || chance > 1) {
      throw new IllegalArgumentException(
          "a release short of center needs a distance above 0 m and a chance from 0 to 1, not "
              + shortOfCenter
              + " and "
              + chance);
    }
  }

  ReleaseTruth withCause(Cause brought) {
    return new ReleaseTruth(
        period, release, side, skater, kind, brought, at, shortOfCenter, chance, iced, seen);
  }
}
