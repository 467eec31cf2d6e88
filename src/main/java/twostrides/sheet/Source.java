package twostrides.sheet;

import java.util.ArrayList;
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
   * Words put together for each of several numbered columns, with semicolons between them: {@code
   * #} in a column's name stands for the number.
   *
   * @param count how many there are, from 1
   * @param text the words
   * @param when what must stand in the numbered columns
   * @param unless what must not stand there
   * @param at where the map says so
   */
  record Each(
      int count, Text text, List<Rule.Condition> when, List<Rule.Condition> unless, MapPlace at)
      implements Source {
    public Each {
      when = List.copyOf(when);
      unless = List.copyOf(unless);
    }

    /** The sheet's columns that it looks at, one name for each number. */
    List<String> headers() {
      List<String> names = new ArrayList<>();
      for (int n = 1; n <= count; n++) {
        int number = n;
        text.pieces().forEach(p -> p.column().ifPresent(c -> names.add(at(c.header(), number))));
        when.forEach(c -> names.add(at(c.header(), number)));
        unless.forEach(c -> names.add(at(c.header(), number)));
      }
      return names;
    }

    /** The name of a numbered column. */
    static String at(String header, int number) {
      return header.replace("#", Integer.toString(number));
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
