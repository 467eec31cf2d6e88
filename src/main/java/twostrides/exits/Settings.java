package twostrides.exits;

import java.util.List;
import twostrides.race.TravelBound;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.IcingBook;

/**
 * What a run may choose.
 *
 * @param window seconds of play in which restarts, attempts and goals count; 20 by default
 *     (Schuckers and Curro 2013: beyond 20 s changes are not significant, as reported)
 * @param book the icing book that the games were played by
 * @param others books whose rulings are compared with it
 * @param manpower what says who was on the ice where a sheet says it twice
 * @param travel bound on a puck's travel
 */
public record Settings(
    double window,
    IcingBook book,
    List<IcingBook> others,
    ManpowerSource manpower,
    TravelBound travel) {

  /** 20 s, plain hybrid icing, the default travel bound. */
  public static final Settings DEFAULT =
      new Settings(
          20, Bookshelf.book("hybrid"), List.of(), ManpowerSource.COLUMNS, TravelBound.DEFAULT);

  /** Copies the books and rejects a window that counts nothing. */
  public Settings {
    others = List.copyOf(others);
    if (!(window > 0)) {
      throw new IllegalArgumentException("the window must be longer than 0 s, not " + window);
    }
  }
}
