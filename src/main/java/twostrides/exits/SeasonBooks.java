package twostrides.exits;

import java.util.List;
import twostrides.rulebook.IcingBook;

/**
 * The books of one season.
 *
 * @param book the icing book that its games were played by
 * @param others books whose rulings are compared with it
 */
public record SeasonBooks(IcingBook book, List<IcingBook> others) {

  /** Copies the books. */
  public SeasonBooks {
    others = List.copyOf(others);
  }
}
