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
record TableRows(Table table, int at) {

  static Stream<TableRows> of(Table t) {
    return Stream.iterate(0, i -> i < t.rowCount(), i -> i + 1).map(i -> new TableRows(t, i));
  }

  Optional<String> text(String column) {
    return Cells.text(table, column, at);
  }

  String words(String column) {
    return text(column).orElse("");
  }

  OptionalInt count(String column) {
    return Cells.count(table, column, at);
  }

  OptionalDouble number(String column) {
    return Cells.number(table, column, at);
  }

  Optional<Boolean> flag(String column) {
    return Cells.flag(table, column, at);
  }
}
