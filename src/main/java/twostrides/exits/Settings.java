package twostrides.exits;

import twostrides.race.TravelBound;
import twostrides.rulebook.IcingBook;

/**
 * What a run may choose.
 *
 * @param window seconds of play in which restarts, attempts and goals count; 20 by default
 *     (Schuckers and Curro 2013: beyond 20 s changes are not significant, as reported)
 * @param book the icing book
 * @param travel bound on a puck's travel
 */
public record Settings(double window, IcingBook book, TravelBound travel) {

  /** 20 s, hybrid icing, the default travel bound. */
  public static final Settings DEFAULT = new Settings(20, IcingBook.HYBRID, TravelBound.DEFAULT);

  /** Rejects a window that counts nothing. */
  public Settings {
    if (!(window > 0)) {
      throw new IllegalArgumentException("the window must be longer than 0 s, not " + window);
    }
  }
}
