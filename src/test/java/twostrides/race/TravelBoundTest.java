package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twostrides.race.TravelBound.Fit.FITS;
import static twostrides.race.TravelBound.Fit.TOO_QUICK;
import static twostrides.race.TravelBound.Fit.TOO_SLOW;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TravelBoundTest {

  private static final TravelBound BOUND = TravelBound.DEFAULT;

  /** Without a clock's step the bounds are the speeds of one puck in 20 and one in 1,000. */
  @Test
  void aFineClockIsHeldToTheSpeedsThemselves() {
    double quick = 10.2 * Math.exp(0.23 * 1.644854);
    double slow = 10.2 * Math.exp(-0.23 * 3.090232);
    assertEquals(14.9, quick, 0.05);
    assertEquals(5.0, slow, 0.05);
    double step = 1e-6;
    assertEquals(TOO_QUICK, BOUND.fit(40, 40 / quick - 0.001, step));
    assertEquals(FITS, BOUND.fit(40, 40 / quick + 0.001, step));
    assertEquals(FITS, BOUND.fit(40, 40 / slow - 0.001, step));
    assertEquals(TOO_SLOW, BOUND.fit(40, 40 / slow + 0.001, step));
  }

  /** On a clock of whole seconds: what share of iced pucks is read so quick, by drawing them. */
  @Test
  void aClockInWholeSecondsIsAllowedFor() {
    for (double distance : new double[] {27, 30, 34, 38, 42, 48, 56}) {
      for (int gap = 0; gap <= 12; gap++) {
        double[] shares = readNoMoreAndNoLess(distance, gap);
        if (Math.abs(shares[0] - 0.05) > 0.003 && Math.abs(shares[1] - 0.001) > 0.0004) {
          TravelBound.Fit expected =
              shares[0] < 0.05 ? TOO_QUICK : shares[1] < 0.001 ? TOO_SLOW : FITS;
          assertEquals(expected, BOUND.fit(distance, gap, 1), distance + " m in " + gap + " s");
        }
      }
    }
  }

  /** Pucks that start at any instant of a second, their clocks rounded down. */
  private static double[] readNoMoreAndNoLess(double distance, int gap) {
    Random random = new Random(20311004);
    int n = 100_000;
    int[] count = new int[2];
    for (int i = 0; i < n; i++) {
      double start = random.nextDouble();
      double time = distance / (10.2 * Math.exp(0.23 * random.nextGaussian()));
      long read = (long) Math.floor(start + time);
      count[0] += read <= gap ? 1 : 0;
      count[1] += read >= gap ? 1 : 0;
    }
    return new double[] {(double) count[0] / n, (double) count[1] / n};
  }

  /** No puck from behind center is iced within a second; from inside the zone two are too few. */
  @Test
  void tooQuickIsNoIcing() {
    assertEquals(TOO_QUICK, BOUND.fit(26.5, 1, 1));
    assertEquals(TOO_QUICK, BOUND.fit(42, 2, 1));
    assertEquals(FITS, BOUND.fit(30, 2, 1));
    assertEquals(FITS, BOUND.fit(42, 3, 1));
  }

  @Test
  void noPuckIsFasterThanTheHardestSent() {
    assertTrue(BOUND.possible(46, 2, 1));
    assertFalse(BOUND.possible(33, 0, 1));
  }

  @Test
  void valuesOutsidePhysicsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new TravelBound(0, 0.2, 28));
    assertThrows(IllegalArgumentException.class, () -> new TravelBound(10, 0, 28));
    assertThrows(IllegalArgumentException.class, () -> new TravelBound(10, 0.2, 9));
  }
}
