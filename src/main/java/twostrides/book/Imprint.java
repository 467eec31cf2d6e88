package twostrides.book;

/**
 * What stands at the foot of every page.
 *
 * @param version version of the program
 * @param book the icing book
 * @param rows "1200 rows read = 1198 rows used + 2 rows set aside"
 * @param videoName the game's video file in playlists, {@code {game}} standing for the game's id
 */
public record Imprint(String version, BookNote book, String rows, String videoName) {}
