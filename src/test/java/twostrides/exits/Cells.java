package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;

/** Cells of a season's tables; a missing one is empty. */
public final class Cells {

  private Cells() {}

  public static Optional<String> text(Table t, String column, int row) {
    var c = t.stringColumn(column);
    return c.isMissing(row) ? Optional.empty() : Optional.of(c.get(row));
  }

  public static OptionalInt count(Table t, String column, int row) {
    var c = t.intColumn(column);
    return c.isMissing(row) ? OptionalInt.empty() : OptionalInt.of(c.getInt(row));
  }

  public static OptionalDouble number(Table t, String column, int row) {
    var c = t.doubleColumn(column);
    return c.isMissing(row) ? OptionalDouble.empty() : OptionalDouble.of(c.getDouble(row));
  }

  public static Optional<Boolean> flag(Table t, String column, int row) {
    var c = t.booleanColumn(column);
    return c.isMissing(row) ? Optional.empty() : Optional.of(c.get(row));
  }
}
