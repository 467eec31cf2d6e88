package twostrides.starter;

import java.util.Locale;
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
    line("# " + oneLine(words));
  }

  void question(String words) {
    questions++;
    line(QUESTION + oneLine(words));
  }

  /** A header of a sheet may hold a line break, which would end a comment. */
  private static String oneLine(String words) {
    return words.replaceAll("\\p{Cntrl}", " ");
  }

  int questions() {
    return questions;
  }

  /** Words in quotes, as TOML writes them. */
  static String quoted(String words) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (Character.isISOControl(c)) {
        out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
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
