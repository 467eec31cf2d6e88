package twostrides.review;

/** The strengths in the order in which they are shown. */
public enum ShownStrength {
  /** Even strength. */
  EVEN("even"),
  /** Fewer skaters because of penalties. */
  SHORTHANDED("shorthanded"),
  /** More skaters because of penalties. */
  POWER_PLAY("power play"),
  /** Not in the sheet. */
  UNKNOWN("unknown");

  private final String label;

  ShownStrength(String label) {
    this.label = label;
  }

  /** The words on pages and charts. */
  public String label() {
    return label;
  }

  /** The words in a sentence. */
  public String phrase() {
    return switch (this) {
      case EVEN -> "at even strength";
      case SHORTHANDED -> "shorthanded";
      case POWER_PLAY -> "on the power play";
      case UNKNOWN -> "strength unknown";
    };
  }

  /**
   * The shown strength of a word in the tables.
   *
   * @param word even, shorthanded, power play or unknown
   */
  public static ShownStrength of(String word) {
    for (ShownStrength s : values()) {
      if (s.label.equals(word)) {
        return s;
      }
    }
    throw new IllegalArgumentException("no strength \"" + word + "\"");
  }
}
