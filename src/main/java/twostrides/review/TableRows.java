package twostrides.review;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tech.tablesaw.api.Table;

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
    var c = table.stringColumn(column);
    return c.isMissing(at) ? Optional.empty() : Optional.of(c.get(at));
  }

  String words(String column) {
    return text(column).orElse("");
  }

  OptionalInt count(String column) {
    var c = table.intColumn(column);
    return c.isMissing(at) ? OptionalInt.empty() : OptionalInt.of(c.getInt(at));
  }

  OptionalDouble number(String column) {
    var c = table.doubleColumn(column);
    return c.isMissing(at) ? OptionalDouble.empty() : OptionalDouble.of(c.getDouble(at));
  }

  Optional<Boolean> flag(String column) {
    var c = table.booleanColumn(column);
    return c.isMissing(at) ? Optional.empty() : Optional.of(c.get(at));
  }
}
