package twostrides.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file's text split into rows of cells; rows that hold nothing are left out.
 *
 * @param file the file as messages show it
 * @param entries header and rows
 */
record Records(String file, List<Entry> entries) {
  /** Delimiters looked for, the first winning a tie. */
  private static final List<Character> DELIMITERS = List.of(',', ';', '\t');

  /** The first character that joins the one before it. */
  private static final char FIRST_ACCENT = '\u0300';

  /** Characters of a row, line ends in quoted cells counted. Assumed. */
  static final int LONGEST_ROW = 10 * SheetText.LONGEST_LINE;

  /**
   * One row.
   *
   * @param line line of the file on which it begins, from 1
   * @param raw the row as it stood in the file, without its line end
   * @param cells its cells, quotes removed, accents composed
   */
  record Entry(long line, String raw, List<String> cells) {
    Entry {
      cells = RowCells.composed(cells);
    }
  }

  Records {
    entries = List.copyOf(entries);
  }

  /**
   * Splits a text.
   *
   * @param text the text
   * @param declared the delimiter; without it the one that the header line holds most often
   * @throws SheetException when a quote is not closed, or is closed in the middle of a cell
   */
  static Records split(SheetText text, Optional<Character> declared) throws SheetException {
    CSVFormat format = format(declared.orElseGet(() -> delimiter(text.text())));
    List<Entry> entries = new ArrayList<>();
    int start = 0;
    List<String> cells = List.of();
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text.text())).setFormat(format).get()) {
      // The parser tells where a row begins; where it ends is known when the next one begins.
      for (CSVRecord record : parser) {
        int next = (int) record.getCharacterPosition();
        add(entries, text, start, next, cells);
        start = next;
        cells = record.toList();
      }
    } catch (UncheckedIOException | IOException e) {
      throw broken(text.file(), lineAfter(text, start, cells));
    }
    add(entries, text, start, text.text().length(), cells);
    return new Records(text.file(), entries);
  }

  /**
   * A text with each letter and its accents as one character where there is one (Unicode's form
   * NFC): some systems write them as two, and a name would be two players.
   */
  static String composed(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= FIRST_ACCENT) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
      }
    }
    return text;
  }

  /** How a sheet's rows are split into cells. */
  static CSVFormat format(char delimiter) {
    return CSVFormat.DEFAULT
        .builder()
        .setDelimiter(delimiter)
        .setIgnoreEmptyLines(false)
        .setIgnoreSurroundingSpaces(true)
        .get();
  }

  private static void add(
      List<Entry> entries, SheetText text, int start, int end, List<String> cells)
      throws SheetException {
    if (end - start > LONGEST_ROW && !cells.isEmpty()) {
      throw longRow(text.file(), text.lineAt(start));
    }
    if (!blank(cells)) {
      String raw = text.text().substring(start, end);
      entries.add(new Entry(text.lineAt(start), withoutLineEnd(raw), cells));
    }
  }

  private static boolean blank(List<String> cells) {
    for (String cell : cells) {
      if (!cell.isBlank()) {
        return false;
      }
    }
    return true;
  }

  static SheetException longRow(String file, long line) {
    return SheetException.atLine(
        file,
        line,
        "a row of more than " + LONGEST_ROW + " characters",
        "a line for each row",
        "Look for a quote that is closed too late.");
  }

  static String withoutLineEnd(String raw) {
    if (raw.endsWith("\r\n")) {
      return raw.substring(0, raw.length() - 2);
    }
    return raw.endsWith("\n") || raw.endsWith("\r") ? raw.substring(0, raw.length() - 1) : raw;
  }

  /** The line after a row: its own line breaks are those that its quoted cells hold. */
  private static long lineAfter(SheetText text, int start, List<String> cells) {
    return cells.isEmpty() ? 1 : text.lineAt(start) + 1 + breaks(cells);
  }

  /** Line breaks that cells hold. */
  static long breaks(List<String> cells) {
    return cells.stream()
        .map(c -> c.replace("\r\n", "\n"))
        .mapToLong(c -> c.chars().filter(x -> x == '\n' || x == '\r').count())
        .sum();
  }

  static SheetException broken(String file, long line) {
    return SheetException.atLine(
        file,
        line,
        "a row whose quotes do not match",
        "a quote at the end of each quoted cell, and two quotes (\"\") for one inside it",
        "Correct the quotes in this row; a cell that begins with a quote must end with one.");
  }

  /** The delimiter that the header line of a text holds most often. */
  static char delimiter(String text) {
    int[] counts = new int[DELIMITERS.size()];
    boolean quoted = false;
    boolean begun = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean lineEnd = c == '\n' || c == '\r';
      if (lineEnd && begun && !quoted) {
        break;
      }
      begun |= !Character.isWhitespace(c);
      quoted ^= c == '"';
      int at = DELIMITERS.indexOf(c);
      if (at >= 0 && !quoted) {
        counts[at]++;
      }
    }
    int best = 0;
    for (int i = 1; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return DELIMITERS.get(best);
  }
}
