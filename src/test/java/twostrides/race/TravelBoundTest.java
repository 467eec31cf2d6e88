package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TravelBoundTest {

  /**
   * Validation: 20 m/s with friction 0.5 and g 9.807 stops after 4.08 s and 40.79 m (published
   * worked problem).
   */
  @Test
  void theLatestTimeIsThatOfAPuckThatStopsThere() {
    assertEquals(4.08, new TravelBound(45, 0.5).latest(40.79), 0.005);
  }

  @Test
  void theEarliestTimeIsThatOfTheHardestShot() {
    assertEquals(1.0, TravelBound.DEFAULT.earliest(45), 1e-12);
  }

  @Test
  void aClockInWholeSecondsIsAllowedOneStep() {
    TravelBound b = TravelBound.DEFAULT;
    assertTrue(b.fits(41, 0, 1), "0 s written may be almost 1 s");
    assertFalse(b.fits(41, 0, 0.1));
    double latest = b.latest(40);
    assertTrue(b.fits(40, latest + 0.9, 1));
    assertFalse(b.fits(40, latest + 1.1, 1));
  }

  @Test
  void valuesOutsidePhysicsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new TravelBound(0, 0.1));
    assertThrows(IllegalArgumentException.class, () -> new TravelBound(45, 1.5));
  }
}
