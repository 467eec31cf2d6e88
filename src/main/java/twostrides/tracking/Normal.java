package twostrides.tracking;

/** The normal equations of a polynomial fit, and their inverse. */
final class Normal {
  private final int unknowns;

  /**
   * Equations of a fit.
   *
   * @param unknowns coefficients of the polynomial
   */
  Normal(int unknowns) {
    this.unknowns = unknowns;
  }

  /**
   * The inverse of the sums of powers of the rows' times; times the rows' variance it is the
   * variance of the coefficients.
   *
   * @param track the rows
   * @param first first row
   * @param last last row
   * @param second the instant from which times count
   */
  double[][] of(Track track, int first, int last, double second) {
    double[] sums = new double[2 * unknowns - 1];
    for (int i = first; i <= last; i++) {
      double power = 1;
      for (int k = 0; k < sums.length; k++) {
        sums[k] += power;
        power *= track.second(i) - second;
      }
    }
    double[][] m = new double[unknowns][2 * unknowns];
    for (int r = 0; r < unknowns; r++) {
      for (int c = 0; c < unknowns; c++) {
        m[r][c] = sums[r + c];
      }
      m[r][unknowns + r] = 1;
    }
    return inverse(m);
  }

  /** Gauss and Jordan; the matrix is positive definite, so no pivot is sought. */
  private double[][] inverse(double[][] m) {
    for (int k = 0; k < unknowns; k++) {
      double pivot = m[k][k];
      for (int c = 0; c < 2 * unknowns; c++) {
        m[k][c] /= pivot;
      }
      for (int r = 0; r < unknowns; r++) {
        double factor = m[r][k];
        for (int c = 0; r != k && c < 2 * unknowns; c++) {
          m[r][c] -= factor * m[k][c];
        }
      }
    }
    double[][] inverse = new double[unknowns][unknowns];
    for (int r = 0; r < unknowns; r++) {
      System.arraycopy(m[r], unknowns, inverse[r], 0, unknowns);
    }
    return inverse;
  }
}
