package twostrides.book.chart;

import java.util.Locale;
import java.util.Optional;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/** How counts and shares are written in pictures. */
public final class Words {

  private Words() {}

  /**
   * "1,773". Most are below a thousand and need no formatter.
   *
   * @param n a whole number
   */
  public static String whole(long n) {
    return Math.abs(n) < 1000 ? String.valueOf(n) : String.format(Locale.ROOT, "%,d", n);
  }

  /** For example "9 of 10". */
  static String counted(Count c) {
    return whole(c.successes()) + " of " + whole(c.trials());
  }

  /** Whole percent of a share, 0 to 1. */
  static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  /** Whole percent of a rate above 0 and below 1, but never 0 or 100 %. */
  static String rate(double share) {
    return share < 0.005 ? "under 1 %" : share > 0.995 ? "over 99 %" : percent(share);
  }

  /** Whole percent, but never 0 % for some or 100 % for not all; "few" where too few to say. */
  static String share(Count c) {
    if (c.tooFew()) {
      return c.trials() == 0 ? "none" : "few";
    }
    long whole = Math.round(100.0 * c.successes() / c.trials());
    if (whole == 0 && c.successes() > 0) {
      return "under 1 %";
    }
    return whole == 100 && c.successes() < c.trials() ? "over 99 %" : whole + " %";
  }

  /** For example "54 to 67 %". */
  static String interval(Interval i) {
    return Math.round(100 * i.low()) + " to " + Math.round(100 * i.high()) + " %";
  }

  /** For example "61 % (142 of 234; could be 54 to 67 %)", or "few (2 of 6)". */
  static String said(Count c, Optional<Interval> interval) {
    return said(share(c), c, interval.filter(i -> !c.tooFew()));
  }

  /** The same with a share that is not the count's own, such as an adjusted rate. */
  static String said(String share, Count c, Optional<Interval> shown) {
    String range = shown.map(i -> "; could be " + interval(i)).orElse("");
    return share + " (" + counted(c) + range + ")";
  }
}
