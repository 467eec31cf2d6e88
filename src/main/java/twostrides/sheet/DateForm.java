package twostrides.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How a sheet writes dates, with or without a time of day. Names of months and days are English on
 * every machine, in capitals or not.
 *
 * @param letters d for the day, M for the month, y for the year, as in dd.MM.yyyy; empty for the
 *     form of ISO 8601
 */
public record DateForm(String letters) {

  /** 2031-10-04. */
  public static final DateForm ISO = new DateForm("");

  private static final Map<String, DateTimeFormatter> FORMATTERS =
      new ConcurrentHashMap<>(Map.of(ISO.letters, DateTimeFormatter.ISO_LOCAL_DATE));

  /** The first indoor game with rules was in 1875. */
  private static final int FIRST_YEAR = 1875;

  /** A year with more digits, or far ahead, is a slip. Assumed. */
  private static final int LAST_YEAR = 2999;

  /** Shown in messages; it has a time of day and a zone, for forms that write them. */
  private static final ZonedDateTime EXAMPLE =
      ZonedDateTime.of(2031, 10, 4, 19, 30, 0, 0, ZoneOffset.UTC);

  /**
   * A form by its letters.
   *
   * @param letters as in dd.MM.yyyy
   * @return empty when that is no form from which a date can be read
   */
  static Optional<DateForm> of(String letters) {
    if (letters.equals(ISO.letters)) {
      return Optional.empty();
    }
    try {
      DateForm form = new DateForm(letters);
      return form.read(form.example()).equals(EXAMPLE.toLocalDate())
          ? Optional.of(form)
          : Optional.empty();
    } catch (IllegalArgumentException | DateTimeException e) {
      return Optional.empty();
    }
  }

  private DateTimeFormatter formatter() {
    return FORMATTERS.computeIfAbsent(
        letters,
        l ->
            new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(l)
                .toFormatter(Locale.ENGLISH));
  }

  /**
   * A date.
   *
   * @param text as the sheet writes it
   * @throws DateTimeException when it is none in this form, or of a year in which nobody plays
   */
  public LocalDate read(String text) {
    LocalDate day = LocalDate.parse(text, formatter());
    if (day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR) {
      throw new DateTimeException("a year in which nobody plays");
    }
    return day;
  }

  /** A date in this form. */
  public String example() {
    return EXAMPLE.format(formatter());
  }
}
