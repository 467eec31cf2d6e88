package twostrides.rates;

import java.util.ArrayList;
import java.util.List;

/**
 * What the counts of groups say about mean and spread of their shares, all spreads weighed and not
 * the best one alone. With few groups, or few trials in each, the best spread is a poor guess; an
 * interval that takes it as known is then too narrow (Laird and Louis 1987, JASA 82:739).
 *
 * <p>A spread t counts by its likelihood at the best mean, times 1 / sqrt(information on the mean)
 * for the means around it (Laplace), with all values of sqrt(t) alike beforehand: the prior of
 * Gelman et al., Bayesian Data Analysis, section 5.3 (from memory). The square error of a drawn
 * share is then, as Kass and Steffey 1989, JASA 84:717, the mean over t of the variance for that t,
 * with the mean's own, and of the square of how far the share for that t lies from the one drawn.
 *
 * @param steps the spreads, rising
 */
record SpreadBelief(List<Step> steps) {

  /** Steps for each factor of ten of the spread. Assumed; 32 change no interval by 0.0001. */
  private static final int PER_DECADE = 8;

  /**
   * One spread.
   *
   * @param spread 1 / (alpha + beta), above 0
   * @param mean the best mean for it, 0 to 1
   * @param meanVariance 1 / the information on the mean
   * @param weight 0 to 1; the weights sum to 1
   */
  record Step(double spread, double mean, double meanVariance, double weight) {}

  SpreadBelief {
    steps = List.copyOf(steps);
  }

  /** The belief from a likelihood, on a grid of spreads. */
  static SpreadBelief of(SpreadLikelihood likelihood) {
    double decades = Math.log10(BetaBinomial.WIDEST / BetaBinomial.NARROWEST);
    int last = (int) Math.round(decades * PER_DECADE);
    double[] spread = new double[last + 1];
    double[] mean = new double[last + 1];
    double[] variance = new double[last + 1];
    double[] log = new double[last + 1];
    double highest = Double.NEGATIVE_INFINITY;
    for (int k = 0; k <= last; k++) {
      spread[k] = BetaBinomial.NARROWEST * Math.pow(10, (double) k / PER_DECADE);
      mean[k] = likelihood.bestMean(spread[k]);
      variance[k] = 1 / likelihood.information(mean[k], spread[k]);
      // On a grid of log t, equal values of sqrt(t) weigh as sqrt(t).
      log[k] = likelihood.value(mean[k], spread[k]) + Math.log(variance[k] * spread[k]) / 2;
      highest = Math.max(highest, log[k]);
    }
    double sum = 0;
    for (double one : log) {
      sum += Math.exp(one - highest);
    }
    List<Step> steps = new ArrayList<>();
    for (int k = 0; k <= last; k++) {
      steps.add(new Step(spread[k], mean[k], variance[k], Math.exp(log[k] - highest) / sum));
    }
    return new SpreadBelief(steps);
  }

  /**
   * 95 % interval of a count's share about the share drawn: equal tails of the beta distribution
   * that has that mean and the square error for its variance.
   *
   * @param count what was counted in the group
   * @param share the share drawn, above 0 and below 1
   */
  Interval about(Count count, double share) {
    double precision = share * (1 - share) / squareError(count, share) - 1;
    BetaPrior about = BetaPrior.of(share, Math.max(precision, 1 / BetaBinomial.WIDEST));
    return about.middle();
  }

  /** Mean square of how far the share may lie from the one drawn. */
  double squareError(Count count, double share) {
    double sum = 0;
    for (Step step : steps) {
      double precision = 1 / step.spread();
      double all = precision + count.trials();
      double drawn = (step.mean() * precision + count.successes()) / all;
      double own = drawn * (1 - drawn) / (all + 1);
      double byMean = precision / all * (precision / all) * step.meanVariance();
      sum += step.weight() * (own + byMean + (drawn - share) * (drawn - share));
    }
    return sum;
  }
}
