package twostrides.rates;

import java.util.List;
import java.util.function.ToIntFunction;

/**
 * The beta-binomial log likelihood of groups of counts, in mean m = alpha / (alpha + beta) and
 * spread t = 1 / (alpha + beta).
 *
 * <p>Ratios of gamma functions at whole steps are products, so that, but for binomial coefficients
 * that hold neither parameter, log L = sum_i A_i log(m + i t) + sum_j B_j log(1 - m + j t) - sum_k
 * C_k log(1 + k t), where A_i counts the groups with more than i successes, B_j with more than j
 * failures, C_k with more than k trials. Nothing cancels as t goes to 0, where it is the binomial;
 * differences of log gamma would lose digits there. For a given t it is concave in m. Source: Smith
 * 1983, Applied Statistics 32:196, algorithm AS 189 (form of the sums, from memory).
 */
final class SpreadLikelihood {

  /** Steps after which the mean is as good as it gets; a dozen are usual. */
  private static final int MOST_STEPS = 200;

  private final int[] successes;
  private final int[] failures;
  private final int[] trials;
  private final double pooledMean;

  /** The groups need at least one success and one failure among them. */
  SpreadLikelihood(List<Count> groups) {
    successes = groupsAbove(groups, Count::successes);
    failures = groupsAbove(groups, c -> c.trials() - c.successes());
    trials = groupsAbove(groups, Count::trials);
    double y = groups.stream().mapToLong(Count::successes).sum();
    pooledMean = y / groups.stream().mapToLong(Count::trials).sum();
  }

  /** Entry i: in how many groups the number is above i. */
  private static int[] groupsAbove(List<Count> groups, ToIntFunction<Count> number) {
    int[] above = new int[groups.stream().mapToInt(number).max().orElse(0)];
    for (Count group : groups) {
      int n = number.applyAsInt(group);
      if (n > 0) {
        above[n - 1]++;
      }
    }
    for (int i = above.length - 2; i >= 0; i--) {
      above[i] += above[i + 1];
    }
    return above;
  }

  /** Share of all groups together. */
  double pooledMean() {
    return pooledMean;
  }

  /** The log likelihood without binomial coefficients. */
  double value(double mean, double spread) {
    double sum = 0;
    for (int i = 0; i < successes.length; i++) {
      sum += successes[i] * Math.log(mean + i * spread);
    }
    for (int j = 0; j < failures.length; j++) {
      sum += failures[j] * Math.log(1 - mean + j * spread);
    }
    for (int k = 0; k < trials.length; k++) {
      sum -= trials[k] * Math.log1p(k * spread);
    }
    return sum;
  }

  /** Its derivative by the spread; at the best mean also that of the profile over the spread. */
  double slope(double mean, double spread) {
    double sum = 0;
    for (int i = 1; i < successes.length; i++) {
      sum += successes[i] * (i / (mean + i * spread));
    }
    for (int j = 1; j < failures.length; j++) {
      sum += failures[j] * (j / (1 - mean + j * spread));
    }
    for (int k = 1; k < trials.length; k++) {
      sum -= trials[k] * (k / (1 + k * spread));
    }
    return sum;
  }

  /** Minus its second derivative by the mean, above 0. */
  double information(double mean, double spread) {
    double sum = 0;
    for (int i = 0; i < successes.length; i++) {
      double inverse = 1 / (mean + i * spread);
      sum += successes[i] * inverse * inverse;
    }
    for (int j = 0; j < failures.length; j++) {
      double inverse = 1 / (1 - mean + j * spread);
      sum += failures[j] * inverse * inverse;
    }
    return sum;
  }

  /**
   * The best mean for a spread: the root of the derivative by the mean, which falls from plus to
   * minus infinity; Newton's step where it stays between the bounds known so far, else their
   * middle.
   */
  double bestMean(double spread) {
    double low = 0;
    double high = 1;
    double mean = pooledMean;
    for (int step = 0; step < MOST_STEPS; step++) {
      double first = 0;
      double second = 0;
      for (int i = 0; i < successes.length; i++) {
        double inverse = 1 / (mean + i * spread);
        first += successes[i] * inverse;
        second -= successes[i] * inverse * inverse;
      }
      for (int j = 0; j < failures.length; j++) {
        double inverse = 1 / (1 - mean + j * spread);
        first -= failures[j] * inverse;
        second -= failures[j] * inverse * inverse;
      }
      if (first > 0) {
        low = mean;
      } else {
        high = mean;
      }
      double next = mean - first / second;
      if (!(low < next && next < high)) {
        next = (low + high) / 2;
      }
      if (Math.abs(next - mean) <= 1e-15 * mean) {
        return next;
      }
      mean = next;
    }
    return mean;
  }
}
