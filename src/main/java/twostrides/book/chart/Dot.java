package twostrides.book.chart;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/**
 * A share as a dot with what it could be. With too few trials to say a share the dot is hollow and
 * has no interval.
 *
 * @param count so many of so many
 * @param share where the dot stands, 0 to 1; empty without trials
 * @param interval what it could be
 * @param raw a second interval, drawn paler under the first
 * @param tone what it means
 */
public record Dot(
    Count count,
    OptionalDouble share,
    Optional<Interval> interval,
    Optional<Interval> raw,
    Tone tone) {

  /**
   * A share whose trials are independent.
   *
   * @param count so many of so many
   * @param tone what it means
   */
  public static Dot of(Count count, Tone tone) {
    return new Dot(count, count.share(), count.wilson(), Optional.empty(), tone);
  }

  /**
   * A share over games.
   *
   * @param games a count for each
   * @param tone what it means
   */
  public static Dot of(Clustered games, Tone tone) {
    Count all = games.total();
    return new Dot(all, all.share(), games.interval(), Optional.empty(), tone);
  }

  /**
   * A rate adjusted toward those of a group, over the player's own interval.
   *
   * @param adjusted the adjusted rate
   * @param raw what the count alone could be
   * @param tone what it means
   */
  public static Dot of(AdjustedRate adjusted, Optional<Interval> raw, Tone tone) {
    return new Dot(
        adjusted.count(),
        OptionalDouble.of(adjusted.share()),
        Optional.of(adjusted.interval()),
        raw,
        tone);
  }

  /** Drops the pale interval where there are too few to say. */
  public Dot {
    raw = raw.filter(i -> !count.tooFew());
  }

  /** The interval that is drawn. */
  Optional<Interval> shown() {
    return interval.filter(i -> !count.tooFew());
  }

  /** The share in words: of the dot, not of the count, where the two differ. */
  String said() {
    boolean own = share.equals(count.share());
    return own || count.tooFew() ? Words.share(count) : Words.rate(share.orElse(0));
  }

  /** The same with its count and what it could be: "18 % (18 of 101; could be 8 to 22 %)". */
  String words() {
    return Words.said(said(), count, shown());
  }
}
