package twostrides.rulebook;

/**
 * What a rule's answer rests on.
 *
 * @param rule the rule's short name
 * @param setting what the book says
 */
record Basis(String rule, Setting setting) {

  /**
   * The rule decides.
   *
   * @param text the rule in one line
   */
  Answer applies(String text) {
    return new Answer.Applies(reason(text));
  }

  /**
   * The rule would decide if a fact were known.
   *
   * @param fact the fact
   * @param settles how the fact would settle the ruling
   */
  Answer unknown(FactKey fact, String settles) {
    return new Answer.Unknown(new Ruling.Open(fact, settles, reason(settles)));
  }

  /**
   * The reason that the rule gives.
   *
   * @param text the rule in one line
   */
  Reason reason(String text) {
    return new Reason(rule, text, setting.clause(), setting.source(), setting.grade());
  }
}
