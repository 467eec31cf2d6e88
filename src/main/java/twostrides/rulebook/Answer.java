package twostrides.rulebook;

/** What one rule answers about one situation; {@link Basis} makes those that rest on a setting. */
sealed interface Answer {

  /** The rule says nothing about this situation. */
  Answer NO = new DoesNotApply();

  /**
   * The rule decides.
   *
   * @param reason why
   */
  record Applies(Reason reason) implements Answer {}

  /** The rule says nothing about this situation. */
  record DoesNotApply() implements Answer {}

  /**
   * A fact is missing.
   *
   * @param open which one, and how it would settle the ruling
   */
  record Unknown(Ruling.Open open) implements Answer {}
}
