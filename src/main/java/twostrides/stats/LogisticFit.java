package twostrides.stats;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.special.Erf;

/**
 * A straight line through log odds by maximum likelihood: iteratively reweighted least squares,
 * which for log odds is Newton's method; a step that lowers the likelihood is halved.
 *
 * @param intercept log odds at place 0
 * @param slope change of log odds for each unit of place
 * @param slopeError standard error of the slope, from the information at the maximum
 */
record LogisticFit(double intercept, double slope, double slopeError) {

  private static final int MOST_STEPS = 100;

  /** Change of log odds over the whole sequence that no longer counts. */
  private static final double SETTLED = 1e-11;

  /**
   * Fits the line; empty where the likelihood has no maximum: all successes, none, or successes and
   * failures that do not overlap along the places.
   */
  static Optional<LogisticFit> of(List<Count> counts, double[] places) {
    if (!overlap(counts, places)) {
      return Optional.empty();
    }
    double center = meanPlace(counts, places);
    double a = 0;
    double b = 0;
    double value = logLikelihood(counts, places, center, a, b);
    double reach = Math.max(1, places[places.length - 1] - places[0]);
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] s = sums(counts, places, center, a, b);
      double determinant = s[2] * s[4] - s[3] * s[3];
      if (!(determinant > 0)) {
        return Optional.empty();
      }
      double da = (s[4] * s[0] - s[3] * s[1]) / determinant;
      double db = (s[2] * s[1] - s[3] * s[0]) / determinant;
      if (Math.abs(da) + Math.abs(db) * reach < SETTLED) {
        double error = Math.sqrt(s[2] / determinant);
        return Optional.of(new LogisticFit(a - b * center, b, error));
      }
      double factor = 1;
      double next = logLikelihood(counts, places, center, a + da, b + db);
      // A loss this small is rounding, not overshoot.
      while (next < value - 1e-12 * Math.abs(value) && factor > 1e-6) {
        factor /= 2;
        next = logLikelihood(counts, places, center, a + factor * da, b + factor * db);
      }
      a += factor * da;
      b += factor * db;
      value = next;
    }
    return Optional.empty();
  }

  /** Scores by intercept and slope, then the information: both intercepts, mixed, both slopes. */
  private static double[] sums(
      List<Count> counts, double[] places, double center, double a, double b) {
    double[] s = new double[5];
    for (int i = 0; i < places.length; i++) {
      Count count = counts.get(i);
      double x = places[i] - center;
      double eta = a + b * x;
      double p = 1 / (1 + Math.exp(-eta));
      double q = 1 / (1 + Math.exp(eta));
      // y q - (n - y) p equals y - n p without loss near the ends.
      double score = count.successes() * q - (count.trials() - count.successes()) * p;
      double weight = count.trials() * p * q;
      s[0] += score;
      s[1] += score * x;
      s[2] += weight;
      s[3] += weight * x;
      s[4] += weight * x * x;
    }
    return s;
  }

  private static double logLikelihood(
      List<Count> counts, double[] places, double center, double a, double b) {
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      double eta = a + b * (places[i] - center);
      int failures = counts.get(i).trials() - counts.get(i).successes();
      sum -= counts.get(i).successes() * logOnePlusExp(-eta) + failures * logOnePlusExp(eta);
    }
    return sum;
  }

  private static double logOnePlusExp(double x) {
    return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
  }

  /** Whether some success lies before some failure and some failure before some success. */
  private static boolean overlap(List<Count> counts, double[] places) {
    double firstSuccess = Double.POSITIVE_INFINITY;
    double lastSuccess = Double.NEGATIVE_INFINITY;
    double firstFailure = Double.POSITIVE_INFINITY;
    double lastFailure = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < places.length; i++) {
      if (counts.get(i).successes() > 0) {
        firstSuccess = Math.min(firstSuccess, places[i]);
        lastSuccess = Math.max(lastSuccess, places[i]);
      }
      if (counts.get(i).successes() < counts.get(i).trials()) {
        firstFailure = Math.min(firstFailure, places[i]);
        lastFailure = Math.max(lastFailure, places[i]);
      }
    }
    return firstSuccess < lastFailure && firstFailure < lastSuccess;
  }

  /**
   * The score test of a slope of 0: with weighted mean place x̄ and pooled share p, the sum of (x -
   * x̄)(y - n p) over sqrt(p (1 - p) sum n (x - x̄)²). Empty where all trials succeed or fail, or
   * all stand at one place.
   */
  static OptionalDouble scoreZ(List<Count> counts, double[] places) {
    double trials = counts.stream().mapToLong(Count::trials).sum();
    double p = counts.stream().mapToLong(Count::successes).sum() / trials;
    double center = meanPlace(counts, places);
    double score = 0;
    double square = 0;
    for (int i = 0; i < places.length; i++) {
      double x = places[i] - center;
      score += x * (counts.get(i).successes() - counts.get(i).trials() * p);
      square += counts.get(i).trials() * x * x;
    }
    double variance = p * (1 - p) * square;
    return variance > 0 ? OptionalDouble.of(score / Math.sqrt(variance)) : OptionalDouble.empty();
  }

  private static double meanPlace(List<Count> counts, double[] places) {
    double trials = 0;
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      trials += counts.get(i).trials();
      sum += counts.get(i).trials() * places[i];
    }
    return sum / trials;
  }

  /** The chance of a standard normal number as far from 0 as z or farther. */
  static double twoSided(double z) {
    return Erf.erfc(Math.abs(z) / Math.sqrt(2));
  }
}
