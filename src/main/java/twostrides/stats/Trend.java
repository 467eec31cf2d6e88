package twostrides.stats;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Whether a share rises or falls over counts in order. Trials are taken as independent; where those
 * of one count hang together, the interval is too narrow.
 *
 * <p>log(p / (1 - p)) = a + b x with x = 0, 1, 2... by maximum likelihood; b / its standard error
 * gives p. Where successes lie only at one end and failures only at the other, b is infinite: the
 * direction then comes from the score test (Cochran 1954, Biometrics 10:417; Armitage 1955,
 * Biometrics 11:375) and there is no odds ratio.
 *
 * @param direction in plain words
 * @param slope how steep; empty where it cannot be said
 * @param p chance of so steep a slope, up or down, if there is none; empty where it cannot be said
 */
public record Trend(Direction direction, Optional<Slope> slope, OptionalDouble p) {

  /** Fewest counts with trials; two points always lie on a line. */
  public static final int FEWEST_STEPS = 3;

  /** Below this p a slope is called one; the counterpart of 95 % intervals. */
  private static final double CALLED = 0.05;

  /** The z value that a slope must have to be called one in 8 of 10 cases: 1.96 + 0.84. */
  private static final double TOLD_IN_8_OF_10 = 2.80;

  /** More counts than this nobody waits for. Assumed. */
  private static final double MANY = 1000;

  /** What the share does. */
  public enum Direction {
    /** It rises, beyond chance at the 5 % level. */
    RISING("rising"),
    /** It falls, beyond chance at the 5 % level. */
    FALLING("falling"),
    /** It stays, or moves no more than chance moves it. */
    FLAT_OR_UNCLEAR("flat or unclear"),
    /** Fewer than three counts with trials, or fewer than ten trials in all. */
    TOO_FEW("too few to say");

    private final String word;

    Direction(String word) {
      this.word = word;
    }

    /** As a page writes it. */
    public String word() {
      return word;
    }
  }

  /**
   * How steep.
   *
   * @param oddsRatio by which factor the odds change from one count to the next, above 0
   * @param interval its 95 % interval
   */
  public record Slope(double oddsRatio, Range interval) {}

  /** The trend over counts in order; one without trials keeps its place. */
  public static Trend of(List<Count> counts) {
    return of(counts, IntStream.range(0, counts.size()).asDoubleStream().toArray());
  }

  /**
   * The trend over counts at given places.
   *
   * @param places where each count stands, not falling
   */
  static Trend of(List<Count> counts, double[] places) {
    long steps = counts.stream().filter(c -> c.trials() > 0).count();
    long trials = counts.stream().mapToLong(Count::trials).sum();
    if (steps < FEWEST_STEPS || trials < Count.FEWEST_TO_SAY) {
      return new Trend(Direction.TOO_FEW, Optional.empty(), OptionalDouble.empty());
    }
    Optional<LogisticFit> fit = LogisticFit.of(counts, places);
    Optional<Slope> slope = fit.flatMap(Trend::slope);
    if (slope.isPresent()) {
      double z = fit.get().slope() / fit.get().slopeError();
      return new Trend(direction(z), slope, OptionalDouble.of(LogisticFit.twoSided(z)));
    }
    OptionalDouble z = LogisticFit.scoreZ(counts, places);
    return z.isEmpty()
        ? new Trend(Direction.FLAT_OR_UNCLEAR, Optional.empty(), OptionalDouble.empty())
        : new Trend(
            direction(z.getAsDouble()),
            Optional.empty(),
            OptionalDouble.of(LogisticFit.twoSided(z.getAsDouble())));
  }

  private static Optional<Slope> slope(LogisticFit fit) {
    double reach = Count.Z95 * fit.slopeError();
    double low = Math.exp(fit.slope() - reach);
    double high = Math.exp(fit.slope() + reach);
    // Ends too far out for a number: as good as infinite.
    return low > 0 && Double.isFinite(high)
        ? Optional.of(new Slope(Math.exp(fit.slope()), new Range(low, high)))
        : Optional.empty();
  }

  /**
   * How many more counts like these would tell, were the slope what it seems: so many that it would
   * be called one in 8 of 10 cases. The error of a slope falls with the number of counts to the
   * power of 1.5.
   *
   * @param counts how many there are
   * @return empty where it is called one already, and where there is no slope
   */
  public OptionalInt moreToTell(int counts) {
    if (direction != Direction.FLAT_OR_UNCLEAR || slope.isEmpty()) {
      return OptionalInt.empty();
    }
    Range r = slope.get().interval();
    double error = (Math.log(r.high()) - Math.log(r.low())) / (2 * Count.Z95);
    double z = Math.abs(Math.log(slope.get().oddsRatio())) / error;
    double needed = counts * Math.pow(TOLD_IN_8_OF_10 / z, 1 / 1.5);
    return needed > MANY ? OptionalInt.empty() : OptionalInt.of((int) Math.ceil(needed) - counts);
  }

  private static Direction direction(double z) {
    if (LogisticFit.twoSided(z) >= CALLED) {
      return Direction.FLAT_OR_UNCLEAR;
    }
    return z > 0 ? Direction.RISING : Direction.FALLING;
  }
}
