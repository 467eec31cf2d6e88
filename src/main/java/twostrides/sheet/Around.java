package twostrides.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How a map names a column of the row below or above: its header with these words behind it. A
 * row's cells are then followed by those of its neighbours, blank where there is none.
 */
final class Around {
  private static final List<String> WORDS = List.of(" in the next row", " in the row before");

  private Around() {}

  /** The column's own name. */
  static String header(String key) {
    for (String words : WORDS) {
      if (key.endsWith(words)) {
        return key.substring(0, key.length() - words.length()).strip();
      }
    }
    return key;
  }

  /**
   * Rows of cells before the one that a name means: 0 the row itself, 1 the next, 2 the one before.
   */
  static int rows(String key) {
    for (int i = 0; i < WORDS.size(); i++) {
      if (key.endsWith(WORDS.get(i))) {
        return i + 1;
      }
    }
    return 0;
  }

  /** A column in one of the rows, as messages call it. */
  static String name(String header, int rows) {
    return rows == 0 ? header : header + WORDS.get(rows - 1);
  }

  /**
   * A row's cells with its neighbours'.
   *
   * @param entries the sheet's rows, the header first
   * @param i which
   * @param width cells of a row
   */
  static List<String> cells(List<Records.Entry> entries, int i, int width) {
    List<String> all = new ArrayList<>(entries.get(i).cells());
    for (int k : List.of(i + 1, i - 1)) {
      boolean row = k > 0 && k < entries.size() && entries.get(k).cells().size() == width;
      all.addAll(row ? entries.get(k).cells() : Collections.nCopies(width, ""));
    }
    return all;
  }
}
