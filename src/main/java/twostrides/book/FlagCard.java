package twostrides.book;

import twostrides.season.Flag;

/**
 * A flagged release, or a near miss, with its drawing.
 *
 * @param id of the card on its page, and of its drawing
 * @param flag the release
 * @param drawing puck, skaters and the way to center
 */
public record FlagCard(String id, Flag flag, Drawing drawing) {}
