package twostrides.serve;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * The files of the review book, and no file outside its folder.
 *
 * @param folder the book
 */
public record BookFiles(Path folder) {

  private static final Map<String, String> TYPES =
      Map.of(
          "html", Reply.HTML,
          "css", Reply.STYLE,
          "js", Reply.SCRIPT,
          "svg", "image/svg+xml",
          "png", "image/png",
          "csv", "text/csv; charset=utf-8",
          "vtt", "text/vtt; charset=utf-8",
          "xspf", "application/xspf+xml",
          "m3u", "audio/x-mpegurl",
          "json", Reply.JSON);

  /**
   * One file.
   *
   * @param name its path inside the book, with slashes
   * @throws IOException when it is there and cannot be read
   */
  public Reply reply(String name) throws IOException {
    Path file;
    try {
      file = folder.resolve(name);
    } catch (InvalidPathException e) {
      return missing();
    }
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    if (!TYPES.containsKey(ending) || !Files.isRegularFile(file)) {
      return missing();
    }
    // A real path has neither .. nor links in it.
    if (!file.toRealPath().startsWith(folder.toRealPath())) {
      return missing();
    }
    return new Reply(Reply.OK, TYPES.get(ending), Reply.BOOK_POLICY, Files.readAllBytes(file));
  }

  private static Reply missing() {
    return Reply.plain(Reply.NOT_FOUND, "No such page in the book.");
  }
}
