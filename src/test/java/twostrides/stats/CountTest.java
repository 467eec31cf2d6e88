package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares and intervals against published values, and at their edges. */
class CountTest {

  /**
   * Validation. The first four: Newcombe, "Two-sided confidence intervals for the single
   * proportion", Statistics in Medicine 17 (1998), table I, method 3, four decimals. The next two:
   * the same formula in closed form, where one end is z²/(n + z²) away from its bound. 7 of 50 as
   * scipy 1.17, binomtest(7, 50).proportion_ci(method="wilson"), gives it.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718",
    "0, 10, 0.0000, 0.2775",
    "10, 10, 0.7225, 1.0000",
    "5, 10, 0.2366, 0.7634",
    "7, 50, 0.0695, 0.2619"
  })
  void intervalsAreThePublishedOnes(int successes, int trials, double low, double high) {
    Interval i = new Count(successes, trials).wilson().orElseThrow();
    assertEquals(low, i.low(), 5e-5);
    assertEquals(high, i.high(), 5e-5);
  }

  /**
   * Validation of the neighbour that textbooks print beside it, so that nobody takes one for the
   * other: Newcombe 1998, table I, method 4, with continuity correction. 7 of 50: scipy 1.17,
   * method="wilsoncc".
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2535, 0.3682",
    "15, 148, 0.0598, 0.1644",
    "1, 29, 0.0018, 0.1963",
    "7, 50, 0.0628, 0.2736"
  })
  void intervalsLieInsideThoseWithContinuityCorrection(int k, int n, double low, double high) {
    double z = Count.Z95;
    double p = (double) k / n;
    double q = 1 - p;
    double a = z * Math.sqrt(z * z - 2 - 1.0 / n + 4 * p * (n * q + 1));
    double b = z * Math.sqrt(z * z + 2 - 1.0 / n + 4 * p * (n * q - 1));
    double correctedLow = (2 * n * p + z * z - 1 - a) / (2 * (n + z * z));
    double correctedHigh = (2 * n * p + z * z + 1 + b) / (2 * (n + z * z));
    assertEquals(low, correctedLow, 5e-5);
    assertEquals(high, correctedHigh, 5e-5);
    Interval i = new Count(k, n).wilson().orElseThrow();
    assertTrue(correctedLow < i.low() && i.high() < correctedHigh);
  }

  /**
   * Drawn counts hold the true share about as often as they should: within four standard errors of
   * the chance that summing the binomial distribution gives, and that chance lies near 0.95.
   */
  @ParameterizedTest
  @CsvSource({"0.1, 30", "0.3, 30", "0.5, 20", "0.62, 80", "0.9, 100"})
  void intervalsHoldTheTrueShareNineteenTimesInTwenty(double p, int n) {
    double exact = 0;
    double chance = Math.pow(1 - p, n);
    for (int k = 0; k <= n; k++) {
      Interval i = new Count(k, n).wilson().orElseThrow();
      exact += i.low() <= p && p <= i.high() ? chance : 0;
      chance *= (double) (n - k) / (k + 1) * p / (1 - p);
    }
    assertEquals(0.95, exact, 0.03);

    SplittableRandom random = new SplittableRandom(17);
    int draws = 4000;
    int held = 0;
    for (int draw = 0; draw < draws; draw++) {
      int k = 0;
      for (int trial = 0; trial < n; trial++) {
        k += random.nextDouble() < p ? 1 : 0;
      }
      Interval i = new Count(k, n).wilson().orElseThrow();
      held += i.low() <= p && p <= i.high() ? 1 : 0;
    }
    assertEquals(exact, (double) held / draws, 4 * Math.sqrt(exact * (1 - exact) / draws));
  }

  @Test
  void withoutTrialsThereIsNeitherShareNorInterval() {
    Count none = new Count(0, 0);
    assertEquals(OptionalDouble.empty(), none.share());
    assertEquals(Optional.empty(), none.wilson());
    assertTrue(none.tooFew());
  }

  @Test
  void everyIntervalHoldsItsShareAndIsTheMirrorOfTheOtherSide() {
    for (int n = 1; n <= 60; n++) {
      for (int k = 0; k <= n; k++) {
        Interval i = new Count(k, n).wilson().orElseThrow();
        double share = (double) k / n;
        assertTrue(i.low() <= share && share <= i.high(), k + " of " + n + ": " + i);
        Interval mirror = new Count(n - k, n).wilson().orElseThrow();
        assertEquals(1 - i.high(), mirror.low(), 1e-12);
      }
    }
  }

  @Test
  void tenTrialsAreEnough() {
    assertTrue(new Count(9, 9).tooFew());
    assertFalse(new Count(0, 10).tooFew());
  }

  @Test
  void countsAddUpAsWholeNumbers() {
    assertEquals(new Count(10, 41), new Count(7, 31).plus(new Count(3, 10)));
  }

  @ParameterizedTest
  @CsvSource({"-1, 5", "6, 5", "0, -1"})
  void impossibleCountsAreRejected(int successes, int trials) {
    assertThrows(IllegalArgumentException.class, () -> new Count(successes, trials));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.4", "-0.1, 0.5", "0.5, 1.1", "NaN, 0.5"})
  void impossibleIntervalsAreRejected(double low, double high) {
    assertThrows(IllegalArgumentException.class, () -> new Interval(low, high));
  }
}
