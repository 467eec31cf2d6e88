package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;

/**
 * Reads cells of a table by column and row; a missing cell is an empty optional, never a magic
 * number.
 */
public final class Cells {
  private Cells() {}

  /**
   * Words of a cell.
   *
   * @param t a table of the pipeline
   * @param column one of {@link Columns}
   * @param row row number, from 0
   */
  public static Optional<String> text(Table t, String column, int row) {
    var c = t.stringColumn(column);
    return c.isMissing(row) ? Optional.empty() : Optional.of(c.get(row));
  }

  /**
   * A whole number of a cell.
   *
   * @param t a table of the pipeline
   * @param column one of {@link Columns}
   * @param row row number, from 0
   */
  public static OptionalInt count(Table t, String column, int row) {
    var c = t.intColumn(column);
    return c.isMissing(row) ? OptionalInt.empty() : OptionalInt.of(c.getInt(row));
  }

  /**
   * A number of a cell, in the unit of its column.
   *
   * @param t a table of the pipeline
   * @param column one of {@link Columns}
   * @param row row number, from 0
   */
  public static OptionalDouble number(Table t, String column, int row) {
    var c = t.doubleColumn(column);
    return c.isMissing(row) ? OptionalDouble.empty() : OptionalDouble.of(c.getDouble(row));
  }

  /**
   * Yes or no of a cell.
   *
   * @param t a table of the pipeline
   * @param column one of {@link Columns}
   * @param row row number, from 0
   */
  public static Optional<Boolean> flag(Table t, String column, int row) {
    var c = t.booleanColumn(column);
    return c.isMissing(row) ? Optional.empty() : Optional.of(c.get(row));
  }

  /**
   * Whether icing, written or inferred, is the cause of the restart in a row.
   *
   * @param t a table of the pipeline with {@link Columns#RESTART_CAUSE}
   * @param row row number, from 0
   */
  static boolean iced(Table t, int row) {
    String cause = text(t, Columns.RESTART_CAUSE, row).orElse("");
    return cause.equals(RestartCause.ICING_WRITTEN.label())
        || cause.equals(RestartCause.ICING_INFERRED.label());
  }
}
