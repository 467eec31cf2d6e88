package twostrides.book;

/**
 * How a book is to be written.
 *
 * @param videos the games' videos
 * @param pngs whether to write each drawing as PNG too
 * @param oneFile whether to write the team's book as one file too
 */
public record BookOptions(Videos videos, boolean pngs, boolean oneFile) {}
