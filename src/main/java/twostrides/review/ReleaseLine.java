package twostrides.review;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One release short of center, as a list shows it.
 *
 * @param game game id
 * @param period period, from 1
 * @param elapsed seconds of play since the period began
 * @param clockLeft seconds left in the period, as a scoreboard shows it
 * @param kind sent or missed pass
 * @param strength strength at the release
 * @param x metres
 * @param y metres
 * @param shortOfCenter metres short of the red line
 * @param lineNote what the sheet cannot resolve
 * @param outcome what came of it
 * @param cause cause of the restart that followed, or none
 * @param video second of the video
 * @param sheet file name
 * @param line line of the sheet
 */
public record ReleaseLine(
    String game,
    int period,
    double elapsed,
    double clockLeft,
    String kind,
    String strength,
    double x,
    double y,
    double shortOfCenter,
    Optional<String> lineNote,
    MarkOutcome outcome,
    String cause,
    OptionalDouble video,
    String sheet,
    int line) {}
