package twostrides.sheet;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where one of our columns comes from. */
sealed interface Source {
  /**
   * A column of the sheet.
   *
   * @param header its name in the sheet
   * @param take the pattern whose first group is taken; empty means the whole cell
   * @param at where the map says so; empty when the column carries our own name
   */
  record Column(String header, Optional<Pattern> take, Optional<MapPlace> at) implements Source {}

  /**
   * The sheet's file name without its extension.
   *
   * @param take the pattern whose first group is taken; empty means the whole name
   * @param at where the map says so
   */
  record FileName(Optional<Pattern> take, MapPlace at) implements Source {}

  /**
   * The same words in every row.
   *
   * @param text the words; empty leaves the column empty, whatever the sheet holds
   */
  record Constant(String text) implements Source {}

  /**
   * Words put together from several columns.
   *
   * @param pieces text, each with the column that follows it
   */
  record Text(List<Piece> pieces) implements Source {
    public Text {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * A piece of such words.
   *
   * @param text text as it stands
   * @param column the column of the sheet after it; empty at the end
   */
  record Piece(String text, Optional<Column> column) {}

  /**
   * What a pattern takes from a text: its first group.
   *
   * @param take the pattern; empty takes everything
   * @param text the text
   * @return empty when the pattern does not fit, or takes too long to tell: {@link WatchedText}
   */
  static Optional<String> taken(Optional<Pattern> take, String text) {
    if (take.isEmpty()) {
      return Optional.of(text);
    }
    try {
      Matcher matcher = take.get().matcher(new WatchedText(text));
      return matcher.find()
          ? Optional.ofNullable(matcher.group(1)).map(String::strip)
          : Optional.empty();
    } catch (WatchedText.TooHardException | StackOverflowError e) {
      return Optional.empty();
    }
  }
}
