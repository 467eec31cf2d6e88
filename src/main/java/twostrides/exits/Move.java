package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Strength;

/**
 * One step of a game as the later stages see it: a row of the moves table.
 *
 * @param index row of the moves table
 * @param game game id
 * @param period period, from 1
 * @param elapsed seconds of play since the period began
 * @param kind what it is
 * @param team acting team, empty for stops
 * @param player who acts
 * @param x metres, acting team's frame, where the sheet has it
 * @param y metres, acting team's frame
 * @param shot whether it is a shot at goal
 * @param goal whether it scored
 * @param strength label of the acting team's strength
 * @param netEmpty word for the empty net
 * @param pressure how close the nearest checker was, where the sheet says so
 * @param stop why play stopped, for stops
 * @param ownOnIce the acting team's skaters on the ice, where the sheet says so
 * @param opponentOnIce the other team's
 * @param video second of the video
 * @param sheet file name
 * @param line line of the sheet
 */
record Move(
    int index,
    String game,
    int period,
    double elapsed,
    Kind kind,
    Optional<String> team,
    Optional<String> player,
    OptionalDouble x,
    OptionalDouble y,
    boolean shot,
    boolean goal,
    String strength,
    Optional<String> netEmpty,
    Optional<String> pressure,
    Optional<String> stop,
    Optional<String> ownOnIce,
    Optional<String> opponentOnIce,
    OptionalDouble video,
    String sheet,
    int line) {

  /** What a move is. */
  enum Kind {
    /** Under control at this place. */
    CONTROL(true, true),
    /** Where a pass written as complete was meant to go: the receiver has it there. */
    RECEPTION(true, true),
    /** A pass written as complete. */
    PASS(true, true),
    /** A pass not received. */
    MISSED_PASS(true, true),
    /** Sent on with no receiver, shots included. */
    SENT(true, true),
    /** Touched without control: a deflection or a block. */
    UNCONTROLLED(false, true),
    /** Play stops, or the period ends. */
    STOP(false, false),
    /** A draw; the team is the winner. */
    FACEOFF(false, false);

    private final boolean control;
    private final boolean touch;

    Kind(boolean control, boolean touch) {
      this.control = control;
      this.touch = touch;
    }
  }

  boolean control() {
    return kind.control;
  }

  boolean touch() {
    return kind.touch;
  }

  /** Whether play is not going on after this move. */
  boolean ends() {
    return kind == Kind.STOP || kind == Kind.FACEOFF;
  }

  /** Whether the puck is let go with nobody receiving it. */
  boolean release() {
    return kind == Kind.SENT || kind == Kind.MISSED_PASS;
  }

  boolean by(String name) {
    return team.isPresent() && team.get().equals(name);
  }

  /**
   * The place along the rink in a team's frame.
   *
   * @param viewer the team whose attack is +x
   */
  OptionalDouble x(String viewer) {
    return x.isEmpty() || by(viewer) ? x : OptionalDouble.of(-x.getAsDouble());
  }

  /**
   * Manpower as a team sees it: a row tells that of the acting team.
   *
   * @param viewer one of the two teams
   */
  String strength(String viewer) {
    if (by(viewer)) {
      return strength;
    }
    return strength.equals(Strength.SHORTHANDED.label())
        ? Strength.POWER_PLAY.label()
        : strength.equals(Strength.POWER_PLAY.label()) ? Strength.SHORTHANDED.label() : strength;
  }

  /**
   * A team's skaters on the ice, sorted, with "; " between them.
   *
   * @param viewer one of the two teams
   */
  Optional<String> onIce(String viewer) {
    return team.isEmpty() ? Optional.empty() : by(viewer) ? ownOnIce : opponentOnIce;
  }

  boolean samePlay(Move other) {
    return game.equals(other.game) && period == other.period;
  }
}
