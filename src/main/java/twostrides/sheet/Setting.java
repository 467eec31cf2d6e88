package twostrides.sheet;

import java.util.List;

/** The value that a map gives for a setting, one record a kind. */
sealed interface Setting {
  /** Words. */
  record Text(String value) implements Setting {}

  /** A finite number. */
  record Decimal(double value) implements Setting {}

  /** A form of dates. */
  record Dates(DateForm value) implements Setting {}

  /** A list of whole numbers. */
  record WholeNumbers(List<Integer> value) implements Setting {}

  /** Yes or no. */
  record Flag(boolean value) implements Setting {}
}
