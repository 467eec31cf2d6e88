package twostrides.review;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A moment of a player to show in a meeting.
 *
 * @param kind why it was chosen
 * @param game game id
 * @param period period, from 1
 * @param clockLeft seconds left in the period at the release, as a scoreboard shows it
 * @param way how the puck left the zone; empty where the play began outside the zone
 * @param strength strength at the release
 * @param pressure none, light or heavy, where the sheet says so
 * @param shift mean seconds that the team's skaters had been on the ice, where that is known
 * @param shortOfCenter metres short of the red line, for a release
 * @param lineNote what the sheet cannot resolve
 * @param cause cause of the restart that followed; none where none did, empty where nobody knows
 * @param attemptsAgainst attempts of the opponent within the window
 * @param goalsAgainst goals of the opponent within the window
 * @param flag the flag, where it is flagged
 * @param video second of the video
 * @param sheet file name
 * @param line line of the sheet
 */
public record Moment(
    Kind kind,
    String game,
    int period,
    double clockLeft,
    Optional<String> way,
    ShownStrength strength,
    Optional<String> pressure,
    OptionalDouble shift,
    OptionalDouble shortOfCenter,
    Optional<String> lineNote,
    Optional<String> cause,
    OptionalInt attemptsAgainst,
    OptionalInt goalsAgainst,
    Optional<FlagLine> flag,
    OptionalDouble video,
    String sheet,
    int line) {

  /** Mean seconds on the ice from which a shift counts as long. Assumed. */
  public static final double LONG_SHIFT_S = 40;

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

  /** Whether the team's skaters were at the end of a long shift, as far as the sheet knows. */
  public boolean longShift() {
    return shift.isPresent() && shift.getAsDouble() >= LONG_SHIFT_S;
  }

  /** Whether the nearest checker was close, as far as the sheet says. */
  public boolean heavyPressure() {
    return pressure.equals(Optional.of("heavy"));
  }

  /** How many things made it hard: a skater short, heavy pressure, a long shift. */
  int hardness() {
    return (strength == ShownStrength.SHORTHANDED ? 1 : 0)
        + (heavyPressure() ? 1 : 0)
        + (longShift() ? 1 : 0);
  }
}
