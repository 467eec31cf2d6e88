package twostrides.race;

import org.hipparchus.distribution.continuous.GammaDistribution;
import twostrides.stats.Range;

/**
 * How often a carrier loses the puck, per second that he keeps it: events over seconds, adjusted
 * toward a stated prior.
 *
 * <p>Losses over a time at risk are Poisson; a gamma prior of so many losses in so many seconds
 * gives the posterior Gamma(a + losses, b + seconds), mean (a + losses)/(b + seconds). The interval
 * is its middle 95 %. The chance of still having the puck after t seconds is (B/(B + t))^A, A and B
 * the posterior's: the exponential averaged over what the rate may be.
 *
 * @param losses times it was lost
 * @param seconds seconds at risk
 * @param priorLosses losses of the prior
 * @param priorSeconds seconds of the prior
 */
public record LossRate(int losses, double seconds, double priorLosses, double priorSeconds) {

  /**
   * Rejects what cannot be counted.
   *
   * @throws IllegalArgumentException for these
   */
  public LossRate {
    if (losses < 0 || !(seconds >= 0) || !(priorLosses > 0) || !(priorSeconds > 0)) {
      throw new IllegalArgumentException(
          "a loss rate needs counts and seconds of 0 or more and a prior above 0");
    }
  }

  /** Losses a second, posterior mean. */
  public double perSecond() {
    return (priorLosses + losses) / (priorSeconds + seconds);
  }

  /**
   * Chance of still having the puck after a time.
   *
   * @param t seconds, 0 or more
   */
  public double keeps(double t) {
    double b = priorSeconds + seconds;
    return Math.pow(b / (b + t), priorLosses + losses);
  }

  /**
   * Chance that whoever let the puck go would still have had it after a time. He is pressed more
   * than those who carry on, from whom the rate is counted: at the same place his chance lies lower
   * by {@link Fitted#PRESSED_SENT} or {@link Fitted#PRESSED_MISSED} in log odds. How much of that a
   * tag of pressure says already is not known, so the chance takes half, its interval from all to
   * none and the middle 95 % of the rate.
   *
   * @param t seconds, 0 or more
   * @param missedPass whether he let it go by a pass that nobody received
   */
  public Chance keepsWhoLetGo(double t, boolean missedPass) {
    double pressed = missedPass ? Fitted.PRESSED_MISSED : Fitted.PRESSED_SENT;
    Range rate = interval();
    double p = keeps(t);
    double least = Math.min(p, Math.exp(-rate.high() * t));
    double most = Math.max(p, Math.exp(-rate.low() * t));
    return new Chance(moved(p, pressed / 2), moved(least, pressed), most);
  }

  private static double moved(double p, double logOdds) {
    double odds = p * Math.exp(logOdds);
    return odds / (1 - p + odds);
  }

  /** Middle 95 % of the rate, losses a second. */
  public Range interval() {
    GammaDistribution rate =
        new GammaDistribution(priorLosses + losses, 1 / (priorSeconds + seconds));
    return new Range(
        rate.inverseCumulativeProbability(0.025), rate.inverseCumulativeProbability(0.975));
  }
}
