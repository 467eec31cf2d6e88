package twostrides.book;

import twostrides.review.FlagLine;

/**
 * A flagged release with its drawing.
 *
 * @param flag the release
 * @param drawing puck, skaters and the way to center
 */
public record FlagCard(FlagLine flag, Drawing drawing) {}
