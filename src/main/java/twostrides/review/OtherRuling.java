package twostrides.review;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A release short of center that another book would rule otherwise.
 *
 * @param book id of the other book
 * @param game game id
 * @param period period, from 1
 * @param clockLeft seconds left in the period, as a scoreboard shows it
 * @param team who let it go
 * @param player who let it go
 * @param strength strength at the release
 * @param played what the book of the game says
 * @param ruling what the other book says, a sentence
 * @param video second of the video
 * @param sheet file name
 * @param line line of the sheet
 */
public record OtherRuling(
    String book,
    String game,
    int period,
    double clockLeft,
    String team,
    Optional<String> player,
    String strength,
    String played,
    String ruling,
    OptionalDouble video,
    String sheet,
    int line) {}
