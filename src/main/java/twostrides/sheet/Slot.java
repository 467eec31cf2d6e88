package twostrides.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
   * Put together from several cells of the row.
   *
   * @param pieces text, each with the cell that follows it
   * @param words our words for what comes out
   */
  record Joined(List<Piece> pieces, Map<String, String> words) implements Slot {
    public Joined {
      pieces = List.copyOf(pieces);
    }

    /** What stands in a row; nothing when all its cells are blank. */
    String of(List<String> cells) {
      StringBuilder out = new StringBuilder();
      boolean filled = false;
      for (Piece p : pieces) {
        String text = p.position().isPresent() ? cells.get(p.position().getAsInt()).strip() : "";
        filled |= !text.isEmpty();
        out.append(p.text()).append(text);
      }
      String all = filled ? out.toString().strip() : "";
      return words.getOrDefault(all, all);
    }
  }

  /**
   * Text, and the cell after it.
   *
   * @param text the text
   * @param position cells before the cell; empty for text alone
   */
  record Piece(String text, OptionalInt position) {}

  /**
   * The same in every row.
   *
   * @param value the file's name or the map's words
   * @param text what they mean to us; empty leaves the column empty
   */
  record Fixed(String value, String text) implements Slot {}
}
