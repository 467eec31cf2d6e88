package twostrides.stats;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.discrete.HypergeometricDistribution;

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

  /**
   * Chance of a first share as large as this or larger, were the two shares one: 0 to 1.
   *
   * <p>Fisher's exact test, which also holds for rare successes and few trials, with half the
   * chance of the count itself (mid-p: Lancaster 1961, JASA 56:223), so that it is as often below
   * any level as the level says, on average over counts. Where trials hang together, its normal
   * score is divided by the root of the design effect of the difference, as Rao and Scott 1992 do
   * with chi square. A side without trials says nothing: 1.
   */
  public double chanceOfMore() {
    Count one = first.total();
    Count both = one.plus(second.total());
    if (value().isEmpty()) {
      return 1;
    }
    HypergeometricDistribution counts =
        new HypergeometricDistribution(both.trials(), both.successes(), one.trials());
    double exact =
        counts.upperCumulativeProbability(one.successes())
            - counts.probability(one.successes()) / 2;
    double n1 = one.trials();
    double n2 = second.total().trials();
    double design = (first.designEffect() / n1 + second.designEffect() / n2) / (1 / n1 + 1 / n2);
    NormalDistribution normal = new NormalDistribution();
    double score = normal.inverseCumulativeProbability(Math.min(1, Math.max(0, exact)));
    return normal.cumulativeProbability(score / Math.sqrt(design));
  }

  /** Chance of a first share as small as this or smaller, were the two shares one: 0 to 1. */
  public double chanceOfLess() {
    // Half of the count itself belongs to either side.
    return value().isEmpty() ? 1 : 1 - chanceOfMore();
  }

  /** Chance of so large a difference either way, were the two shares one: 0 to 1. */
  public double chance() {
    return Math.min(1, 2 * Math.min(chanceOfMore(), chanceOfLess()));
  }
}
