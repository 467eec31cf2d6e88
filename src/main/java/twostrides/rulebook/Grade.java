package twostrides.rulebook;

import java.util.Arrays;
import java.util.Optional;

/** How sure a setting of a book is. */
public enum Grade {
  /** Read on the page of the book or of its governing body. */
  READ("P", "read on the page of the book or the governing body"),
  /** Read in a secondary text that cites book, edition and clause. */
  SECONDARY("S", "read in a secondary text that cites the clause"),
  /** Derived from the clause named. */
  DERIVED("D", "derived from the clause named"),
  /** From memory: verify before relying on it. */
  MEMORY("M", "from memory, verify before relying on it"),
  /** Looked for and not found: the value is assumed. */
  NOT_FOUND("?", "looked for, not found: assumed"),
  /** A fact of the trade. */
  COMMON("C", "common practice, no source"),
  /** Chosen in a user's own book, or for a run. */
  CHOSEN("own", "chosen by you");

  private final String letter;
  private final String meaning;

  Grade(String letter, String meaning) {
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

  /**
   * The grade of a letter, in either case.
   *
   * @param letter as a book writes it
   */
  static Optional<Grade> of(String letter) {
    return Arrays.stream(values())
        .filter(g -> g.letter.equalsIgnoreCase(letter.strip()))
        .findFirst();
  }
}
