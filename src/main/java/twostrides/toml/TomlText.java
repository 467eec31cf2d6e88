package twostrides.toml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/**
 * Parses TOML that people write: a parser calls itself for each list in a list, so that thousands
 * of them would break it; here they are refused first.
 */
public final class TomlText {

  /** Lists and tables in one another. Ours are 3 deep; the parser breaks before 1000. */
  static final int DEEPEST = 40;

  /** Characters of a text; ours have up to 20,000. Assumed. */
  static final int LONGEST = 1_000_000;

  private final String text;
  private int line = 1;
  private int lineStart;

  private TomlText(String text) {
    this.text = text;
  }

  /**
   * The text of a file in UTF-8, with or without a byte order mark.
   *
   * @param file the file
   * @throws IOException when it cannot be opened, is a pipe or a device, which need never end, or
   *     is not UTF-8
   */
  public static String of(Path file) throws IOException {
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new IOException("no plain file");
    }
    String text = Files.readString(file);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /**
   * Parses a text.
   *
   * @param text the text; lines end with LF, CR or CRLF
   * @throws TomlException at the first place that is not TOML, or nested too deep
   */
  public static TomlTable parse(String text) throws TomlException {
    String plain = text.replace("\r\n", "\n").replace('\r', '\n');
    if (plain.length() > LONGEST) {
      throw new TomlException(
          plain.length() + " characters, more than the " + LONGEST + " that are read", 1, 1);
    }
    new TomlText(plain).checkDepth();
    TomlParseResult result;
    try {
      result = Toml.parse(plain);
    } catch (TomlParseError e) {
      throw new TomlException(
          String.valueOf(e.getMessage()), e.position().line(), e.position().column());
    } catch (RuntimeException | AssertionError e) {
      // The parser stumbles over some texts that it should refuse; where Java's assertions are on,
      // over more of them.
      throw new TomlException("the parser gives up: " + e.getMessage(), 1, 1);
    }
    if (result.hasErrors()) {
      TomlParseError error = result.errors().get(0);
      throw new TomlException(
          String.valueOf(error.getMessage()), error.position().line(), error.position().column());
    }
    return result;
  }

  private void checkDepth() throws TomlException {
    int depth = 0;
    for (int i = 0; i < text.length(); i++) {
      switch (text.charAt(i)) {
        case '\n' -> newLine(i);
        case '#' -> i = end(i, "\n", false) - 1;
        case '"', '\'' -> i = afterString(i) - 1;
        case '[', '{' -> {
          if (++depth > DEEPEST) {
            throw new TomlException(
                "lists or tables in one another, more than " + DEEPEST + " deep",
                line,
                i - lineStart + 1);
          }
        }
        case ']', '}' -> depth = Math.max(0, depth - 1);
        default -> {}
      }
    }
  }

  private void newLine(int at) {
    line++;
    lineStart = at + 1;
  }

  /** Where a string ends that begins here, lines counted. */
  private int afterString(int start) {
    String quote = text.substring(start, start + 1);
    String three = quote.repeat(3);
    boolean escapes = quote.equals("\"");
    if (!text.startsWith(three, start)) {
      int end = end(start + 1, quote, escapes);
      int lineEnd = end(start + 1, "\n", false);
      return lineEnd < end ? lineEnd : end + 1;
    }
    int end = Math.min(text.length(), end(start + 3, three, escapes) + 3);
    for (int i = start; i < end; i++) {
      if (text.charAt(i) == '\n') {
        newLine(i);
      }
    }
    return end;
  }

  /** Where something stands next; the end of the text where nowhere. */
  private int end(int from, String what, boolean escapes) {
    for (int i = from; i < text.length(); i++) {
      if (escapes && text.charAt(i) == '\\') {
        i++;
      } else if (text.startsWith(what, i)) {
        return i;
      }
    }
    return text.length();
  }
}
