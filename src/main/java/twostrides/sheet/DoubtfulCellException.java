package twostrides.sheet;

/** A cell that does not hold what its column expects; the row is doubtful, the sheet is not. */
public class DoubtfulCellException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Problem problem;

  /**
   * A doubtful cell.
   *
   * @param problem what was found and where
   */
  public DoubtfulCellException(Problem problem) {
    super(problem.message());
    this.problem = problem;
  }

  /** What was found, where, and what was expected. */
  public Problem problem() {
    return problem;
  }
}
