package twostrides.demo;

import java.util.Optional;
import twostrides.demo.ExitTruth.Cause;
import twostrides.demo.ExitTruth.CenterMark;
import twostrides.demo.ExitTruth.Way;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/**
 * Stops play: writes the stoppage, tells the truth why, and says where the puck is dropped. Whoever
 * stops play has settled the open attempt before.
 */
final class Whistle {
  /** Video seconds from a whistle to the next face-off, assumed. */
  private static final double SHORTEST_BREAK_S = 14;

  private static final double LONGEST_BREAK_S = 44;

  /** Share of icings for which such a sheet writes the touch: about that of the open games. */
  private static final double TOUCH_WRITTEN = 0.7;

  /** Share of these at the end-zone spots, where a hybrid race is decided; assumed. */
  private static final double AT_THE_SPOT = 0.25;

  private final Match match;

  Whistle(Match match) {
    this.match = match;
  }

  /** Icing: back into the own zone of the team that sent the puck. */
  Next icing(Side by) {
    Next.Drop drop = match.spots.ownZone(by, match.dice.sign()).afterIcing();
    return stop(Stoppage.ICING, Optional.of(by), drop, Cause.ICING);
  }

  /**
   * Where a sheet writes who got to an iced puck: a row of the other team at the second of the
   * whistle. It is no control, and the truth knows nothing of it.
   *
   * @param side who got there
   * @param puck where the puck is, in that side's frame
   */
  void touched(Side side, Place puck) {
    if (match.source.whistleTouches() && match.dice.chance(TOUCH_WRITTEN)) {
      double y = Math.copySign(match.rink.endSpotY(), puck.y());
      Place spot = match.spots.inside(-match.rink.endSpotX(), y);
      Place at = match.dice.chance(AT_THE_SPOT) ? spot : puck;
      Body body = match.ice.soonest(side, side.homeFrame(at));
      Carrier who = new Carrier(side, body.skater, at, 0);
      match.log(match.row(Action.RECOVERY, who).noTouch());
    }
  }

  /** Offside at the far blue line: dropped outside it. */
  Next offside(Side by, Place at) {
    Next.Drop drop = match.spots.neutral(by, new Place(match.rink.neutralSpotX(), at.y()));
    return stop(Stoppage.OFFSIDE, Optional.of(by), drop, Cause.OTHER);
  }

  /** Stopped for a reason that is nobody's doing; dropped at the nearest spot. */
  Next nearest(Stoppage why, Side side, Place at) {
    return stop(why, Optional.empty(), match.spots.near(side, at), Cause.OTHER);
  }

  /** The goalkeeper of the defending side holds the puck. */
  Next held(Side defending) {
    Next.Drop drop = match.spots.ownZone(defending, match.dice.sign());
    return stop(Stoppage.GOALKEEPER, Optional.empty(), drop, Cause.OTHER);
  }

  /** A goal; the row of the shot says so too. */
  Next goal(Side by) {
    Next next = stop(Stoppage.GOAL, Optional.empty(), match.spots.center(), Cause.OTHER);
    match.scored(by);
    return next;
  }

  /** A minor penalty, called where play stops; dropped in the offender's zone. */
  Next penalty(Side on) {
    Skater offender = match.dice.oneOf(match.onIce(on));
    Carrier who = new Carrier(on, offender, new Place(0, 0), 0);
    match.log(match.row(Action.PENALTY, who).noTouch().noPlace());
    match.box.call(on, offender, match.clock.gameSeconds());
    Next.Drop drop = match.spots.ownZone(on, match.dice.sign());
    return stop(Stoppage.PENALTY, Optional.of(on), drop, Cause.OTHER);
  }

  /** The period ends with a player on the puck: what is undecided was stopped. */
  void horn(Carrier holder) {
    settle(holder);
    match.clock.runOut();
    match.logStoppage(Stoppage.PERIOD_END, Optional.empty());
    match.truth.stopped(Optional.empty(), Cause.NONE, match.clock);
    match.freshLines(Optional.empty());
  }

  /** The puck never left, or center is never reached: play stops with this player on the puck. */
  void settle(Carrier holder) {
    if (match.truth.attemptOpen()) {
      match.truth.left(Way.KEPT_IN, holder, match.clock, match.box.manpower(holder.side()));
    }
    match.truth.center(CenterMark.STOPPED);
  }

  private Next stop(Stoppage why, Optional<Side> calledOn, Next.Drop drop, Cause cause) {
    match.logStoppage(why, calledOn);
    match.truth.stopped(drop.zoneOf(), cause, match.clock);
    match.clock.idle(match.dice.between(SHORTEST_BREAK_S, LONGEST_BREAK_S));
    match.freshLines(why == Stoppage.ICING ? calledOn : Optional.empty());
    return drop;
  }
}
