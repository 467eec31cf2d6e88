package twostrides.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many more trials it takes, held against the intervals themselves. */
class HowManyMoreTest {

  /**
   * By hand: 6 of 10 against 0.5 needs n above 1.96² × 0.25 / 0.1² = 96.04. At p = 0.5 the
   * half-width is z / (2 sqrt(n + z²)), below 0.1 from n = 93 on (z² / 0.04 - z² = 92.2).
   */
  @Test
  void handWorkedCases() {
    assertEquals(new HowManyMore.Trials(87), HowManyMore.untilItExcludes(new Count(6, 10), 0.5));
    assertEquals(
        new HowManyMore.Trials(83), HowManyMore.untilHalfWidthBelow(new Count(5, 10), 0.1));
    assertEquals("87", HowManyMore.untilItExcludes(new Count(6, 10), 0.5).word());
  }

  /**
   * The Wilson interval itself, at the multiples of the count on either side of the answer: it
   * holds the reference at the last one before and leaves it out from the first one on.
   */
  @ParameterizedTest
  @CsvSource({"3, 5, 0.5", "1, 4, 0.3", "2, 3, 0.6", "0, 7, 0.04", "9, 9, 0.98", "2, 5, 0.385"})
  void intervalsAgree(int k, int n, double reference) {
    HowManyMore answer = HowManyMore.untilItExcludes(new Count(k, n), reference);
    int total = n + ((HowManyMore.Trials) answer).trials();
    int before = (total - 1) / n;
    assertTrue(before > 0 && holds(new Count(k * before, n * before), reference));
    assertFalse(holds(new Count(k * (before + 1), n * (before + 1)), reference));
  }

  private static boolean holds(Count count, double reference) {
    Interval i = count.wilson().orElseThrow();
    return i.low() <= reference && reference <= i.high();
  }

  @Test
  void whatCanBeSaidNowNeedsNoneMore() {
    assertEquals(new HowManyMore.Trials(0), HowManyMore.untilItExcludes(new Count(80, 100), 0.5));
    assertEquals(
        new HowManyMore.Trials(0), HowManyMore.untilHalfWidthBelow(new Count(0, 200), 0.1));
  }

  @Test
  void aShareThatIsTheReferenceIsNeverToldFromIt() {
    HowManyMore never = HowManyMore.untilItExcludes(new Count(5, 10), 0.5);
    assertEquals(new HowManyMore.MoreThanLimit(), never);
    assertEquals("more than 1000000", never.word());
    assertEquals(new HowManyMore.MoreThanLimit(), HowManyMore.untilItExcludes(new Count(0, 10), 0));
    assertEquals(
        new HowManyMore.MoreThanLimit(), HowManyMore.untilHalfWidthBelow(new Count(5, 10), 1e-5));
  }

  @Test
  void withoutTrialsThereIsNoAnswer() {
    Count none = new Count(0, 0);
    assertEquals(new HowManyMore.NoShareYet(), HowManyMore.untilItExcludes(none, 0.5));
    assertEquals(new HowManyMore.NoShareYet(), HowManyMore.untilHalfWidthBelow(none, 0.1));
  }

  @Test
  void impossibleQuestionsAreRejected() {
    Count count = new Count(1, 2);
    assertThrows(
        IllegalArgumentException.class, () -> HowManyMore.untilItExcludes(count, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> HowManyMore.untilHalfWidthBelow(count, 0));
  }
}
