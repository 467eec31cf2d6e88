package twostrides.starter;

import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The text of a map as it is put together: lines, comments, questions. */
final class StarterText {
  private static final Pattern BARE = Pattern.compile("[A-Za-z0-9_-]+");

  /** What begins a question to whoever reads the map. */
  static final String QUESTION = "# ? ";

  private final StringBuilder text = new StringBuilder();
  private int questions;

  void line(String line) {
    text.append(line).append('\n');
  }

  void heading(String name) {
    text.append('\n').append(name).append('\n');
  }

  void note(String words) {
    line("# " + words);
  }

  void question(String words) {
    questions++;
    line(QUESTION + words);
  }

  int questions() {
    return questions;
  }

  /** Words in quotes, as TOML writes them. */
  static String quoted(String words) {
    if (words.indexOf('\\') >= 0 && words.indexOf('\'') < 0) {
      return "'" + words + "'";
    }
    return '"'
        + words.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\p{Cntrl}", " ")
        + '"';
  }

  static String key(String name) {
    return BARE.matcher(name).matches() ? name : quoted(name);
  }

  /** A table in one line: {@code { a = "b", c = "d" }}. */
  static String inline(Map<String, String> words) {
    return words.entrySet().stream()
        .map(e -> key(e.getKey()) + " = " + e.getValue())
        .collect(Collectors.joining(", ", "{ ", " }"));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
