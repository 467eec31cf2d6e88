package twostrides.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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
   * Put together for each of several numbered columns, semicolons between them.
   *
   * @param items one for each number
   * @param words our words for what comes out
   */
  record Numbered(List<Item> items, Map<String, String> words) implements Slot {
    public Numbered {
      items = List.copyOf(items);
    }

    /**
     * What stands in a row; nothing where no numbered column counts.
     *
     * @param cells the row's cells
     * @param decimalMark of the sheet: with a point, a comma stands between two numbers
     */
    String of(List<String> cells, char decimalMark) {
      String all =
          items.stream()
              .filter(i -> i.counts(cells))
              .map(i -> i.text().of(cells))
              .map(t -> decimalMark == '.' ? t.replace(',', ' ') : t)
              .filter(t -> !t.isEmpty())
              .collect(Collectors.joining("; "));
      return words.getOrDefault(all, all);
    }
  }

  /**
   * The text of one number.
   *
   * @param when cells and what must stand in them
   * @param unless cells and what must not
   * @param text the text
   */
  record Item(Map<Integer, Set<String>> when, Map<Integer, Set<String>> unless, Joined text) {
    public Item {
      when = Map.copyOf(when);
      unless = Map.copyOf(unless);
    }

    private boolean counts(List<String> cells) {
      return when.entrySet().stream()
              .allMatch(e -> e.getValue().contains(cells.get(e.getKey()).strip()))
          && unless.entrySet().stream()
              .noneMatch(e -> e.getValue().contains(cells.get(e.getKey()).strip()));
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
