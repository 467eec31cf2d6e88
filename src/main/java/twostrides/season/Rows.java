package twostrides.season;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.selection.Selection;
import tech.tablesaw.table.TableSlice;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/**
 * Rows of one of the season's tables, picked by Tablesaw selections: the questions that every count
 * of the book is made of.
 *
 * @param table the rows
 */
public record Rows(Table table) {

  private static final Comparator<List<String>> WORD_BY_WORD =
      (a, b) ->
          IntStream.range(0, a.size())
              .map(i -> a.get(i).compareTo(b.get(i)))
              .filter(c -> c != 0)
              .findFirst()
              .orElse(0);

  /** How many. */
  public int n() {
    return table.rowCount();
  }

  /** Whether there are none. */
  public boolean isEmpty() {
    return table.isEmpty();
  }

  /**
   * Rows of a selection.
   *
   * @param selection which
   */
  public Rows where(Selection selection) {
    return new Rows(table.where(selection));
  }

  /**
   * Rows with one of some words in a column.
   *
   * @param column a column of words
   * @param words the words
   */
  public Rows where(String column, String... words) {
    return where(table.stringColumn(column).isIn(words));
  }

  /** Rows that are true in a column of flags. */
  public Rows isTrue(String column) {
    return where(table.booleanColumn(column).isTrue());
  }

  /** Rows in which a column has a value. */
  public Rows known(String column) {
    return where(table.column(column).isNotMissing());
  }

  /** Rows with an icing, written or inferred, as their cause. */
  public Rows iced() {
    return where(table.stringColumn(Columns.RESTART_CAUSE).startsWith("icing"));
  }

  /** Sum of a column of counts. */
  public int sum(String column) {
    return isEmpty() ? 0 : (int) Math.round(table.intColumn(column).sum());
  }

  /**
   * So many of these rows.
   *
   * @param part some of them
   */
  public Count share(Rows part) {
    return new Count(part.n(), n());
  }

  /**
   * Groups by the words of some columns, sorted by them; a missing word is an empty one.
   *
   * @param columns columns of words
   */
  public SortedMap<List<String>, Rows> by(String... columns) {
    SortedMap<List<String>, Rows> groups = new TreeMap<>(WORD_BY_WORD);
    if (!isEmpty()) {
      for (TableSlice slice : table.splitOn(columns)) {
        Table rows = slice.asTable();
        groups.put(
            Arrays.stream(columns).map(c -> first(rows.stringColumn(c))).toList(), new Rows(rows));
      }
    }
    return groups;
  }

  private static String first(StringColumn column) {
    return column.isMissing(0) ? "" : column.get(0);
  }

  /**
   * A count of each team and game, so that an interval can allow for games that differ.
   *
   * @param count counts some rows
   */
  public Clustered byGame(java.util.function.Function<Rows, Count> count) {
    return new Clustered(by(Columns.TEAM, Columns.GAME).values().stream().map(count).toList());
  }
}
