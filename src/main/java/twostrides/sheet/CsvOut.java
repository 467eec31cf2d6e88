package twostrides.sheet;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;

/**
 * Writes CSV: UTF-8, commas, LF. A spreadsheet runs a cell that begins like a formula; such text
 * gets an apostrophe.
 */
public final class CsvOut implements Closeable {

  /**
   * Where text would run: at its beginning, and, on machines whose lists are separated by
   * semicolons or that split at tabs and lines, behind each of these. A plain number only counts.
   * The wide signs are those of East Asian keyboards. {@code csvCell} in book.js has the same.
   */
  private static final Pattern RUNS =
      Pattern.compile(
          "(^|[;\\t\\r\\n])(?=[ \\u00a0\"]*[=+\\-@\\uff1d\\uff0b\\uff0d\\uff20])"
              + "(?! *[+-]\\d+([.,]\\d+)? *([;\\t\\r\\n]|\\z))");

  /** Signs from which text runs. */
  private static final String RUN_FROM = "=+-@\uff1d\uff0b\uff0d\uff20";

  private final Appendable out;
  private final StringBuilder line = new StringBuilder();

  /**
   * One for each file: the library locks a format for every cell, and files are written at once.
   */
  private final CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

  /**
   * Writes to a file.
   *
   * @param file the file, made or replaced
   * @throws IOException when it cannot be opened
   */
  public CsvOut(Path file) throws IOException {
    this(Files.newBufferedWriter(file, StandardCharsets.UTF_8));
  }

  /**
   * Writes to whatever takes text.
   *
   * @param out closed with this where it can be
   */
  public CsvOut(Appendable out) {
    this.out = out;
  }

  /**
   * Writes a row.
   *
   * @param cells its cells, untrusted text or numbers
   * @throws IOException when it cannot be written
   */
  public void row(List<?> cells) throws IOException {
    boolean first = true;
    for (Object cell : cells) {
      format.print(guarded(String.valueOf(cell)), line, first);
      first = false;
    }
    format.println(line);
    out.append(line);
    line.setLength(0);
  }

  /**
   * Writes a row.
   *
   * @param cells its cells, untrusted text or numbers
   * @throws IOException when it cannot be written
   */
  public void row(Object... cells) throws IOException {
    row(List.of(cells));
  }

  /**
   * Text that no spreadsheet runs.
   *
   * @param text untrusted text
   */
  public static String guarded(String text) {
    return mayRun(text) ? RUNS.matcher(text).replaceAll("$1'") : text;
  }

  /** Whether a sign stands where it would run, unless a number follows: quickly, for every cell. */
  private static boolean mayRun(String text) {
    boolean begins = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (begins && RUN_FROM.indexOf(c) >= 0) {
        return true;
      }
      begins =
          c == ';'
              || c == '\t'
              || c == '\r'
              || c == '\n'
              || (begins && (c == ' ' || c == '\u00a0' || c == '"'));
    }
    return false;
  }

  @Override
  public void close() throws IOException {
    if (out instanceof Closeable closeable) {
      closeable.close();
    }
  }
}
