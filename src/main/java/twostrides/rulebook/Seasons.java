package twostrides.rulebook;

import java.util.Optional;

/**
 * A run of seasons, open at either end where a book does not say.
 *
 * @param first the first season, empty for "ever since"
 * @param last the last season, empty for "still"
 */
public record Seasons(Optional<BookSeason> first, Optional<BookSeason> last) {

  /** Every season. */
  public static final Seasons ALL = new Seasons(Optional.empty(), Optional.empty());

  /** How a run of seasons is written, for messages. */
  static final String FORM =
      "seasons such as \"2017-18 to 2020-21\", \"2013-14 on\", \"to 2016-17\" or \"2025-26\"";

  /** Rejects a run that ends before it starts. */
  public Seasons {
    if (first.isPresent() && last.isPresent() && last.get().compareTo(first.get()) < 0) {
      throw new IllegalArgumentException(
          "seasons must not end before they start: " + first.get() + " to " + last.get());
    }
  }

  /**
   * Reads what a book writes.
   *
   * @param text in one of the forms of {@link #FORM}
   */
  static Optional<Seasons> of(String text) {
    String t = text.strip();
    if (t.equals("all")) {
      return Optional.of(ALL);
    }
    if (t.endsWith(" on")) {
      return BookSeason.of(t.substring(0, t.length() - 3))
          .map(s -> new Seasons(Optional.of(s), Optional.empty()));
    }
    if (t.startsWith("to ")) {
      return BookSeason.of(t.substring(3)).map(s -> new Seasons(Optional.empty(), Optional.of(s)));
    }
    int to = t.indexOf(" to ");
    Optional<BookSeason> first = BookSeason.of(to < 0 ? t : t.substring(0, to));
    Optional<BookSeason> last = to < 0 ? first : BookSeason.of(t.substring(to + 4));
    boolean ordered =
        first.isPresent() && last.isPresent() && first.get().compareTo(last.get()) <= 0;
    return ordered ? Optional.of(new Seasons(first, last)) : Optional.empty();
  }

  /**
   * Whether a season lies in the run.
   *
   * @param season the season
   */
  public boolean covers(BookSeason season) {
    return first.map(f -> f.compareTo(season) <= 0).orElse(true)
        && last.map(l -> season.compareTo(l) <= 0).orElse(true);
  }

  @Override
  public String toString() {
    if (first.isEmpty()) {
      return last.map(l -> "to " + l).orElse("all");
    }
    if (last.isEmpty()) {
      return first.get() + " on";
    }
    return first.equals(last) ? first.get().toString() : first.get() + " to " + last.get();
  }
}
