package twostrides.sheet;

import java.util.Locale;

/**
 * A column that a reader of sheets declares.
 *
 * @param name our name of it, lower case
 * @param required whether a sheet without it cannot be read
 * @param expects what its cells hold, as messages say it: "a whole number from 1 to 20"; may be
 *     empty, and the messages are then built from the limits that the reader asks for
 */
public record ColumnSpec(String name, boolean required, String expects) {
  /** Checks that the name is one that a header can match. */
  public ColumnSpec {
    if (name.isBlank() || !name.equals(name.strip().toLowerCase(Locale.ROOT))) {
      throw new IllegalArgumentException("a column name is lower case and not empty: " + name);
    }
    expects = expects.strip();
  }
}
