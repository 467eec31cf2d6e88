package twostrides.book;

/**
 * How a book is to be written.
 *
 * @param videos the games' videos
 * @param pngs whether to write each drawing as PNG too
 */
public record BookOptions(Videos videos, boolean pngs) {}
