package twostrides.rulebook;

/** What one rule answers about one situation. */
sealed interface Answer {

  /**
   * A rule that decides by one setting.
   *
   * @param b the book
   * @param key the setting
   * @param rule the rule's short name
   * @param text the rule in one line
   */
  static Answer applies(IcingBook b, SettingKey key, String rule, String text) {
    return new Applies(Reason.of(rule, text, b.setting(key)));
  }

  /**
   * A rule that would decide if a fact were known.
   *
   * @param b the book
   * @param key the setting it rests on
   * @param fact the fact
   * @param rule the rule's short name
   * @param settles how the fact would settle the ruling
   */
  static Answer unknown(IcingBook b, SettingKey key, FactKey fact, String rule, String settles) {
    return new Unknown(new Ruling.Open(fact, settles, Reason.of(rule, settles, b.setting(key))));
  }

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
