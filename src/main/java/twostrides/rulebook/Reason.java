package twostrides.rulebook;

/**
 * Why a ruling is what it is: one rule of the book with its place in it.
 *
 * @param rule the rule's short name
 * @param text the rule in one line
 * @param clause clause of the rulebook, empty where none is known
 * @param source where it was read
 * @param grade how sure it is
 */
public record Reason(String rule, String text, String clause, String source, Grade grade) {

  /**
   * A reason that every book shares.
   *
   * @param rule the rule's short name
   * @param text the rule in one line
   */
  static Reason common(String rule, String text) {
    return new Reason(rule, text, "", "", Grade.COMMON);
  }

  /** Clause and grade as a page prints them: "81.3, S" or "common practice, no source". */
  public String cite() {
    return switch (grade) {
      case COMMON, CHOSEN, NOT_FOUND -> grade.meaning();
      case READ, SECONDARY, DERIVED, MEMORY ->
          clause.isEmpty() ? source + ", " + grade.letter() : clause + ", " + grade.letter();
    };
  }
}
