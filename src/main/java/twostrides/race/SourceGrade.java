package twostrides.race;

/** How sure the value of a physical parameter is. */
public enum SourceGrade {
  /** The number was read in the source named. */
  READ("R", "read in the source named"),
  /** Only the abstract or opening of the paper was readable, and the number stands there. */
  ABSTRACT("A", "read in the abstract of the paper named"),
  /** Read where somebody else's value is reported. */
  SECONDARY("S", "read in a text that reports somebody else's value"),
  /** From memory with high confidence. */
  MEMORY_HIGH("M hi", "from memory, high confidence"),
  /** From memory with medium confidence. */
  MEMORY_MEDIUM("M med", "from memory, medium confidence"),
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
