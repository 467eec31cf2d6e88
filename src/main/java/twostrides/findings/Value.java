package twostrides.findings;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.KaplanMeier;
import twostrides.stats.Range;

/** What stands in a cell of a grid: words, or numbers that the book's one formatter writes. */
public sealed interface Value {

  /** Words. */
  record Words(String words) implements Value {}

  /** A whole number. */
  record Whole(int n) implements Value {}

  /** "3 of 12". */
  record Counts(Count count) implements Value {}

  /** The share of a count; words where it is too few. */
  record Share(Count count) implements Value {}

  /** The share of a count with its n: "12 %, n 30". */
  record ShareOfN(Count count) implements Value {}

  /** 95 % interval of a share; a cluster is a game. */
  record IntervalOf(Clustered games) implements Value {}

  /** An adjusted rate. */
  record Adjusted(Optional<AdjustedRate> rate) implements Value {}

  /** 95 % interval of an adjusted rate. */
  record AdjustedInterval(Optional<AdjustedRate> rate) implements Value {}

  /** An adjusted rate with its interval. */
  record AdjustedBoth(Optional<AdjustedRate> rate) implements Value {}

  /** A sum over cases: "4 in 53". */
  record SumIn(int sum, int cases) implements Value {}

  /** A mean; words below ten cases. */
  record Mean(double total, int cases, int places, String unit) implements Value {}

  /** A number with so many places and a unit; empty where there is none. */
  record Decimal(OptionalDouble x, int places, String unit) implements Value {}

  /** A number with its sign; words below ten cases. */
  record Signed(OptionalDouble x, int places, int cases) implements Value {}

  /** A range with signs. */
  record SignedRange(Optional<Range> range, int places) implements Value {}

  /** A share that is not a count's: a weight. */
  record Percent(OptionalDouble share) implements Value {}

  /** Median of a survival curve with its interval, seconds. */
  record Median(KaplanMeier curve) implements Value {}

  /** Difference of two shares in points of a hundred, with its interval. */
  record DifferenceOf(Clustered first, Clustered second) implements Value {}

  /** Whether a player differs from the others. */
  record Against(PlayerNumbers.Verdict verdict) implements Value {}

  /** When a stretch began: period and seconds played. */
  record Began(int period, double elapsed) implements Value {}

  /** Nothing. */
  record Empty() implements Value {}

  /** A share over cases that hang together by nothing. */
  static Value interval(Count count) {
    return new IntervalOf(new Clustered(count));
  }
}
