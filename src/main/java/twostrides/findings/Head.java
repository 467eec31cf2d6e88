package twostrides.findings;

/**
 * Heading of a column.
 *
 * @param label its words
 * @param term id of its definition in docs/numbers.md
 * @param number whether the cells are numbers, set to the right
 */
public record Head(String label, String term, boolean number) {

  /** A heading over words. */
  static Head words(String label, String term) {
    return new Head(label, term, false);
  }

  /** A heading over numbers. */
  static Head number(String label, String term) {
    return new Head(label, term, true);
  }
}
