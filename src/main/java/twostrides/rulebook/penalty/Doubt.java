package twostrides.rulebook.penalty;

/**
 * Something that the events, or every book read, leave open, and how it was taken.
 *
 * @param at where
 * @param text a plain sentence
 */
public record Doubt(GameInstant at, String text) {}
