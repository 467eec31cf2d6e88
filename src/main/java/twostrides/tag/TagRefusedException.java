package twostrides.tag;

import java.util.List;

/**
 * A step that is not taken: a row that the review would set aside, or one that a page shows old.
 */
final class TagRefusedException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<FieldProblem> problems;
  private final boolean stale;

  /**
   * A refusal.
   *
   * @param problems what is doubtful, at least one
   */
  TagRefusedException(List<FieldProblem> problems) {
    this(problems, false);
  }

  private TagRefusedException(List<FieldProblem> problems, boolean stale) {
    super("not saved: " + problems);
    this.problems = List.copyOf(problems);
    this.stale = stale;
  }

  /** A refusal since the page that asks does not show the rows as they are. */
  static TagRefusedException stale(FieldProblem problem) {
    return new TagRefusedException(List.of(problem), true);
  }

  /** What is doubtful, field by field. */
  List<FieldProblem> problems() {
    return problems;
  }

  /** Whether the page has to read the rows anew. */
  boolean stale() {
    return stale;
  }
}
