package twostrides.stats;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * So many of so many. Counts stay whole numbers; shares are made from them at the last step and
 * only where there is something to divide by.
 *
 * @param successes how many, 0 to {@code trials}
 * @param trials of how many, 0 or more
 */
public record Count(int successes, int trials) {

  /**
   * Below so many trials a share is not worth saying; adjustable nowhere yet, by the product's
   * definition.
   */
  public static final int FEWEST_TO_SAY = 10;

  /** 97.5 % point of the standard normal distribution, for two-sided 95 % intervals. */
  static final double Z95 = 1.959963984540054;

  /** Rejects more successes than trials. */
  public Count {
    if (successes < 0 || trials < successes) {
      throw new IllegalArgumentException(
          "a count needs 0 <= successes <= trials, not " + successes + " of " + trials);
    }
  }

  /** Both counts added. */
  public Count plus(Count other) {
    return new Count(successes + other.successes, trials + other.trials);
  }

  /** What is left of this count without a part of it. */
  public Count minus(Count part) {
    return new Count(successes - part.successes, trials - part.trials);
  }

  /** Whether there are too few trials to say a share. */
  public boolean tooFew() {
    return trials < FEWEST_TO_SAY;
  }

  /** The share, 0 to 1; empty without trials. */
  public OptionalDouble share() {
    return trials == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) successes / trials);
  }

  /**
   * The 95 % Wilson score interval; empty without trials.
   *
   * <p>(2np + z² ∓ z sqrt(z² + 4np(1 - p))) / (2(n + z²)). Source: Newcombe 1998, Statistics in
   * Medicine 17:857, method 3.
   */
  public Optional<Interval> wilson() {
    return wilson(1);
  }

  /**
   * The Wilson interval of this share on fewer trials.
   *
   * @param designEffect what to divide the trials by, 1 or more
   */
  Optional<Interval> wilson(double designEffect) {
    if (trials == 0) {
      return Optional.empty();
    }
    double p = (double) successes / trials;
    double n = trials / designEffect;
    double z2 = Z95 * Z95;
    double middle = 2 * n * p + z2;
    double half = Z95 * Math.sqrt(z2 + 4 * n * p * (1 - p));
    double denominator = 2 * (n + z2);
    double low = successes == 0 ? 0 : (middle - half) / denominator;
    double high = successes == trials ? 1 : (middle + half) / denominator;
    return Optional.of(new Interval(Math.max(0, low), Math.min(1, high)));
  }
}
