package twostrides.book;

/**
 * How a book is to be written.
 *
 * @param videoName the game's video file in playlists, {@code {game}} standing for the game's id
 * @param pngs whether to write each drawing as PNG too
 */
public record BookOptions(String videoName, boolean pngs) {}
