package twostrides.exits;

import twostrides.rulebook.Ruling;
import twostrides.rulebook.RulingWords;

/**
 * What another book says of a release.
 *
 * @param book the other book's id
 * @param ruling its ruling
 * @param played what the book of the run says of the same facts
 */
public record OtherRuling(String book, Ruling ruling, Ruling played) {

  /** Whether only one of the two says icing, or only one leaves it open. */
  public boolean differs() {
    return ruling instanceof Ruling.Icing != played instanceof Ruling.Icing
        || ruling instanceof Ruling.NotYetDecided != played instanceof Ruling.NotYetDecided;
  }

  /** The other book's ruling in a word. */
  public String word() {
    return ruling.word();
  }

  /** The word of the book of the run. */
  public String playedWord() {
    return played.word();
  }

  /** Clause of the other book and how sure it is. */
  public String clause() {
    return ruling.reason().cite();
  }

  /** The other book's ruling as a sentence with its reason. */
  public String sentence() {
    return RulingWords.sentence(ruling);
  }
}
