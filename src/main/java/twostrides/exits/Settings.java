package twostrides.exits;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.race.TravelBound;
import twostrides.rulebook.BookSeason;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.IcingBook;

/**
 * What a run may choose.
 *
 * @param window seconds of play in which restarts, attempts and goals count; 20 by default
 *     (Schuckers and Curro 2013: beyond 20 s changes are not significant, as reported)
 * @param book the icing book of games without a date, and of seasons without one of their own
 * @param others books whose rulings are compared with it
 * @param seasons the books of the games of a season, where they are other ones
 * @param manpower what says who was on the ice where a sheet says it twice
 * @param race the race and the flags
 * @param travel bound on a puck's travel
 */
public record Settings(
    double window,
    IcingBook book,
    List<IcingBook> others,
    Map<BookSeason, SeasonBooks> seasons,
    ManpowerSource manpower,
    RaceSettings race,
    TravelBound travel) {

  /** 20 s, plain hybrid icing, the default race and travel bound. */
  public static final Settings DEFAULT =
      new Settings(
          20,
          Bookshelf.book("hybrid"),
          List.of(),
          Map.of(),
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
    seasons = Map.copyOf(seasons);
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
    return new Settings(window, other, others, seasons, manpower, race, travel);
  }

  /**
   * The same by the books of a game's season.
   *
   * @param date day of the game, where the sheet has it
   */
  Settings on(Optional<LocalDate> date) {
    return date.flatMap(BookSeason::on)
        .map(seasons::get)
        .map(b -> withBook(b.book()).withOthers(b.others()))
        .orElse(this);
  }

  /**
   * The same compared with other books.
   *
   * @param books the books
   */
  public Settings withOthers(List<IcingBook> books) {
    return new Settings(window, book, books, seasons, manpower, race, travel);
  }

  /**
   * The same with another source of manpower.
   *
   * @param source what wins
   */
  public Settings withManpower(ManpowerSource source) {
    return new Settings(window, book, others, seasons, source, race, travel);
  }

  /**
   * The same with another race.
   *
   * @param other its settings
   */
  public Settings withRace(RaceSettings other) {
    return new Settings(window, book, others, seasons, manpower, other, travel);
  }
}
