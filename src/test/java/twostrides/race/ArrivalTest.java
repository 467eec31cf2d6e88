package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ArrivalTest {

  private static final double SIGMA = 0.45;

  /**
   * Non-regression: by adaptive quadrature of density times survival (scipy.integrate.quad); sigma
   * 0.45 s as in Spearman 2018.
   */
  @Test
  void twoWayRacesHaveTheirClosedForms() {
    double[] lead = {0.10, 0.25, 0.50, 1.0};
    double[] logistic = {0.566816, 0.662459, 0.796219, 0.943876};
    for (int i = 0; i < lead.length; i++) {
      assertEquals(logistic[i], Arrival.logisticRace(lead[i], SIGMA), 0.0000005);
    }
    assertEquals(0.5, Arrival.logisticRace(0, SIGMA));
  }

  /** Non-regression, computed apart: 1/(1 + e^(-pi lead/(sqrt 3 sigma))). */
  @Test
  void oneSkaterIsThereByThen() {
    double[] lead = {-0.5, -0.25, 0, 0.25, 0.5, 1.0};
    double[] there = {0.1176, 0.2674, 0.5, 0.7326, 0.8824, 0.9825};
    for (int i = 0; i < lead.length; i++) {
      assertEquals(there[i], Arrival.thereBy(2 + lead[i], 2, SIGMA), 0.00005);
    }
  }

  @Test
  void seriesAndClosedFormMeet() {
    double s = Arrival.scale(SIGMA);
    double below = Arrival.logisticRace(Math.nextDown(0.3) * s, SIGMA);
    double above = Arrival.logisticRace(0.3000001 * s, SIGMA);
    // Slope of the curve is nearly 1/6 a scale.
    assertEquals(below + 1e-7 / 6, above, 1e-9);
    double before = 0;
    for (double d = -60; d <= 60; d += 0.001) {
      double p = Arrival.logisticRace(d * s, SIGMA);
      assertTrue(p >= before - 1e-15 && p <= 1, "falls at " + d);
      assertEquals(1, p + Arrival.logisticRace(-d * s, SIGMA), 1e-12);
      before = p;
    }
    assertEquals(1, Arrival.logisticRace(1000, SIGMA));
    assertEquals(0, Arrival.logisticRace(-1000, SIGMA));
  }

  @Test
  void oneAgainstOneIsTheClosedForm() {
    for (double lead = -4; lead <= 4; lead += 0.05) {
      double p = Arrival.teamFirst(new double[] {3}, new double[] {3 + lead}, SIGMA);
      assertEquals(Arrival.logisticRace(lead, SIGMA), p, 1e-11);
    }
  }

  @Test
  void somebodyIsFirst() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 200; i++) {
      double[] a = arrivals(random);
      double[] b = arrivals(random);
      double sigma = random.nextDouble(0.1, 0.6);
      double p = Arrival.teamFirst(a, b, sigma);
      assertEquals(1, p + Arrival.teamFirst(b, a, sigma), 1e-10);
    }
    assertEquals(1, Arrival.teamFirst(new double[] {2, 3}, new double[0], SIGMA), 1e-11);
    assertEquals(0, Arrival.teamFirst(new double[0], new double[] {2}, SIGMA));
  }

  /** Equal skaters share the race by head count. */
  @Test
  void levelRacesGoByNumbers() {
    double p = Arrival.teamFirst(new double[] {2, 2}, new double[] {2, 2, 2}, SIGMA);
    assertEquals(0.4, p, 1e-11);
  }

  @Test
  void anotherSkaterNeverHurtsHisTeam() {
    SplittableRandom random = new SplittableRandom(29);
    for (int i = 0; i < 200; i++) {
      double[] a = arrivals(random);
      double[] b = arrivals(random);
      double p = Arrival.teamFirst(a, b, SIGMA);
      double[] more = Arrays.copyOf(a, a.length + 1);
      more[a.length] = random.nextDouble(0.5, 6);
      double q = Arrival.teamFirst(more, b, SIGMA);
      assertTrue(q >= p - 1e-12, q + " below " + p);
      more[a.length] -= 0.3;
      assertTrue(Arrival.teamFirst(more, b, SIGMA) >= q - 1e-12);
      assertTrue(Arrival.teamFirst(b, more, SIGMA) <= Arrival.teamFirst(b, a, SIGMA) + 1e-12);
    }
  }

  /** Seeded simulation against the closed form and the quadrature, within 3 standard errors. */
  @Test
  void simulationAgreesWithTheReference() {
    int n = 40_000;
    SeededRandom random = new SeededRandom(2024, "race");
    for (double lead : new double[] {-0.5, 0, 0.25, 1}) {
      double share = simulate(random, n, new double[] {2}, new double[] {2 + lead});
      within(Arrival.logisticRace(lead, SIGMA), share, n);
    }
    double[] a = {2.1, 2.4, 3.5};
    double[] b = {2.0, 2.6, 2.9, 4};
    within(Arrival.teamFirst(a, b, SIGMA), simulate(random, n, a, b), n);
  }

  /** The standard deviation of the errors is the sigma asked for. */
  @Test
  void sigmaIsTheStandardDeviation() {
    int n = 100_000;
    SeededRandom random = new SeededRandom(1, "sigma");
    SkaterSettings legs = SkaterLevel.ELITE_MEN.settings().withSigma(SIGMA);
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double error = legs.errorScale() * random.simulation(i).logistic(0);
      squares += error * error;
    }
    // Kurtosis of the logistic is 4.2: the variance of n draws has a relative error sqrt(3.2/n).
    assertEquals(1, squares / n / (SIGMA * SIGMA), 3 * Math.sqrt(3.2 / n));
  }

  private static double simulate(SeededRandom random, int n, double[] a, double[] b) {
    double s = Arrival.scale(SIGMA);
    int first = 0;
    for (int i = 0; i < n; i++) {
      double bestA = Double.POSITIVE_INFINITY;
      double bestB = Double.POSITIVE_INFINITY;
      for (int k = 0; k < a.length; k++) {
        bestA = Math.min(bestA, a[k] + s * random.simulation(i).logistic(k));
      }
      for (int k = 0; k < b.length; k++) {
        bestB = Math.min(bestB, b[k] + s * random.simulation(i).logistic(10 + k));
      }
      first += bestA < bestB ? 1 : 0;
    }
    return first / (double) n;
  }

  private static void within(double expected, double share, int n) {
    assertEquals(expected, share, 3 * Math.sqrt(expected * (1 - expected) / n));
  }

  private static double[] arrivals(SplittableRandom random) {
    double[] values = new double[random.nextInt(1, 6)];
    for (int i = 0; i < values.length; i++) {
      values[i] = random.nextDouble(0.5, 6);
    }
    return values;
  }
}
