package twostrides.numbers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.review.Say;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;
import twostrides.stats.Interval;
import twostrides.stats.KaplanMeier;
import twostrides.stats.Range;

/** Words of single cells: one way of writing counts, shares, means and seconds. */
final class Cell {

  /** For what is not there. */
  static final String NONE = "–";

  /** For what the counts are too few to say. */
  static final String FEW = "too few to say";

  private Cell() {}

  static String counts(Count c) {
    return c.successes() + " of " + c.trials();
  }

  static String share(Count c) {
    return Say.shortShare(c);
  }

  static String interval(Count c) {
    return interval(new Clustered(c));
  }

  /** The interval of a share over a team's games. */
  static String interval(Clustered games) {
    String i = Say.interval(games);
    return i.isEmpty() ? "" : i + " %";
  }

  static String percents(Interval i) {
    return percent(i.low()) + " to " + percent(i.high()) + " %";
  }

  /** An adjusted rate; a dash where there is none. */
  static String adjusted(Optional<AdjustedRate> rate) {
    return rate.map(r -> percent(r.share()) + " %").orElse(NONE);
  }

  /** The interval of an adjusted rate; a dash where there is none. */
  static String adjustedInterval(Optional<AdjustedRate> rate) {
    return rate.map(r -> percents(r.interval())).orElse(NONE);
  }

  static String percent(double share) {
    return Say.percent(share);
  }

  /** A mean of a total over cases, two decimals; too few below ten cases. */
  static String mean(long total, int cases) {
    if (cases == 0) {
      return NONE;
    }
    return cases < Count.FEWEST_TO_SAY ? FEW : decimals((double) total / cases, 2);
  }

  static String decimals(double x, int places) {
    BigDecimal b = BigDecimal.valueOf(x).setScale(places, RoundingMode.HALF_EVEN);
    // No minus before a rounded zero.
    return b.signum() == 0 ? b.abs().toPlainString() : b.toPlainString();
  }

  static String signed(double x, int places) {
    String s = decimals(x, places);
    return s.startsWith("-") || s.chars().noneMatch(c -> c >= '1' && c <= '9') ? s : "+" + s;
  }

  static String range(Optional<Range> r, int places) {
    return r.map(i -> signed(i.low(), places) + " to " + signed(i.high(), places)).orElse(NONE);
  }

  /** A difference of shares in points of a hundred with its interval; too few below ten each. */
  static String difference(Difference d) {
    Count first = d.first().total();
    Count second = d.second().total();
    if (first.tooFew() || second.tooFew()) {
      return first.trials() == 0 || second.trials() == 0 ? NONE : FEW;
    }
    Range r = d.interval().orElseThrow();
    return points(d.value().orElseThrow())
        + " ("
        + points(r.low())
        + " to "
        + points(r.high())
        + ")";
  }

  /** A share or a difference of shares in points of a hundred, with its sign. */
  static String points(double share) {
    return signed(100 * share, 0);
  }

  static String seconds(OptionalDouble s) {
    return s.isPresent() ? decimals(s.getAsDouble(), 1) + " s" : NONE;
  }

  /** A median with its interval; "not reached" where half of the waits never ended. */
  static String median(KaplanMeier curve) {
    if (curve.waits() == 0) {
      return NONE;
    }
    if (curve.waits() < Count.FEWEST_TO_SAY) {
      return FEW;
    }
    KaplanMeier.Median m = curve.median();
    if (m.seconds().isEmpty()) {
      return "not reached";
    }
    return decimals(m.seconds().getAsDouble(), 0)
        + " s ("
        + (m.low().isPresent() ? decimals(m.low().getAsDouble(), 0) : NONE)
        + " to "
        + (m.high().isPresent() ? decimals(m.high().getAsDouble(), 0) : NONE)
        + ")";
  }
}
