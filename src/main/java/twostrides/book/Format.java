package twostrides.book;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.book.chart.Words;
import twostrides.exits.RestartCause;
import twostrides.findings.PlayerNumbers.Verdict;
import twostrides.findings.Value;
import twostrides.game.Strength;
import twostrides.race.Chance;
import twostrides.rink.Units;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;
import twostrides.stats.Interval;
import twostrides.stats.KaplanMeier;
import twostrides.stats.Range;

/**
 * How the book writes numbers: every one of its pages, charts and clip titles. A share stands with
 * its count, and a share that is not quite none or all never reads as 0 or 100 %.
 */
public final class Format {

  /** What stands where there is nothing. */
  public static final String NONE = "–";

  /** What stands where there are too few cases. */
  public static final String FEW = "too few to say";

  private Format() {}

  /**
   * A value of a grid.
   *
   * @param value the value
   */
  public static String text(Value value) {
    if (value instanceof Value.Words v) {
      return v.words();
    } else if (value instanceof Value.Whole v) {
      return whole(v.n());
    } else if (value instanceof Value.Counts v) {
      return counts(v.count());
    } else if (value instanceof Value.Share v) {
      return share(v.count());
    } else if (value instanceof Value.ShareOfN v) {
      return share(v.count()) + ", n " + whole(v.count().trials());
    } else if (value instanceof Value.IntervalOf v) {
      return interval(v.games());
    } else if (value instanceof Value.Adjusted v) {
      return v.rate().map(r -> chance(r.share())).orElse(NONE);
    } else if (value instanceof Value.AdjustedInterval v) {
      return v.rate().map(r -> range(r.interval()) + " %").orElse(NONE);
    } else if (value instanceof Value.AdjustedBoth v) {
      return adjusted(v.rate());
    } else if (value instanceof Value.SumIn v) {
      return whole(v.sum()) + " in " + whole(v.cases());
    } else if (value instanceof Value.Mean v) {
      return few(v.cases()).orElseGet(() -> decimals(v.total() / v.cases(), v.places()) + v.unit());
    } else if (value instanceof Value.Decimal v) {
      return v.x().isPresent() ? decimals(v.x().getAsDouble(), v.places()) + v.unit() : NONE;
    } else if (value instanceof Value.Signed v) {
      return v.x().isEmpty()
          ? NONE
          : few(v.cases()).orElseGet(() -> signed(v.x().getAsDouble(), v.places()));
    } else if (value instanceof Value.SignedRange v) {
      return v.range().map(r -> signed(r, v.places())).orElse(NONE);
    } else if (value instanceof Value.Percent v) {
      return v.share().isPresent() ? chance(v.share().getAsDouble()) : NONE;
    } else if (value instanceof Value.Median v) {
      return median(v.curve());
    } else if (value instanceof Value.DifferenceOf v) {
      return difference(new Difference(v.first(), v.second()));
    } else if (value instanceof Value.Against v) {
      return verdict(v.verdict());
    } else if (value instanceof Value.Began v) {
      return "P" + v.period() + ", " + clock(v.elapsed()) + " played";
    }
    return NONE;
  }

  private static Optional<String> few(int cases) {
    return cases == 0
        ? Optional.of(NONE)
        : cases < Count.FEWEST_TO_SAY ? Optional.of(FEW) : Optional.empty();
  }

  /** "3 of 12". */
  public static String counts(Count c) {
    return whole(c.successes()) + " of " + whole(c.trials());
  }

  /** The share, or words where it is too few. */
  public static String share(Count c) {
    return c.trials() == 0 ? "none" : c.tooFew() ? FEW : percent(c);
  }

  /** Whole percent of a count, halves up. */
  static String percent(Count c) {
    BigDecimal whole =
        BigDecimal.valueOf(100L * c.successes())
            .divide(BigDecimal.valueOf(c.trials()), 0, RoundingMode.HALF_UP);
    if (whole.signum() == 0 && c.successes() > 0) {
      return "under 1 %";
    }
    if (whole.intValueExact() == 100 && c.successes() < c.trials()) {
      return "over 99 %";
    }
    return whole + " %";
  }

  /** A chance, weight or adjusted rate in whole percent. */
  public static String chance(double p) {
    return p == 0 || p == 1
        ? Math.round(100 * p) + " %"
        : p < 0.005 ? "under 1 %" : p > 0.995 ? "over 99 %" : Math.round(100 * p) + " %";
  }

  /** "3 of 12 (25 %, 95 % interval 9 to 53 %)"; words instead of the share below ten cases. */
  public static String withInterval(Count c) {
    return withInterval(new Clustered(c));
  }

  /** The same of cases that hang together game by game. */
  public static String withInterval(Clustered games) {
    Count c = games.total();
    if (c.trials() == 0) {
      return counts(c);
    }
    return counts(c)
        + (c.tooFew()
            ? " (" + FEW + ")"
            : " (" + percent(c) + ", 95 % interval " + interval(games) + ")");
  }

  /** "3 of 12 (adjusted rate 20 %, 95 % interval 9 to 41 %)", where there is an adjusted rate. */
  public static String withInterval(Count c, Optional<AdjustedRate> adjusted) {
    return adjusted
        .map(
            r ->
                counts(c)
                    + " (adjusted rate "
                    + chance(r.share())
                    + ", 95 % interval "
                    + range(r.interval())
                    + " %)")
        .orElseGet(() -> withInterval(c));
  }

  /** "9 to 53 %"; nothing below ten cases. */
  public static String interval(Clustered games) {
    return games.total().tooFew() ? "" : range(games.interval().orElseThrow()) + " %";
  }

  /** "9 to 53" in whole percent, halves up. */
  static String range(Interval i) {
    return whole(i.low()) + " to " + whole(i.high());
  }

  private static String whole(double share) {
    return BigDecimal.valueOf(share)
        .movePointRight(2)
        .setScale(0, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** "20 % (9 to 41 %)". */
  public static String adjusted(Optional<AdjustedRate> rate) {
    return rate.map(r -> chance(r.share()) + " (" + range(r.interval()) + " %)").orElse(NONE);
  }

  /** "62 %, 95 % interval 44 to 78 %". */
  public static String withInterval(Optional<Chance> chance) {
    return chance.map(c -> chance(c.p()) + ", 95 % interval " + range(c)).orElse(NONE);
  }

  /** "62 %, 44 to 78 %". */
  public static String brief(Optional<Chance> chance) {
    return chance.map(c -> chance(c.p()) + ", " + range(c)).orElse(NONE);
  }

  private static String range(Chance c) {
    return chance(c.low()).replace(" %", "") + " to " + chance(c.high());
  }

  /** So many decimals, halves to even; no minus before a rounded zero. */
  static String decimals(double x, int places) {
    BigDecimal b = BigDecimal.valueOf(x).setScale(places, RoundingMode.HALF_EVEN);
    return b.signum() == 0 ? b.abs().toPlainString() : b.toPlainString();
  }

  private static String signed(double x, int places) {
    String s = decimals(x, places);
    return s.startsWith("-") || s.chars().noneMatch(c -> c >= '1' && c <= '9') ? s : "+" + s;
  }

  private static String signed(Range r, int places) {
    return signed(r.low(), places) + " to " + signed(r.high(), places);
  }

  private static String difference(Difference d) {
    if (d.first().total().tooFew() || d.second().total().tooFew()) {
      return d.first().total().trials() == 0 || d.second().total().trials() == 0 ? NONE : FEW;
    }
    Range r = d.interval().orElseThrow();
    return points(d.value().orElseThrow())
        + " ("
        + points(r.low())
        + " to "
        + points(r.high())
        + ")";
  }

  private static String points(double share) {
    return signed(100 * share, 0);
  }

  private static String verdict(Verdict verdict) {
    return switch (verdict) {
      case MORE -> "more often";
      case LESS -> "less often";
      case NO_CLEAR_DIFFERENCE -> "no clear difference";
      case TOO_FEW -> FEW;
    };
  }

  private static String median(KaplanMeier curve) {
    return few(curve.waits())
        .orElseGet(
            () -> {
              KaplanMeier.Median m = curve.median();
              return m.seconds().isEmpty()
                  ? "not reached"
                  : seconds(m.seconds())
                      + " s ("
                      + seconds(m.low())
                      + " to "
                      + seconds(m.high())
                      + ")";
            });
  }

  private static String seconds(OptionalDouble s) {
    return s.isPresent() ? decimals(s.getAsDouble(), 0) : NONE;
  }

  /** "5.4 m (18 ft)". */
  public static String metresAndFeet(double metres) {
    return decimals(metres, 1) + " m (" + Math.round(Units.FOOT.fromMetres(metres)) + " ft)";
  }

  /** The same; a dash where there is none. */
  public static String metresAndFeet(OptionalDouble metres) {
    return metres.isPresent() ? metresAndFeet(metres.getAsDouble()) : NONE;
  }

  /** Minutes and seconds. */
  public static String clock(double seconds) {
    long whole = (long) Math.floor(seconds);
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }

  /** "P2 13:05": period and the time left in it, as the scoreboard shows it. */
  public static String clock(int period, double left) {
    return "P" + period + " " + clock(left);
  }

  /** Hours, minutes and seconds of a video; a dash where there are none. */
  public static String video(OptionalDouble seconds) {
    if (seconds.isEmpty()) {
      return NONE;
    }
    long s = (long) Math.floor(seconds.getAsDouble());
    return String.format(Locale.ROOT, "%d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
  }

  /** A word; a dash where there is none. */
  public static String word(Optional<String> w) {
    return w.orElse(NONE);
  }

  /** "1 game", "3 games". */
  public static String count(int n, String noun) {
    return whole(n) + " " + noun + (n == 1 ? "" : "s");
  }

  /** "1,773". */
  public static String whole(long n) {
    return Words.whole(n);
  }

  /** "at even strength". */
  static String phrase(Strength strength) {
    return switch (strength) {
      case EVEN -> "at even strength";
      case SHORTHANDED -> "shorthanded";
      case POWER_PLAY -> "on the power play";
      case UNKNOWN -> "strength unknown";
    };
  }

  /** A cause in words. */
  public static String cause(RestartCause cause) {
    return switch (cause) {
      case ICING_WRITTEN -> "icing, written";
      case ICING_INFERRED -> "icing, inferred";
      case NONE -> NONE;
      case PENALTY, OTHER, UNKNOWN -> cause.label();
    };
  }
}
