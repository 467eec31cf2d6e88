package twostrides.sheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * A row that is not used, and why.
 *
 * @param row the row in its own words
 * @param problems what is doubtful about it, at least one
 */
public record DoubtfulRow(SheetRow row, List<Problem> problems) {
  /** Checks that there is a reason and copies the list. */
  public DoubtfulRow {
    problems = List.copyOf(problems);
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("a row is set aside for a reason: line " + row.line());
    }
  }

  /** The same with what is doubtful about a second event of the row. */
  public DoubtfulRow and(DoubtfulRow other) {
    return new DoubtfulRow(
        row, Stream.concat(problems.stream(), other.problems.stream()).distinct().toList());
  }
}
