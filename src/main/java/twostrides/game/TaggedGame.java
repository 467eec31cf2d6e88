package twostrides.game;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import twostrides.rink.Rink;

/**
 * One game of tag rows.
 *
 * @param id id in the sheets
 * @param date day of the game, where the sheet has it
 * @param home the home team, where the sheet says so
 * @param rink the rink's lengths
 * @param placeStep smallest step of places as written, in metres
 * @param periodLength length of a regular period, in seconds
 * @param exits the tagged exits in the order of play
 */
public record TaggedGame(
    String id,
    Optional<LocalDate> date,
    Optional<String> home,
    Rink rink,
    double placeStep,
    double periodLength,
    List<TaggedExit> exits) {

  /** Copies the exits. */
  public TaggedGame {
    exits = List.copyOf(exits);
  }

  /**
   * The game with other exits of the same order.
   *
   * @param others the exits
   */
  public TaggedGame withExits(List<TaggedExit> others) {
    return new TaggedGame(id, date, home, rink, placeStep, periodLength, others);
  }

  /** What its rows share. */
  public Fixture fixture() {
    return new Fixture(id, date, home, rink, placeStep, periodLength);
  }
}
