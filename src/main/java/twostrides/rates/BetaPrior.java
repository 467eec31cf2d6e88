package twostrides.rates;

import org.hipparchus.special.Beta;

/**
 * How shares spread over a group: a beta distribution.
 *
 * @param alpha first shape, above 0; reads as that many successes seen beforehand
 * @param beta second shape, above 0; reads as that many failures seen beforehand
 */
public record BetaPrior(double alpha, double beta) {

  /** Halvings of 0 to 1 that find a quantile: 2^-52 is as fine as a share near 1 can be written. */
  private static final int HALVINGS = 52;

  /** Rejects shapes that are not finite and above 0. */
  public BetaPrior {
    if (!(alpha > 0 && beta > 0 && Double.isFinite(alpha + beta))) {
      throw new IllegalArgumentException(
          "a beta distribution needs two finite shapes above 0, not " + alpha + ", " + beta);
    }
  }

  /** The distribution with that mean, above 0 and below 1, and that alpha + beta. */
  static BetaPrior of(double mean, double precision) {
    return new BetaPrior(mean * precision, (1 - mean) * precision);
  }

  /** Mean share, alpha / (alpha + beta). */
  public double mean() {
    return alpha / precision();
  }

  /** Alpha + beta: how many trials the distribution counts for. */
  public double precision() {
    return alpha + beta;
  }

  /** The distribution after that many successes and failures more. */
  public BetaPrior after(Count count) {
    return new BetaPrior(alpha + count.successes(), beta + count.trials() - count.successes());
  }

  /** The standard deviation of the shares, sqrt(m (1 - m) / (alpha + beta + 1)). */
  public double standardDeviation() {
    return Math.sqrt(mean() * (beta / precision()) / (precision() + 1));
  }

  /**
   * The share below which the given part of the distribution lies.
   *
   * @param part 0 to 1
   */
  double quantile(double part) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (Beta.regularizedBeta(middle, alpha, beta) < part) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** The middle 95 %: from the 2.5 % to the 97.5 % point. */
  Interval middle() {
    return new Interval(quantile(0.025), quantile(0.975));
  }

  /**
   * The count's share drawn toward this distribution: the posterior mean (alpha + y) / (alpha +
   * beta + n), its 2.5 % and 97.5 % points, and the prior's weight (alpha + beta) / (alpha + beta +
   * n). Without trials it is the prior itself. The distribution is taken as known: right for a
   * prior from elsewhere; {@link BetaBinomial} widens the interval of one that it fitted.
   */
  public Shrunk shrink(Count count) {
    BetaPrior posterior = after(count);
    double weight = precision() / posterior.precision();
    return new Shrunk(count, posterior.mean(), posterior.middle(), weight, false);
  }
}
