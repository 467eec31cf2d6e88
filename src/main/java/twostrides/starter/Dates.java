package twostrides.starter;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a column writes dates.
 *
 * @param form the form; empty for ISO dates, or when nobody knows it
 * @param iso whether they are ISO dates
 * @param sure whether no other form fits
 */
record Dates(Optional<String> form, boolean iso, boolean sure) {
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2})([/.-])(\\d{1,2})[/.-](\\d{4})");
  private static final Pattern ISO = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
  private static final int MONTHS = 12;

  static Dates of(Column column) {
    if (column.all(ISO)) {
      return new Dates(Optional.empty(), true, true);
    }
    if (!column.all(NUMBERS)) {
      return new Dates(Optional.empty(), false, false);
    }
    boolean dayFirst = false;
    boolean monthFirst = false;
    boolean two = true;
    String mark = "/";
    for (String d : column.words().keySet()) {
      Matcher m = NUMBERS.matcher(d);
      if (m.matches()) {
        dayFirst |= Integer.parseInt(m.group(1)) > MONTHS;
        monthFirst |= Integer.parseInt(m.group(3)) > MONTHS;
        two &= m.group(1).length() == 2 && m.group(3).length() == 2;
        mark = m.group(2);
      }
    }
    String day = two ? "dd" : "d";
    String month = two ? "MM" : "M";
    boolean dots = mark.equals(".");
    boolean first = dayFirst || (dots && !monthFirst);
    String form = (first ? day + mark + month : month + mark + day) + mark + "yyyy";
    return new Dates(Optional.of(form), false, dayFirst || monthFirst || dots);
  }
}
