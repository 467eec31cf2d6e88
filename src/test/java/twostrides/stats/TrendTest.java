package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import twostrides.stats.Trend.Direction;

/** Trends of shares against published tests, and where a slope is out of reach. */
class TrendTest {

  /** Malformations by maternal alcohol: Graubard and Korn 1987, Biometrics 43:471. */
  private static final List<Count> ALCOHOL =
      List.of(c(48, 17114), c(38, 14502), c(5, 793), c(1, 127), c(1, 38));

  /** Smokers by social class: Chang et al. 1983, from Gerstman's EpiInfo course. */
  private static final List<Count> SMOKERS =
      List.of(c(17, 57), c(76, 271), c(34, 122), c(32, 85), c(20, 50));

  private static Count c(int successes, int trials) {
    return new Count(successes, trials);
  }

  /**
   * Validation: Agresti, Categorical Data Analysis, 2nd ed., on these data with places 0, .5, 1.5,
   * 4, 7: slope .3166, error .1254 and score statistic 6.57 (from memory).
   */
  @Test
  void slopeIsThePublishedOne() {
    double[] places = {0, .5, 1.5, 4, 7};
    LogisticFit fit = LogisticFit.of(ALCOHOL, places).orElseThrow();
    assertEquals(-5.9605, fit.intercept(), 5e-5);
    assertEquals(.3166, fit.slope(), 5e-5);
    assertEquals(.1254, fit.slopeError(), 5e-5);
    assertEquals(6.57, Math.pow(LogisticFit.scoreZ(ALCOHOL, places).orElseThrow(), 2), 0.005);
    assertEquals(Direction.RISING, Trend.of(ALCOHOL, places).direction());
  }

  /**
   * Validation: example 6 of the StatXact pages (Cytel), asymptotic p of the trend test: one-sided
   * .0882 for equal steps (its two-sided .1765 is not twice that; ours is .1764), two-sided .0078
   * for places 0, .5, 1.5, 4, 8. EpiInfo's chi-square for the smokers is 3.535, with (n - 1) / n of
   * Mantel's extension.
   */
  @Test
  void scoreTestIsThePublishedOne() {
    double equal = LogisticFit.scoreZ(ALCOHOL, new double[] {1, 2, 3, 4, 5}).orElseThrow();
    assertEquals(.0882, LogisticFit.twoSided(equal) / 2, 5e-5);
    double drinks = LogisticFit.scoreZ(ALCOHOL, new double[] {0, .5, 1.5, 4, 8}).orElseThrow();
    assertEquals(.0078, LogisticFit.twoSided(drinks), 5e-5);
    double smokers = LogisticFit.scoreZ(SMOKERS, new double[] {1, 2, 3, 4, 5}).orElseThrow();
    assertEquals(3.535, smokers * smokers * 584 / 585, 5e-4);
    assertEquals(Direction.FLAT_OR_UNCLEAR, Trend.of(SMOKERS).direction());
    assertEquals(.060, Trend.of(SMOKERS).p().orElseThrow(), .003);
  }

  /** Odds that double at each step give 2, turned about 1/2. */
  @Test
  void doubledOddsAreFound() {
    List<Count> counts = List.of(c(100, 300), c(150, 300), c(200, 300), c(240, 300));
    Trend up = Trend.of(counts);
    assertEquals(2, up.slope().orElseThrow().oddsRatio(), 1e-9);
    assertTrue(up.slope().orElseThrow().interval().contains(2));
    assertEquals(Direction.RISING, up.direction());
    List<Count> reversed = new ArrayList<>(counts);
    Collections.reverse(reversed);
    Trend down = Trend.of(reversed);
    assertEquals(.5, down.slope().orElseThrow().oddsRatio(), 1e-9);
    assertEquals(Direction.FALLING, down.direction());
    assertEquals(up.p().orElseThrow(), down.p().orElseThrow(), 1e-12);
  }

  @Test
  void aStepWithoutTrialsKeepsItsPlace() {
    List<Count> counts = List.of(c(100, 300), c(0, 0), c(200, 300), c(240, 300));
    assertEquals(2, Trend.of(counts).slope().orElseThrow().oddsRatio(), 1e-9);
  }

  /** Failures first and successes last: no odds ratio, but a direction. */
  @Test
  void anEndlessSlopeStillHasADirection() {
    Trend up = Trend.of(List.of(c(0, 8), c(0, 8), c(4, 8), c(8, 8)));
    assertEquals(Optional.empty(), up.slope());
    assertEquals(Direction.RISING, up.direction());
    assertTrue(up.p().orElseThrow() < 1e-4);
    assertEquals(
        Direction.FALLING, Trend.of(List.of(c(8, 8), c(8, 8), c(0, 8), c(0, 8))).direction());
  }

  @Test
  void allAlikeIsFlat() {
    Trend flat = new Trend(Direction.FLAT_OR_UNCLEAR, Optional.empty(), OptionalDouble.empty());
    assertEquals(flat, Trend.of(List.of(c(0, 5), c(0, 5), c(0, 5))));
    assertEquals(flat, Trend.of(List.of(c(5, 5), c(5, 5), c(5, 5))));
    Trend even = Trend.of(List.of(c(2, 5), c(2, 5), c(2, 5)));
    assertEquals(1, even.slope().orElseThrow().oddsRatio(), 1e-9);
    assertEquals(1, even.p().orElseThrow(), 1e-9);
  }

  @Test
  void tooFewAreTooFew() {
    Trend few = new Trend(Direction.TOO_FEW, Optional.empty(), OptionalDouble.empty());
    assertEquals(few, Trend.of(List.of()));
    assertEquals(few, Trend.of(List.of(c(1, 50), c(30, 50), c(0, 0))));
    assertEquals(few, Trend.of(List.of(c(0, 3), c(1, 3), c(3, 3))));
  }

  /** Without a trend, one is called about one time in twenty. */
  @Test
  void noTrendIsSeldomCalledOne() {
    SplittableRandom random = new SplittableRandom(21);
    int called = 0;
    for (int run = 0; run < 2000; run++) {
      List<Count> counts = new ArrayList<>();
      for (int step = 0; step < 8; step++) {
        int k = 0;
        for (int i = 0; i < 25; i++) {
          k += random.nextDouble() < .35 ? 1 : 0;
        }
        counts.add(c(k, 25));
      }
      called += Trend.of(counts).direction() == Direction.FLAT_OR_UNCLEAR ? 0 : 1;
    }
    assertEquals(100, called, 39); // four standard errors of a binomial count
  }
}
