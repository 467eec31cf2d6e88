package twostrides.game;

import java.time.LocalDate;
import java.util.Optional;
import twostrides.sheet.SheetRow;

/**
 * A sheet row that was read, with what its game needs to know of it.
 *
 * @param source the sheet's row, in case it has to be set aside after all
 * @param gameId the game it belongs to
 * @param about what it says of its game
 * @param row the row in the program's frame
 * @param <T> play row or tagged exit
 */
record ReadRow<T>(SheetRow source, String gameId, AboutGame about, T row) {

  /**
   * What a row says of its game.
   *
   * @param date day of the game
   * @param home the home team
   * @param away the away team
   * @param clockDecimals decimals of the clock
   * @param placeDecimals decimals of places
   * @param endsSaid whether the row says which way the home team attacks
   */
  record AboutGame(
      Optional<LocalDate> date,
      Optional<String> home,
      Optional<String> away,
      int clockDecimals,
      int placeDecimals,
      boolean endsSaid) {}
}
