package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Losses a second: the gamma posterior and what it says of keeping the puck. */
class LossRateTest {

  @Test
  void drawsTheRateTowardThePrior() {
    LossRate none = new LossRate(0, 0, 2, 20);
    assertEquals(0.1, none.perSecond(), 1e-12);
    LossRate some = new LossRate(8, 80, 2, 20);
    assertEquals(0.1, some.perSecond(), 1e-12);
  }

  /** Gamma(10, 100): quantiles from the chi-square table, 20 degrees: 9.591 and 34.170. */
  @Test
  void theIntervalIsThatOfTheChiSquareTable() {
    LossRate rate = new LossRate(8, 80, 2, 20);
    assertEquals(9.591 / 200, rate.interval().low(), 5e-6);
    assertEquals(34.170 / 200, rate.interval().high(), 5e-6);
  }

  @Test
  void keepingFallsWithTimeAndComesToTheExponentialWithMuchData() {
    LossRate much = new LossRate(50_000, 100_000, 2, 20);
    assertEquals(Math.exp(-0.5 * 2), much.keeps(2), 1e-4);
    assertEquals(1, much.keeps(0));
    double before = 1;
    for (int t = 1; t < 50; t++) {
      double now = new LossRate(3, 10, 2, 20).keeps(t / 5.0);
      assertTrue(now < before && now > 0);
      before = now;
    }
  }

  @Test
  void refusesWhatCannotBeCounted() {
    assertThrows(IllegalArgumentException.class, () -> new LossRate(-1, 1, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new LossRate(1, 1, 0, 1));
  }
}
