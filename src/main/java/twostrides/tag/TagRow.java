package twostrides.tag;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One tagged exit as the sheet will hold it.
 *
 * @param id number of the row, from 1; it stays the same while the row is edited
 * @param version number of the step that left the row so, or 0 as it stood at the beginning: the
 *     same version is the same row
 * @param cells column to words, in the order of the sheet; an empty cell is left out
 */
record TagRow(int id, int version, Map<String, String> cells) {
  /** Checks the number and copies the cells. */
  TagRow {
    if (id < 1) {
      throw new IllegalArgumentException("rows count from 1, not " + id);
    }
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }
}
