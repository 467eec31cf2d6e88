package twostrides.exits;

import java.util.Optional;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;
import twostrides.rulebook.RulingWords;

/**
 * What the book of the run says of a puck let go, of the facts that the sheet has.
 *
 * @param ruling the ruling; empty where the last touch was no release
 * @param audit what the sheet says and the book would not call; empty when they agree
 */
public record BookRuling(Optional<Ruling> ruling, Optional<String> audit) {

  /** Shares what a book says. */
  public BookRuling {
    ruling = Shared.of(ruling);
    audit = Shared.of(audit);
  }

  /** Nothing was let go. */
  static final BookRuling NO_RELEASE = new BookRuling(Optional.empty(), Optional.empty());

  /**
   * Puts the facts to the book.
   *
   * @param book the book
   * @param known what the sheet says
   * @param written whether the sheet says icing in a row
   */
  static BookRuling of(IcingBook book, Facts known, boolean written) {
    Ruling ruling = Judge.judge(book, known);
    // An open fact is no contradiction: the officials saw what the sheet does not say.
    boolean contradicts =
        !(ruling instanceof Ruling.Icing) && !(ruling instanceof Ruling.NotYetDecided);
    return new BookRuling(
        Optional.of(ruling),
        written && contradicts
            ? Optional.of(
                "the sheet says icing, this book would not call it: " + ruling.reason().text())
            : Optional.empty());
  }

  /** The ruling's word. */
  public String word() {
    return ruling.map(Ruling::word).orElse("no icing");
  }

  /** The ruling as a sentence with its reason. */
  public String sentence() {
    return ruling
        .map(RulingWords::sentence)
        .orElse("The last touch was no release: nothing was sent the length.");
  }

  /** Clause of the book and how sure it is; empty where nothing was let go. */
  public Optional<String> clause() {
    return ruling.map(r -> r.reason().cite());
  }
}
