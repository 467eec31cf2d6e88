package twostrides.book;

/**
 * What a run tells its book besides the numbers: the foot of every page, and how to write.
 *
 * @param version version of the program
 * @param book the icing book
 * @param rows "1200 rows read = 1198 rows used + 2 rows set aside"
 * @param options how to write
 */
public record Imprint(String version, BookNote book, String rows, BookOptions options) {}
