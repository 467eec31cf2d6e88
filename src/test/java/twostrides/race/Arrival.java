package twostrides.race;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Two-way races and races of teams in closed form and by quadrature: the reference for the
 * simulation, which {@code ArrivalTest} holds to it.
 *
 * <p>How sure a computed arrival is: it is off by a logistic error, and independently for each
 * skater.
 *
 * <p>P(there by t) = 1/(1 + e^(-(t - m)/s)), m the computed arrival, s = sqrt(3) sigma/pi, sigma
 * the standard deviation of the error, all in seconds. Source: Spearman 2018, "Beyond Expected
 * Goals", MIT Sloan Sports Analytics Conference (read in public re-implementations that cite it).
 * The error has no lower end, so a draw may fall before the release; sigma is to be small against
 * m.
 */
final class Arrival {
  /** Below this lead, in scales, the closed form cancels and the series is exact to rounding. */
  private static final double SERIES_BELOW = 0.3;

  /** Beyond so many scales a logistic tail is below 1e-16. */
  private static final double TAIL = 37;

  /** Gauss-Legendre points to a panel one scale wide. */
  private static final int POINTS = 12;

  private static final double SCALE = Math.sqrt(3) / Math.PI;

  private Arrival() {}

  /**
   * Scale s of the logistic error, s.
   *
   * @param sigma standard deviation, s, above 0
   */
  static double scale(double sigma) {
    return SCALE * sigma;
  }

  /**
   * Probability that he is there by a time.
   *
   * @param t s
   * @param arrival computed arrival, s
   * @param sigma standard deviation, s, above 0
   */
  static double thereBy(double t, double arrival, double sigma) {
    return logistic((t - arrival) / scale(sigma));
  }

  /**
   * Probability that A is first of two with logistic errors of the same sigma: e^d (e^d - 1 -
   * d)/(e^d - 1)^2, d the lead in scales; 1/2 at 0.
   *
   * @param lead computed arrival of B less that of A, s
   * @param sigma standard deviation of either, s, above 0
   */
  static double logisticRace(double lead, double sigma) {
    double d = lead / scale(sigma);
    if (Math.abs(d) < SERIES_BELOW) {
      double d2 = d * d;
      // Taylor series of the closed form; the next term is below 3e-13 at the switch.
      return 0.5
          + d
              * (1 / 6.0
                  - d2 * (1 / 180.0 - d2 * (1 / 5040.0 - d2 * (1 / 151200.0 - d2 / 4790016.0))));
    }
    double e = Math.exp(-Math.abs(d));
    double behind = e * (e - 1 + Math.abs(d)) / ((1 - e) * (1 - e));
    return d > 0 ? 1 - behind : behind;
  }

  /**
   * Probability that team A's first skater is there before team B's first: the integral of f_min,A
   * S_min,B over time, by Gauss-Legendre quadrature.
   *
   * @param a computed arrivals of team A, s; none never arrives
   * @param b computed arrivals of team B, s; none never arrives
   * @param sigma standard deviation of each, s, above 0
   * @return 0 to 1; with nobody on either side 0, as nobody of team A is first
   */
  static double teamFirst(double[] a, double[] b, double sigma) {
    if (a.length == 0) {
      return 0;
    }
    double s = scale(sigma);
    double first = least(a);
    double start = first - TAIL * s;
    double stop = Math.min(first, b.length == 0 ? first : least(b)) + TAIL * s;
    GaussIntegratorFactory rules = new GaussIntegratorFactory();
    double sum = 0;
    for (double low = start; low < stop; low += s) {
      GaussIntegrator panel = rules.legendre(POINTS, low, low + s);
      sum += panel.integrate(t -> density(t, a, s) * notYet(t, b, s));
    }
    return Math.min(1, sum);
  }

  private static double logistic(double z) {
    return 1 / (1 + Math.exp(-z));
  }

  /** Density of the first arrival of a team, 1/s: its hazards F_i/s summed, times survival. */
  private static double density(double t, double[] team, double s) {
    double hazard = 0;
    for (double m : team) {
      hazard += logistic((t - m) / s) / s;
    }
    return hazard * notYet(t, team, s);
  }

  /** Probability that nobody of a team is there yet. */
  private static double notYet(double t, double[] team, double s) {
    double none = 1;
    for (double m : team) {
      none *= logistic((m - t) / s);
    }
    return none;
  }

  private static double least(double[] values) {
    double least = Double.POSITIVE_INFINITY;
    for (double v : values) {
      least = Math.min(least, v);
    }
    return least;
  }
}
