package twostrides.race;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.util.Pair;

/**
 * How long an iced puck takes from the stick to the whistle, as real ones did: the mean speed along
 * the rink to the far goal line is log-normal.
 *
 * <p>A gap read from a clock with a step of s seconds is off by less than s: a true time T is read
 * as g or less with chance (g + s - T) / s between g and g + s. A gap is too quick when so few iced
 * pucks would be read so quick that something else stopped play more likely, too slow when rows
 * must be missing.
 *
 * @param usual median of the mean speed, m/s
 * @param spread standard deviation of its natural logarithm
 * @param fastest fastest release, m/s: no puck is there sooner
 */
public record TravelBound(double usual, double spread, double fastest) {

  /**
   * Median 10.2 m/s (standard error 0.5) and spread 0.23 (0.035): the 22 written icings of three
   * tracked games with a release, men and women (open data of 2023 and 2024, sportshackdays, MIT):
   * 5.5 to 14.6 m/s. Of 37 written icings, these among them, 35 ran 5.5 to 15 m/s. Fastest: 28 m/s,
   * the hardest puck sent up ice by men ({@link Delivery}); assumed.
   */
  public static final TravelBound DEFAULT = new TravelBound(10.2, 0.23, 28);

  /** Share of iced pucks below which a gap is too quick: one in twenty. Assumed. */
  private static final double QUICK = 0.05;

  /** Share of iced pucks below which a gap is too slow: one in a thousand, 5 m/s. Assumed. */
  private static final double SLOW = 0.001;

  /** Gauss-Legendre with 20 points over one clock step, over which its error is averaged. */
  private static final GaussIntegrator STEP = legendre(20);

  /** How a gap fits a puck that went the length. */
  public enum Fit {
    /** So quick that the puck likely went out of play, or stopped near. */
    TOO_QUICK,
    /** As iced pucks are. */
    FITS,
    /** So slow that something happened which is not written. */
    TOO_SLOW
  }

  /**
   * Rejects values outside physics.
   *
   * @throws IllegalArgumentException for these
   */
  public TravelBound {
    if (!(usual > 0) || !(spread > 0) || !(fastest > usual)) {
      throw new IllegalArgumentException(
          ("a travel bound needs a usual speed above 0 m/s, a spread above 0 and a "
                  + "fastest speed above the usual one, not %s, %s and %s")
              .formatted(usual, spread, fastest));
    }
  }

  /**
   * How a gap between two clock readings fits.
   *
   * @param distance metres to the far goal line
   * @param gap seconds between the readings
   * @param clockStep smallest step of the clock, seconds
   */
  public Fit fit(double distance, double gap, double clockStep) {
    if (1 - slower(distance, gap, clockStep) < QUICK) {
      return Fit.TOO_QUICK;
    }
    return slower(distance, gap - clockStep, clockStep) < SLOW ? Fit.TOO_SLOW : Fit.FITS;
  }

  /**
   * Whether any puck can have gone so far in a gap: the fastest release, the clock off by a step.
   *
   * @param distance metres
   * @param gap seconds between the readings
   * @param clockStep smallest step of the clock, seconds
   */
  public boolean possible(double distance, double gap, double clockStep) {
    return distance <= fastest * (gap + clockStep);
  }

  /** Share of iced pucks whose time is read as more than a gap. */
  private double slower(double distance, double gap, double clockStep) {
    var speeds = new LogNormalDistribution(Math.log(usual), spread);
    return STEP.integrate(
        part -> {
          double t = gap + clockStep * part;
          return t <= 0 ? 1 : speeds.cumulativeProbability(distance / t);
        });
  }

  /**
   * Gauss-Legendre between 0 and 1. The library's factory of integrators would first work out
   * numbers of forty digits for rules that are not used here, a fifth of a second.
   */
  private static GaussIntegrator legendre(int points) {
    Pair<double[], double[]> rule = new LegendreRuleFactory().getRule(points);
    double[] at = rule.getFirst().clone();
    double[] weights = rule.getSecond().clone();
    for (int i = 0; i < points; i++) {
      at[i] = 0.5 * at[i] + 0.5;
      weights[i] *= 0.5;
    }
    return new GaussIntegrator(at, weights);
  }
}
