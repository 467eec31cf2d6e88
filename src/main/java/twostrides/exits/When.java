package twostrides.exits;

import java.util.OptionalDouble;
import twostrides.game.Fixture;

/**
 * When something happened, and where a sheet says so.
 *
 * @param game the game
 * @param period period, from 1; overtime goes on counting
 * @param elapsed seconds of play since the period began
 * @param video second of the video, where it is known
 * @param sheet sheet file name
 * @param line line of the sheet, from 1, the header included
 */
public record When(
    Fixture game, int period, double elapsed, OptionalDouble video, String sheet, int line) {

  /** Time left in the period, seconds. */
  public double clockLeft() {
    return game.periodLength() - elapsed;
  }
}
