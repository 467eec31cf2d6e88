package twostrides.tag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import twostrides.sheet.CsvOut;

/**
 * Untrusted words from the page, made fit for a cell: one line, trimmed, and none that a
 * spreadsheet would run. What they mean is judged by the readers of {@code game}.
 */
final class Cells {

  /** Longest words of a field, in characters. Assumed. */
  static final int LONGEST = 300;

  /** Columns of free text; the others hold numbers and fixed words, which nothing can run. */
  private static final Set<String> FREE =
      Set.of("game", "home", "away", "team", "player", "opponent", "note");

  private Cells() {}

  /**
   * The cells of a row, in the order of the columns.
   *
   * @param written field to words
   * @param columns the columns of the sheet
   * @throws TagRefusedException when a field is no column, or too long
   */
  static Map<String, String> of(Map<String, String> written, List<String> columns)
      throws TagRefusedException {
    List<FieldProblem> problems = new ArrayList<>();
    Map<String, String> cells = new LinkedHashMap<>();
    for (String column : columns) {
      String words = oneLine(written.getOrDefault(column, ""));
      if (words.length() > LONGEST) {
        problems.add(
            new FieldProblem(
                column,
                words.length() + " characters",
                "at most " + LONGEST + " characters",
                "Shorten it; nothing was saved."));
      } else if (!words.isEmpty()) {
        cells.put(column, FREE.contains(column) ? CsvOut.guarded(words) : words);
      }
    }
    for (String field : written.keySet()) {
      if (!columns.contains(field)) {
        problems.add(
            new FieldProblem(
                "",
                field,
                "one of the columns " + String.join(", ", columns),
                "Load the page again."));
      }
    }
    if (!problems.isEmpty()) {
      throw new TagRefusedException(problems);
    }
    return cells;
  }

  /** The words on one line: a control character becomes a blank. */
  static String oneLine(String words) {
    StringBuilder out = new StringBuilder();
    words
        .codePoints()
        .map(c -> Character.isISOControl(c) || isHalf(c) ? ' ' : c)
        .forEach(out::appendCodePoint);
    return out.toString().strip();
  }

  /** Half of a pair, which no UTF-8 file can hold. */
  private static boolean isHalf(int code) {
    return Character.MIN_SURROGATE <= code && code <= Character.MAX_SURROGATE;
  }
}
