package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Differences of shares against published intervals, and at their edges. */
class DifferenceTest {

  /**
   * Validation. Newcombe, "Interval estimation for the difference between independent proportions",
   * Statistics in Medicine 17 (1998) 873, table II, method 10, four decimals (the first three as
   * public test files of statistics packages repeat them; the last from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "56, 70, 48, 80, 0.0524, 0.3339",
    "9, 10, 3, 10, 0.1705, 0.8090",
    "6, 7, 2, 7, 0.0582, 0.8062",
    "5, 56, 0, 29, -0.0381, 0.1926"
  })
  void intervalsAreThePublishedOnes(int k1, int n1, int k2, int n2, double low, double high) {
    Difference difference = new Difference(new Count(k1, n1), new Count(k2, n2));
    Range range = difference.interval().orElseThrow();
    assertEquals(low, range.low(), 5e-5);
    assertEquals(high, range.high(), 5e-5);
    assertEquals((double) k1 / n1 - (double) k2 / n2, difference.value().orElseThrow(), 1e-15);
  }

  /**
   * The 12 of 40 clusters of {@link ClusteredTest}, worth 39 trials, 0.17954 to 0.45632, less 10 of
   * 40 independent ones, Wilson 0.14187 to 0.40194 by hand.
   */
  @Test
  void clustersWidenTheDifference() {
    List<Count> games = new ArrayList<>(Collections.nCopies(12, new Count(10, 10)));
    games.addAll(Collections.nCopies(28, new Count(0, 10)));
    Difference difference = new Difference(new Clustered(games), new Clustered(new Count(10, 40)));
    Range range = difference.interval().orElseThrow();
    assertEquals(0.05 - Math.hypot(0.3 - 0.17954, 0.40194 - 0.25), range.low(), 2e-5);
    assertEquals(0.05 + Math.hypot(0.45632 - 0.3, 0.25 - 0.14187), range.high(), 2e-5);
  }

  /**
   * Fisher's tea (The Design of Experiments, 1935, chapter 2): of 4 and 4 cups all told right, 1 of
   * 70, and one wrong or none, 17 of 70; the chance of the count itself halved.
   */
  @Test
  void chancesAreFishersWithHalfOfTheCountItself() {
    Difference three = new Difference(new Count(3, 4), new Count(1, 4));
    assertEquals(17.0 / 70 - 8.0 / 70, three.chanceOfMore(), 1e-12);
    assertEquals(1 - (17.0 / 70 - 8.0 / 70), three.chanceOfLess(), 1e-12);
    assertEquals(2 * 9.0 / 70, three.chance(), 1e-12);
    Difference four = new Difference(new Count(4, 4), new Count(0, 4));
    assertEquals(0.5 / 70, four.chanceOfMore(), 1e-12);
  }

  @Test
  void nothingToCompareIsNoDifference() {
    Count none = new Count(0, 0);
    assertEquals(1, new Difference(none, new Count(3, 9)).chance());
    assertEquals(1, new Difference(new Count(3, 9), none).chance());
    assertEquals(1, new Difference(new Count(0, 9), new Count(0, 40)).chance(), 1e-12);
  }

  /** The 12 of 40 clusters of all or nothing: one case each, so the chance is that of 12 of 40. */
  @Test
  void clustersMakeAChanceLarger() {
    List<Count> games = new ArrayList<>(Collections.nCopies(12, new Count(10, 10)));
    games.addAll(Collections.nCopies(28, new Count(0, 10)));
    Clustered few = new Clustered(new Count(10, 100));
    double apart = new Difference(new Count(120, 400), new Count(10, 100)).chanceOfMore();
    double together = new Difference(new Clustered(games), few).chanceOfMore();
    assertTrue(apart < 1e-4 && together > 0.003, apart + ", " + together);
  }

  @Test
  void intervalsHoldTheirDifferenceAndTurnAboutWithIt() {
    for (int n1 = 1; n1 <= 8; n1++) {
      for (int k1 = 0; k1 <= n1; k1++) {
        for (int n2 = 1; n2 <= 8; n2++) {
          for (int k2 = 0; k2 <= n2; k2++) {
            Count a = new Count(k1, n1);
            Count b = new Count(k2, n2);
            Difference there = new Difference(a, b);
            Difference back = new Difference(b, a);
            Range range = there.interval().orElseThrow();
            assertTrue(range.contains(there.value().orElseThrow()), there.toString());
            assertTrue(range.low() >= -1 && range.high() <= 1);
            assertEquals(-range.high(), back.interval().orElseThrow().low(), 1e-12);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 3, 5", "3, 5, 0, 0", "0, 0, 0, 0"})
  void withoutTrialsThereIsNoDifference(int k1, int n1, int k2, int n2) {
    Difference difference = new Difference(new Count(k1, n1), new Count(k2, n2));
    assertEquals(OptionalDouble.empty(), difference.value());
    assertEquals(Optional.empty(), difference.interval());
  }

  /** The first three as in the published intervals above; then the edges. */
  @ParameterizedTest
  @CsvSource({
    "56, 70, 48, 80, FIRST_MORE",
    "48, 80, 56, 70, SECOND_MORE",
    "5, 56, 0, 29, CHANCE",
    "9, 10, 3, 9, TOO_FEW",
    "9, 9, 0, 10, TOO_FEW",
    "10, 10, 0, 10, FIRST_MORE",
    "0, 10, 0, 10, CHANCE",
    "0, 0, 0, 0, TOO_FEW"
  })
  void theVerdictFollowsTheInterval(int k1, int n1, int k2, int n2, Difference.Verdict verdict) {
    assertEquals(verdict, new Difference(new Count(k1, n1), new Count(k2, n2)).verdict());
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.4", "NaN, 0.5", "0, Infinity"})
  void impossibleRangesAreRejected(double low, double high) {
    assertThrows(IllegalArgumentException.class, () -> new Range(low, high));
  }
}
