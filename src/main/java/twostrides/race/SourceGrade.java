package twostrides.race;

/** How sure the value of a physical parameter is. */
public enum SourceGrade {
  /** From memory with low confidence. */
  MEMORY_LOW("M low", "from memory, low confidence"),
  /** Computed from values that were read. */
  COMPUTED("C", "computed from values that were read"),
  /** Assumed: looked for, no number found. */
  ASSUMED("assumed", "assumed, no published number found");

  private final String letter;
  private final String meaning;

  SourceGrade(String letter, String meaning) {
    this.letter = letter;
    this.meaning = meaning;
  }

  /** The letter that tables print. */
  public String letter() {
    return letter;
  }

  /** What the letter means, a phrase. */
  public String meaning() {
    return meaning;
  }
}
