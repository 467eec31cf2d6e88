package twostrides.league;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page whose measured parts stand between marks. */
final class Page {
  private Page() {}

  /** Replaces what stands between the marks of a name. */
  static void put(Path page, String name, String text) throws IOException {
    String begin = "<!-- " + name + ": begin -->\n";
    String end = "<!-- " + name + ": end -->";
    String whole = Files.readString(page);
    int from = whole.indexOf(begin);
    int to = whole.indexOf(end);
    if (from < 0 || to < from) {
      throw new IllegalStateException("no marks " + begin.strip() + " and " + end + " in " + page);
    }
    Files.writeString(page, whole.substring(0, from + begin.length()) + text + whole.substring(to));
  }
}
