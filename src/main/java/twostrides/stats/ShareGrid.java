package twostrides.stats;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A function of a share on a grid: masses of a distribution, which need not sum to 1, or a
 * likelihood. The grid is even in the angle whose squared sine is the share, where every binomial
 * likelihood is about as wide as any other of as many trials, and a beta distribution has the
 * density share^(alpha - 1/2) (1 - share)^(beta - 1/2).
 */
final class ShareGrid {

  /** Cells from 0 to 1. Assumed: a likelihood of 6,000 trials is about as wide as one. */
  private static final int CELLS = 256;

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

  private final double[] cells = new double[CELLS];

  /** The share of an angle, 0 to half pi. */
  static double share(double angle) {
    return Math.sin(angle) * Math.sin(angle);
  }

  /** 0 everywhere. */
  ShareGrid() {}

  /** share^a (1 - share)^b over its highest value. */
  private ShareGrid(double a, double b) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int j = 0; j < CELLS; j++) {
      cells[j] = a * LOG[j] + b * LOG_REST[j];
      highest = Math.max(highest, cells[j]);
    }
    for (int j = 0; j < CELLS; j++) {
      cells[j] = Math.exp(cells[j] - highest);
    }
  }

  /** Likelihood of each share, the highest as 1. */
  static ShareGrid likelihood(Count count) {
    return new ShareGrid(count.successes(), count.trials() - count.successes());
  }

  /**
   * The beta distribution with that mean, above 0 and below 1, and that many cases, alpha + beta;
   * its masses sum to 1.
   */
  static ShareGrid beta(double mean, double cases) {
    double alpha = mean * cases;
    double beta = (1 - mean) * cases;
    ShareGrid masses = new ShareGrid(alpha - 0.5, beta - 0.5);
    masses.cells[0] *= end(alpha);
    masses.cells[CELLS - 1] *= end(beta);
    double sum = masses.sum();
    for (int j = 0; j < CELLS; j++) {
      masses.cells[j] /= sum;
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

  /** Adds so many times another one. */
  void add(double times, ShareGrid other) {
    for (int j = 0; j < CELLS; j++) {
      cells[j] += times * other.cells[j];
    }
  }

  /** Cell by cell. */
  ShareGrid times(ShareGrid other) {
    ShareGrid products = new ShareGrid();
    for (int j = 0; j < CELLS; j++) {
      products.cells[j] = cells[j] * other.cells[j];
    }
    return products;
  }

  /** Sum of the products, cell by cell. */
  double sumOfProducts(ShareGrid other) {
    return sumOfProducts(other.cells);
  }

  private double sumOfProducts(double[] other) {
    double sum = 0;
    for (int j = 0; j < CELLS; j++) {
      sum += cells[j] * other[j];
    }
    return sum;
  }

  private double sum() {
    return DoubleStream.of(cells).sum();
  }

  /** Mean share. */
  double mean() {
    return sumOfProducts(SHARE) / sum();
  }

  /** The share below which the given part lies, even within a cell. */
  double quantile(double part) {
    double left = part * sum();
    int j = 0;
    while (j < CELLS - 1 && left > cells[j]) {
      left -= cells[j++];
    }
    return share((j + (cells[j] > 0 ? Math.min(1, left / cells[j]) : 0)) * STEP);
  }

  /**
   * How likely each of some independent shares is the highest; summing to 1. Within a cell every
   * share is as likely as another.
   *
   * @param some masses of each share, not all 0
   */
  static double[] highest(List<ShareGrid> some) {
    int n = some.size();
    double[] chances = new double[n];
    double[] below = new double[n];
    double[] total = some.stream().mapToDouble(ShareGrid::sum).toArray();
    double[] before = new double[n];
    for (int j = 0; j < CELLS; j++) {
      double all = 1;
      for (int k = 0; k < n; k++) {
        below[k] += some.get(k).cells[j] / total[k] / 2;
        before[k] = all;
        all *= below[k];
      }
      double after = 1;
      for (int k = n - 1; k >= 0; k--) {
        double mass = some.get(k).cells[j] / total[k];
        chances[k] += mass * before[k] * after;
        after *= below[k];
        below[k] += mass / 2;
      }
    }
    double sum = DoubleStream.of(chances).sum();
    return DoubleStream.of(chances).map(c -> c / sum).toArray();
  }
}
