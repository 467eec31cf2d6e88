package twostrides.rates;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Distributions of a share as masses on a grid. The grid is even in the angle whose squared sine is
 * the share, where every binomial likelihood is about as wide as any other of as many trials, and a
 * beta distribution has the density share^(alpha - 1/2) (1 - share)^(beta - 1/2).
 */
final class ShareGrid {

  /** Cells from 0 to 1. Assumed: a likelihood of 6,000 trials is about as wide as one. */
  static final int CELLS = 256;

  private static final double STEP = Math.PI / 2 / CELLS;
  private static final double[] SHARE = new double[CELLS];
  private static final double[] LOG = new double[CELLS];
  private static final double[] LOG_REST = new double[CELLS];

  static {
    for (int j = 0; j < CELLS; j++) {
      SHARE[j] = share((j + 0.5) * STEP);
      LOG[j] = Math.log(SHARE[j]);
      // The grid is even from both ends: the rest of a share is a share of the grid, too.
      LOG_REST[CELLS - 1 - j] = LOG[j];
    }
  }

  private ShareGrid() {}

  /** The share of an angle, 0 to half pi. */
  static double share(double angle) {
    return Math.sin(angle) * Math.sin(angle);
  }

  /**
   * The beta distribution with that mean, above 0 and below 1, and that many cases, alpha + beta.
   */
  static double[] beta(double mean, double cases) {
    double alpha = mean * cases;
    double beta = (1 - mean) * cases;
    double[] masses = powers(alpha - 0.5, beta - 0.5);
    masses[0] *= end(alpha);
    masses[CELLS - 1] *= end(beta);
    double sum = sum(masses);
    for (int j = 0; j < CELLS; j++) {
      masses[j] /= sum;
    }
    return masses;
  }

  /**
   * What the cell at an end holds by what its middle says. The density goes there as angle^(2 shape
   * - 1), which may be without bound; above 1 the cell holds next to nothing.
   */
  private static double end(double shape) {
    return shape < 1 ? Math.pow(2, 2 * shape - 2) / shape : 1;
  }

  /** Likelihood of each share, the highest as 1. */
  static double[] likelihood(Count count) {
    return powers(count.successes(), count.trials() - count.successes());
  }

  /** share^a (1 - share)^b over its highest value. */
  private static double[] powers(double a, double b) {
    double[] powers = new double[CELLS];
    double highest = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < CELLS; j++) {
      powers[j] = a * LOG[j] + b * LOG_REST[j];
      highest = Math.max(highest, powers[j]);
    }
    for (int j = 0; j < CELLS; j++) {
      powers[j] = Math.exp(powers[j] - highest);
    }
    return powers;
  }

  private static double sum(double[] masses) {
    return DoubleStream.of(masses).sum();
  }

  /** Sum of products, cell by cell. */
  static double product(double[] a, double[] b) {
    double sum = 0;
    for (int j = 0; j < CELLS; j++) {
      sum += a[j] * b[j];
    }
    return sum;
  }

  /** Products, cell by cell. */
  static double[] times(double[] a, double[] b) {
    double[] products = new double[CELLS];
    for (int j = 0; j < CELLS; j++) {
      products[j] = a[j] * b[j];
    }
    return products;
  }

  /** Adds so many times the second to the first. */
  static void add(double[] to, double times, double[] what) {
    for (int j = 0; j < CELLS; j++) {
      to[j] += times * what[j];
    }
  }

  /** Mean share; the masses need not sum to 1. */
  static double mean(double[] masses) {
    return product(masses, SHARE) / sum(masses);
  }

  /**
   * The share below which the given part lies, even within a cell; the masses need not sum to 1.
   */
  static double quantile(double[] masses, double part) {
    double left = part * sum(masses);
    int j = 0;
    while (j < CELLS - 1 && left > masses[j]) {
      left -= masses[j++];
    }
    return share((j + (masses[j] > 0 ? Math.min(1, left / masses[j]) : 0)) * STEP);
  }

  /**
   * How likely each of some independent shares is the highest; summing to 1. Within a cell every
   * share is as likely as another.
   *
   * @param some masses of each share, not all 0; they need not sum to 1
   */
  static double[] highest(List<double[]> some) {
    int n = some.size();
    double[] chances = new double[n];
    double[] below = new double[n];
    double[] total = some.stream().mapToDouble(ShareGrid::sum).toArray();
    double[] before = new double[n];
    for (int j = 0; j < CELLS; j++) {
      double all = 1;
      for (int k = 0; k < n; k++) {
        below[k] += some.get(k)[j] / total[k] / 2;
        before[k] = all;
        all *= below[k];
      }
      double after = 1;
      for (int k = n - 1; k >= 0; k--) {
        chances[k] += some.get(k)[j] / total[k] * before[k] * after;
        after *= below[k];
        below[k] += some.get(k)[j] / total[k] / 2;
      }
    }
    double sum = sum(chances);
    for (int k = 0; k < n; k++) {
      chances[k] /= sum;
    }
    return chances;
  }
}
