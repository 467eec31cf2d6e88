package twostrides.rates;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The first share less the second. Trials of one cluster may hang together; the two shares are
 * taken as independent.
 *
 * @param first share that is taken
 * @param second share that is taken away
 */
public record Difference(Clustered first, Clustered second) {

  /** From two counts whose trials are independent. */
  public Difference(Count first, Count second) {
    this(new Clustered(first), new Clustered(second));
  }

  /** First share less second share, -1 to 1; empty where either has no trials. */
  public OptionalDouble value() {
    OptionalDouble p1 = first.total().share();
    OptionalDouble p2 = second.total().share();
    return p1.isEmpty() || p2.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(p1.getAsDouble() - p2.getAsDouble());
  }

  /**
   * 95 % interval of the difference, within -1 to 1; empty where either has no trials.
   *
   * <p>With d = p1 - p2 and the Wilson intervals (l1, u1) and (l2, u2): d - sqrt((p1 - l1)² + (u2 -
   * p2)²) to d + sqrt((u1 - p1)² + (p2 - l2)²). Source: Newcombe 1998, Statistics in Medicine
   * 17:873, method 10; here from the intervals of {@link Clustered}.
   */
  public Optional<Range> interval() {
    OptionalDouble difference = value();
    if (difference.isEmpty()) {
      return Optional.empty();
    }
    double d = difference.getAsDouble();
    double p1 = first.total().share().orElseThrow();
    double p2 = second.total().share().orElseThrow();
    Interval w1 = first.interval().orElseThrow();
    Interval w2 = second.interval().orElseThrow();
    double down = Math.hypot(p1 - w1.low(), w2.high() - p2);
    double up = Math.hypot(w1.high() - p1, p2 - w2.low());
    return Optional.of(new Range(Math.max(-1, d - down), Math.min(1, d + up)));
  }

  /** What the interval says of the two shares. */
  public enum Verdict {
    /** The first share is larger beyond chance. */
    FIRST_MORE,
    /** The second share is larger beyond chance. */
    SECOND_MORE,
    /** The interval holds 0. */
    CHANCE,
    /** Either side has too few trials to say a share. */
    TOO_FEW
  }

  /** Which share is larger, where the interval leaves out 0. */
  public Verdict verdict() {
    if (first.total().tooFew() || second.total().tooFew()) {
      return Verdict.TOO_FEW;
    }
    Range range = interval().orElseThrow();
    if (range.low() > 0) {
      return Verdict.FIRST_MORE;
    }
    return range.high() < 0 ? Verdict.SECOND_MORE : Verdict.CHANCE;
  }
}
