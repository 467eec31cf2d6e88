package twostrides.game;

import java.time.LocalDate;
import java.util.Optional;
import twostrides.rink.Rink;

/**
 * What all rows of a game share.
 *
 * @param id game id, as in the sheet
 * @param date game date, where the sheet has it
 * @param home who plays at home, where the sheet says so
 * @param rink the rink it is played on
 * @param placeStep step in which the sheet writes places, metres
 * @param periodLength length of a regular period, seconds
 */
public record Fixture(
    String id,
    Optional<LocalDate> date,
    Optional<String> home,
    Rink rink,
    double placeStep,
    double periodLength) {

  /** "home" or "away", where the sheet says who is at home. */
  public Optional<String> venueOf(String team) {
    return home.map(h -> h.equals(team) ? "home" : "away");
  }
}
