package twostrides.race;

import java.util.Objects;

/**
 * A number that the race model uses, with what a reader needs to judge it.
 *
 * @param name what it is, a phrase
 * @param value the value used, in {@code unit}
 * @param low least plausible value, in {@code unit}
 * @param high greatest plausible value, in {@code unit}
 * @param unit SI unit, "1" for a plain number
 * @param source where it comes from, a phrase
 * @param grade how sure it is
 */
public record Parameter(
    String name,
    double value,
    double low,
    double high,
    String unit,
    String source,
    SourceGrade grade) {

  /**
   * Rejects a value outside its own range and empty words.
   *
   * @throws IllegalArgumentException for these
   */
  public Parameter {
    Objects.requireNonNull(grade, "grade");
    if (name.isBlank() || unit.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("a parameter needs a name, a unit and a source");
    }
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          name + " needs low <= value <= high, not " + low + ", " + value + ", " + high);
    }
  }

  /**
   * An assumed number, for which nothing published was read.
   *
   * @param name what it is, a phrase
   * @param value the value used, in {@code unit}
   * @param low least plausible value, in {@code unit}
   * @param high greatest plausible value, in {@code unit}
   * @param unit SI unit, "1" for a plain number
   */
  static Parameter assumed(String name, double value, double low, double high, String unit) {
    return new Parameter(
        name, value, low, high, unit, "nothing published was read", SourceGrade.ASSUMED);
  }
}
