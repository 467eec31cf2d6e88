package twostrides.book;

import twostrides.review.FlagLine;

/**
 * A flagged release with its drawing.
 *
 * @param flag the release
 * @param svg the drawing
 */
public record FlagCard(FlagLine flag, String svg) {}
