package twostrides.tag;

import java.util.List;

/** A row that the review's own reader would set aside: it is not saved. */
final class TagRefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<FieldProblem> problems;

  /**
   * A refusal.
   *
   * @param problems what is doubtful, at least one
   */
  TagRefusedException(List<FieldProblem> problems) {
    super("not saved: " + problems);
    this.problems = List.copyOf(problems);
  }

  /** What is doubtful, field by field. */
  List<FieldProblem> problems() {
    return problems;
  }
}
