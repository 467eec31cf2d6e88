package twostrides.review;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tech.tablesaw.api.Table;
import twostrides.exits.Cells;

/**
 * One row of a pipeline table by its number. (Tablesaw's own Row is one object reused while
 * looping: never kept.)
 *
 * @param table the table
 * @param at row number
 */
public record TableRows(Table table, int at) {

  /**
   * The rows of a table in order.
   *
   * @param t the table
   */
  public static Stream<TableRows> of(Table t) {
    return Stream.iterate(0, i -> i < t.rowCount(), i -> i + 1).map(i -> new TableRows(t, i));
  }

  /**
   * Words of a cell; empty when missing.
   *
   * @param column one of {@link twostrides.exits.Columns}
   */
  public Optional<String> text(String column) {
    return Cells.text(table, column, at);
  }

  /**
   * Words of a cell; empty text when missing.
   *
   * @param column one of {@link twostrides.exits.Columns}
   */
  public String words(String column) {
    return text(column).orElse("");
  }

  /**
   * A whole number of a cell; empty when missing.
   *
   * @param column one of {@link twostrides.exits.Columns}
   */
  public OptionalInt count(String column) {
    return Cells.count(table, column, at);
  }

  /**
   * A number of a cell, in the unit of its column; empty when missing.
   *
   * @param column one of {@link twostrides.exits.Columns}
   */
  public OptionalDouble number(String column) {
    return Cells.number(table, column, at);
  }

  /**
   * Yes or no of a cell; empty when missing.
   *
   * @param column one of {@link twostrides.exits.Columns}
   */
  public Optional<Boolean> flag(String column) {
    return Cells.flag(table, column, at);
  }
}
