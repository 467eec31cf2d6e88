package twostrides.race;

/**
 * A line through log odds that was fitted: log odds = b0 + b1 x1 + b2 x2 + ..., with the covariance
 * of its coefficients, from the information at the maximum.
 */
final class LogisticLine {

  private final double[] coefficients;
  private final double[][] covariance;

  /**
   * A fitted line.
   *
   * @param coefficients the intercept first
   * @param covariance theirs, as many rows of as many numbers; only the diagonal and what lies
   *     below it are read
   */
  LogisticLine(double[] coefficients, double[][] covariance) {
    this.coefficients = coefficients.clone();
    int n = coefficients.length;
    this.covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        this.covariance[i][j] = covariance[i][j];
        this.covariance[j][i] = covariance[i][j];
      }
    }
  }

  /** A coefficient; 0 is the intercept. */
  double coefficient(int i) {
    return coefficients[i];
  }

  /** Covariance of two coefficients. */
  double covariance(int i, int j) {
    return covariance[i][j];
  }

  /**
   * Log odds.
   *
   * @param x the places, without the 1 of the intercept
   */
  double at(double... x) {
    double sum = coefficients[0];
    for (int i = 0; i < x.length; i++) {
      sum += coefficients[i + 1] * x[i];
    }
    return sum;
  }

  /** Variance of the log odds there, from what the coefficients may be. */
  double variance(double... x) {
    double sum = 0;
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j < covariance.length; j++) {
        sum += (i == 0 ? 1 : x[i - 1]) * (j == 0 ? 1 : x[j - 1]) * covariance[i][j];
      }
    }
    return sum;
  }

  /** The chance of log odds. */
  static double chance(double logOdds) {
    return 1 / (1 + Math.exp(-logOdds));
  }

  /**
   * The log odds of a chance.
   *
   * @param p the chance
   * @param hold how near to 0 and 1 it may come: nearer, it counts as that near
   */
  static double logOdds(double p, double hold) {
    double held = Math.max(hold, Math.min(1 - hold, p));
    return Math.log(held / (1 - held));
  }
}
