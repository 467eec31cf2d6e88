package twostrides.sheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * A row that is not used, and why.
 *
 * @param row the row in its own words
 * @param problems what is doubtful about it, at least one
 */
public record DoubtfulRow(RowWords row, List<Problem> problems) {
  /** Checks that there is a reason and copies the list. */
  public DoubtfulRow {
    problems = List.copyOf(problems);
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("a row is set aside for a reason: line " + row.line());
    }
  }

  /**
   * A row that is not used.
   *
   * @param row the row
   * @param problems what is doubtful about it, at least one
   */
  public DoubtfulRow(SheetRow row, List<Problem> problems) {
    this(row.words(), problems);
  }

  /** The same without the row's cells, which its words have too. */
  public DoubtfulRow withoutCells() {
    return new DoubtfulRow(row.withoutCells(), problems);
  }

  /** The same with what is doubtful about a second event of the row. */
  public DoubtfulRow and(DoubtfulRow other) {
    return new DoubtfulRow(
        row, Stream.concat(problems.stream(), other.problems.stream()).distinct().toList());
  }
}
