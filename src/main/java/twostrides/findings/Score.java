package twostrides.findings;

import java.util.List;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import twostrides.season.Columns;
import twostrides.season.Rows;

/** Whether a team was leading, tied or trailing. */
public final class Score {

  /** The words, in the order to show. */
  static final List<String> WORDS = List.of("leading", "tied", "trailing");

  private Score() {}

  /**
   * The word of a lead.
   *
   * @param ahead goals for less goals against
   */
  public static String word(int ahead) {
    return WORDS.get(1 - Integer.signum(ahead));
  }

  /** The word of each row; missing where the game's sheet writes no shots. */
  static StringColumn words(Rows rows) {
    IntColumn ahead = (IntColumn) rows.column(Columns.GOALS_AHEAD);
    StringColumn words = StringColumn.create("score");
    for (int i = 0; i < ahead.size(); i++) {
      if (ahead.isMissing(i)) {
        words.appendMissing();
      } else {
        words.append(word(ahead.getInt(i)));
      }
    }
    return words;
  }
}
