package twostrides.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A line of the lists of names and words in the resources: what is meant, and patterns for it.
 *
 * @param keys what is meant
 * @param patterns the patterns, the likeliest first
 */
record Patterns(List<String> keys, List<Pattern> patterns) {

  /**
   * A list.
   *
   * @param name the resource
   * @param keys how many cells of a line come before its patterns
   */
  static List<Patterns> read(String name, int keys) {
    try (InputStream in = Patterns.class.getResourceAsStream("/twostrides/starter/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> List.of(line.split(" \\| ")))
          .map(
              cells ->
                  new Patterns(
                      cells.subList(0, keys).stream().map(String::strip).toList(),
                      cells.subList(keys, cells.size()).stream()
                          .map(String::strip)
                          .map(Pattern::compile)
                          .toList()))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether one of the patterns fits the whole of a name or word. */
  boolean fits(String text) {
    String plain = Column.plain(text);
    return patterns.stream().anyMatch(p -> p.matcher(plain).matches());
  }
}
