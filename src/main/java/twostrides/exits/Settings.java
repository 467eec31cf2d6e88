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
 * @param race the race and the flags
 * @param travel bound on a puck's travel
 */
public record Settings(
    double window,
    IcingBook book,
    List<IcingBook> others,
    ManpowerSource manpower,
    RaceSettings race,
    TravelBound travel) {

  /** 20 s, plain hybrid icing, the default race and travel bound. */
  public static final Settings DEFAULT =
      new Settings(
          20,
          Bookshelf.book("hybrid"),
          List.of(),
          ManpowerSource.COLUMNS,
          RaceSettings.DEFAULT,
          TravelBound.DEFAULT);

  /** Seconds by which the longer window is longer: 20 and 30 s by default. Assumed. */
  public static final double LONGER = 10;

  /** Seconds of play of the longer window. */
  public double longWindow() {
    return window + LONGER;
  }

  /** Copies the books and rejects a window that counts nothing. */
  public Settings {
    others = List.copyOf(others);
    if (!(window > 0)) {
      throw new IllegalArgumentException("the window must be longer than 0 s, not " + window);
    }
  }

  /**
   * The same by another book.
   *
   * @param other the book
   */
  public Settings withBook(IcingBook other) {
    return new Settings(window, other, others, manpower, race, travel);
  }

  /**
   * The same compared with other books.
   *
   * @param books the books
   */
  public Settings withOthers(List<IcingBook> books) {
    return new Settings(window, book, books, manpower, race, travel);
  }

  /**
   * The same with another source of manpower.
   *
   * @param source what wins
   */
  public Settings withManpower(ManpowerSource source) {
    return new Settings(window, book, others, source, race, travel);
  }

  /**
   * The same with another race.
   *
   * @param other its settings
   */
  public Settings withRace(RaceSettings other) {
    return new Settings(window, book, others, manpower, other, travel);
  }
}
