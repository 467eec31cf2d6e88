package twostrides.rates;

/**
 * Where the likelihood of groups is highest over the spread, the mean being the best one for each:
 * a grid, so that a second hill is not missed, then halving on the sign of the slope.
 */
final class BestSpread {

  /** Log likelihood that counts as more than nothing; smaller gains may be rounding. Assumed. */
  static final double LEAST_GAIN = 1e-6;

  /** Points of the grid for each factor of ten. Assumed; the profile is smooth over such a step. */
  private static final int PER_DECADE = 8;

  /** Halvings of a grid step: finer than doubles can tell. */
  private static final int HALVINGS = 60;

  private BestSpread() {}

  /** The spread, from {@link BetaBinomial#NARROWEST} to {@link BetaBinomial#WIDEST}. */
  static double of(SpreadLikelihood likelihood) {
    double decades = Math.log10(BetaBinomial.WIDEST / BetaBinomial.NARROWEST);
    int last = (int) Math.round(decades * PER_DECADE);
    int best = 0;
    double highest = Double.NEGATIVE_INFINITY;
    for (int k = 0; k <= last; k++) {
      double value = profile(likelihood, grid(k));
      if (value > highest) {
        best = k;
        highest = value;
      }
    }
    boolean rises = rises(likelihood, grid(best));
    if (rises ? best == last : best == 0) {
      return grid(best);
    }
    double low = rises ? grid(best) : grid(best - 1);
    double high = rises ? grid(best + 1) : grid(best);
    for (int i = 0; i < HALVINGS && low < high; i++) {
      double middle = Math.sqrt(low * high);
      if (rises(likelihood, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.sqrt(low * high);
  }

  private static double grid(int k) {
    return BetaBinomial.NARROWEST * Math.pow(10, (double) k / PER_DECADE);
  }

  private static double profile(SpreadLikelihood likelihood, double spread) {
    return likelihood.value(likelihood.bestMean(spread), spread);
  }

  private static boolean rises(SpreadLikelihood likelihood, double spread) {
    return likelihood.slope(likelihood.bestMean(spread), spread) > 0;
  }
}
