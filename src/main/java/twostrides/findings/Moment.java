package twostrides.findings;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.exits.Exit;
import twostrides.exits.ExitOutcome;
import twostrides.exits.Situation;
import twostrides.game.Pressure;
import twostrides.game.Strength;
import twostrides.season.Flag;

/**
 * A moment of a player to show in a meeting.
 *
 * @param kind why it was chosen
 * @param at the team at the release
 * @param outcome what followed
 * @param exit its exit attempt; empty where the play began outside of the own zone
 * @param flag the flag, where it is flagged
 */
public record Moment(
    Kind kind, Situation at, ExitOutcome outcome, Optional<Exit> exit, Optional<Flag> flag) {

  /** Mean seconds on the ice from which a shift counts as long. Assumed. */
  public static final double LONG_SHIFT_S = 40;

  /** Mean seconds on the ice from which an exit is no model: who changes late is tired. Assumed. */
  static final double OVERLONG_SHIFT_S = 90;

  /** Why a moment is shown, those to talk about in the order in which they come. */
  public enum Kind {
    /** Center was gained and nothing bad followed. */
    WORKED,
    /** Released short, and there was time to gain center. */
    FLAGGED,
    /** Released short and iced. */
    ICED,
    /** Released short, and another own-zone restart followed. */
    RESTARTED,
    /** Released short under little pressure, and the opponent had it next. */
    GIVEN_AWAY
  }

  /** Mean seconds that the team's skaters had been on the ice, where that is known. */
  public OptionalDouble shift() {
    return exit.map(Exit::shift).orElse(OptionalDouble.empty());
  }

  /** Whether the skaters had been on the ice for long. */
  public boolean longShift() {
    return shift().orElse(0) >= LONG_SHIFT_S;
  }

  /** Whether a checker was close. */
  public boolean heavyPressure() {
    return at.state().pressure().equals(Optional.of(Pressure.HEAVY));
  }

  boolean shorthanded() {
    return at.state().strength() == Strength.SHORTHANDED;
  }

  /** How many things made it hard: a skater short, a checker close, a long shift. */
  int hardness() {
    return (shorthanded() ? 1 : 0) + (heavyPressure() ? 1 : 0) + (longShift() ? 1 : 0);
  }
}
