package twostrides.sheet;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Where the rows of one sheet find the text of one of our columns. */
sealed interface Slot {
  /**
   * In a cell of the row.
   *
   * @param position cells before it
   * @param header the sheet's name of the column
   * @param take the pattern whose first group is taken; empty takes the whole cell
   * @param words our words for the sheet's
   */
  record Place(int position, String header, Optional<Pattern> take, Map<String, String> words)
      implements Slot {}

  /**
   * The same in every row.
   *
   * @param value the file's name or the map's words
   * @param text what they mean to us; empty leaves the column empty
   */
  record Fixed(String value, String text) implements Slot {}
}
