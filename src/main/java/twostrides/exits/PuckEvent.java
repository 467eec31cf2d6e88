package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Action;
import twostrides.game.Outcome;
import twostrides.game.PlayRow;
import twostrides.game.StopReason;
import twostrides.game.Strength;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.Zone;

/**
 * One step of a game: the puck touched, play stopped, or a face-off.
 *
 * @param index place in its game's timeline, from 0
 * @param kind what it is
 * @param row the row of the sheet that says so
 * @param elapsed seconds of play since the period began
 * @param player who acts
 * @param place where, metres, acting team's frame, where the sheet has it
 * @param zone in which zone, acting team's frame, where the sheet has that instead of a place
 * @param strength the acting team's strength; unknown for stops
 * @param stop why play stopped, for stops
 */
record PuckEvent(
    int index,
    Kind kind,
    PlayRow row,
    double elapsed,
    Optional<String> player,
    Optional<Place> place,
    Optional<Zone> zone,
    Strength strength,
    Optional<StopReason> stop) {

  /** What an event is. */
  enum Kind {
    /** Under control at this place. */
    CONTROL(true, true),
    /** Where a pass written as complete was meant to go: the receiver has it there. */
    RECEPTION(true, true),
    /** Under control, then passed to a teammate who gets it. */
    PASS(true, true),
    /** Under control, then a pass that no teammate gets: a release. */
    MISSED_PASS(true, true),
    /** Under control, then sent on with no receiver, a shot included: a release. */
    SENT(true, true),
    /** Touched without control. */
    UNCONTROLLED(false, true),
    /** The opponent gets to an iced puck as play stops: the whistle's doing, not control. */
    WHISTLE_TOUCH(false, false),
    /** Play stops. */
    STOP(false, false),
    /** A face-off; the team is who won it. */
    FACEOFF(false, false);

    private final boolean control;
    private final boolean touch;

    Kind(boolean control, boolean touch) {
      this.control = control;
      this.touch = touch;
    }
  }

  int period() {
    return row.period();
  }

  /** The acting team; of a stop only where a row of its own names one. */
  Optional<String> team() {
    return kind == Kind.STOP && row.action() != Action.STOPPAGE ? Optional.empty() : row.team();
  }

  boolean control() {
    return kind.control;
  }

  boolean touch() {
    return kind.touch;
  }

  /** Whether play stands after it: a stop or a face-off. */
  boolean ends() {
    return kind == Kind.STOP || kind == Kind.FACEOFF;
  }

  /** Whether the puck is let go with no teammate who gets it. */
  boolean release() {
    return kind == Kind.SENT || kind == Kind.MISSED_PASS;
  }

  boolean shot() {
    return kind == Kind.SENT && row.action() == Action.SHOT;
  }

  boolean goal() {
    return shot() && row.outcome().equals(Optional.of(Outcome.GOAL));
  }

  boolean by(String name) {
    return team().isPresent() && team().get().equals(name);
  }

  /** Place along the rink in the acting team's frame, metres. */
  OptionalDouble x() {
    return place.isPresent() ? OptionalDouble.of(place.get().x()) : OptionalDouble.empty();
  }

  /** Place along the rink in a team's frame, metres. */
  OptionalDouble x(String viewer) {
    return place.isEmpty() || by(viewer) ? x() : OptionalDouble.of(-place.get().x());
  }

  /** Zone in a team's frame: that of the place, else the one that the sheet writes. */
  Optional<Zone> zone(Rink rink, String viewer) {
    return place.isPresent()
        ? Optional.of(rink.zone(x(viewer).orElseThrow()))
        : zone.map(z -> by(viewer) ? z : z.seenByOpponent());
  }

  /** Strength as a team sees it. */
  Strength strength(String viewer) {
    return by(viewer) ? strength : strength.ofOpponent();
  }

  OptionalDouble video() {
    return kind == Kind.STOP ? OptionalDouble.empty() : row.video();
  }
}
