package twostrides.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares and intervals against published values, and at their edges. */
class CountTest {

  /**
   * Validation. The first four: Newcombe, "Two-sided confidence intervals for the single
   * proportion", Statistics in Medicine 17 (1998), table I, method 3, four decimals. The last two:
   * the same formula in closed form, where one end is z²/(n + z²) away from its bound.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718",
    "0, 10, 0.0000, 0.2775",
    "10, 10, 0.7225, 1.0000"
  })
  void intervalsAreThePublishedOnes(int successes, int trials, double low, double high) {
    Interval i = new Count(successes, trials).wilson().orElseThrow();
    assertEquals(low, i.low(), 5e-5);
    assertEquals(high, i.high(), 5e-5);
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
