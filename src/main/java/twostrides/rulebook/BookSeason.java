package twostrides.rulebook;

import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A season, named by the years in which it starts and ends: 2025-26.
 *
 * @param start the year in which it starts, 1900 to 2998
 */
public record BookSeason(int start) implements Comparable<BookSeason> {

  /** How a season is written, for messages. */
  public static final String FORM = "a season such as 2025-26";

  private static final Pattern WRITTEN = Pattern.compile("(\\d{4})-(\\d{2}|\\d{4})");

  /** Rejects years that no league has played or will soon play. */
  public BookSeason {
    if (start < 1900 || start > 2998) {
      throw new IllegalArgumentException("a season starts in 1900 to 2998, not in " + start);
    }
  }

  /**
   * The season as written; empty when it is not {@link #FORM}, or its years do not follow.
   *
   * @param text 2025-26 or 2025-2026
   */
  public static Optional<BookSeason> of(String text) {
    Matcher m = WRITTEN.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    int start = Integer.parseInt(m.group(1));
    int end = Integer.parseInt(m.group(2));
    boolean follows = m.group(2).length() == 2 ? end == (start + 1) % 100 : end == start + 1;
    return follows && start >= 1900 && start <= 2998
        ? Optional.of(new BookSeason(start))
        : Optional.empty();
  }

  /**
   * The season in which a day lies; empty for years that no league has played or will soon play.
   * Seasons begin in July (assumed: the first camps open in July or August, and nobody plays for
   * anything in June).
   *
   * @param day the day
   */
  public static Optional<BookSeason> on(LocalDate day) {
    int year = day.getYear() - (day.getMonth().compareTo(Month.JULY) < 0 ? 1 : 0);
    return year >= 1900 && year <= 2998 ? Optional.of(new BookSeason(year)) : Optional.empty();
  }

  @Override
  public int compareTo(BookSeason other) {
    return Integer.compare(start, other.start);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%d-%02d", start, (start + 1) % 100);
  }
}
