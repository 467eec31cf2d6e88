package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;

/**
 * Reads cells of a table by column and row; a missing cell is an empty optional, never a magic
 * number.
 */
final class Cells {
  private Cells() {}

  static Optional<String> text(Table t, String column, int row) {
    var c = t.stringColumn(column);
    return c.isMissing(row) ? Optional.empty() : Optional.of(c.get(row));
  }

  static OptionalInt count(Table t, String column, int row) {
    var c = t.intColumn(column);
    return c.isMissing(row) ? OptionalInt.empty() : OptionalInt.of(c.getInt(row));
  }

  static OptionalDouble number(Table t, String column, int row) {
    var c = t.doubleColumn(column);
    return c.isMissing(row) ? OptionalDouble.empty() : OptionalDouble.of(c.getDouble(row));
  }

  static Optional<Boolean> flag(Table t, String column, int row) {
    var c = t.booleanColumn(column);
    return c.isMissing(row) ? Optional.empty() : Optional.of(c.get(row));
  }
}
