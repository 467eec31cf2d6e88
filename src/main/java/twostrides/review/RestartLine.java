package twostrides.review;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One own-zone restart, as a list shows it: the team itself had the puck last.
 *
 * @param game game id
 * @param period period, from 1
 * @param elapsed seconds of play since the period began, at the draw; empty for tags
 * @param clockLeft seconds left in the period at the draw (at the release, for tags), as a
 *     scoreboard shows it
 * @param released seconds of play at the release or last touch
 * @param team whose zone it was
 * @param opponent the other team, where the sheet names it
 * @param way way out of the exit that it followed, in the words of the pages
 * @param player who had it last
 * @param strength strength at the release
 * @param x metres, place of the release
 * @param y metres
 * @param shortOfCenter metres short of the red line, for a release
 * @param cause cause of the restart
 * @param reason why the cause was found so
 * @param ruling what the book says
 * @param clause clause of the book, and how sure it is
 * @param wonBy who won the draw
 * @param attemptsAgainst attempts of the opponent within the window after the draw
 * @param goalsAgainst goals of the opponent within the window after the draw
 * @param video second of the video
 * @param sheet file name
 * @param line line of the sheet
 */
public record RestartLine(
    String game,
    int period,
    OptionalDouble elapsed,
    double clockLeft,
    OptionalDouble released,
    String team,
    Optional<String> opponent,
    Optional<String> way,
    Optional<String> player,
    Optional<String> strength,
    OptionalDouble x,
    OptionalDouble y,
    OptionalDouble shortOfCenter,
    String cause,
    String reason,
    String ruling,
    String clause,
    Optional<String> wonBy,
    OptionalInt attemptsAgainst,
    OptionalInt goalsAgainst,
    OptionalDouble video,
    String sheet,
    int line) {

  /** Whether it was an icing, written or inferred. */
  public boolean icing() {
    return cause.startsWith("icing");
  }
}
