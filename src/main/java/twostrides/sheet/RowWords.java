package twostrides.sheet;

import java.util.List;
import java.util.Optional;

/**
 * A row in its sheet's own words, to say what became of it.
 *
 * @param place where it stands
 * @param headerLine the header line of its sheet, as it stood in the file
 * @param raw the row as it stood in the file, without its line end
 * @param cells its cells as written; none where the row was read in an earlier run
 * @param skipReason the reason that a rule of the map gives for not using it
 */
public record RowWords(
    Place place, String headerLine, String raw, List<String> cells, Optional<String> skipReason) {

  /**
   * Where a row stands: two events that a map finds in one row have one place.
   *
   * @param file the sheet, as the user named it
   * @param line line of the file on which the row begins, from 1
   */
  public record Place(String file, long line) {}

  /** The sheet, as the user named it. */
  public String file() {
    return place.file();
  }

  /** Line of the file on which the row begins, from 1; the header and blank lines count. */
  public long line() {
    return place.line();
  }

  /** The same without its cells, which the raw row has too. */
  RowWords withoutCells() {
    return new RowWords(place, headerLine, raw, List.of(), skipReason);
  }
}
