package twostrides.rink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RinkTest {

  private static final double FOOT = 0.3048;

  /**
   * Validation: NHL Rule 1 as the reference notes give it (secondary): 64 ft from goal line to blue
   * line.
   */
  @Test
  void northAmericanLinesLieWhereTheRuleSays() {
    Rink r = Rink.NORTH_AMERICAN;
    assertEquals(64 * FOOT, r.goalLine() - r.blueLineNeutralEdge(), 1e-9);
    assertEquals(50 * FOOT, 2 * r.blueLineNeutralEdge(), 1e-9);
    assertEquals(20 * FOOT, r.goalLine() - r.endSpotX(), 1e-9);
    assertEquals(11 * FOOT, r.length() / 2 - r.goalLine(), 1e-9);
    assertEquals(5 * FOOT, r.blueLineNeutralEdge() - r.neutralSpotX(), 1e-9);
  }

  /**
   * Validation: IIHF 2025/26 Rule 1 as the reference notes give it (secondary): 18.5 m, 15.0 m, 6.0
   * m.
   */
  @Test
  void internationalLinesLieWhereTheRuleSays() {
    Rink r = Rink.INTERNATIONAL;
    assertEquals(18.5, r.goalLine() - r.blueLineNeutralEdge(), 1e-9);
    assertEquals(15.0, 2 * r.blueLineNeutralEdge(), 1e-9);
    assertEquals(6.0, r.goalLine() - r.endSpotX(), 1e-9);
    assertEquals(26.0, r.goalLine(), 1e-9);
  }

  @Test
  void aPuckThatTouchesTheRedLineHasGainedCenter() {
    Rink r = Rink.NORTH_AMERICAN;
    double touching = -0.5 * FOOT - Rink.PUCK_RADIUS;
    assertEquals(0, r.shortOfCenter(touching), 1e-12);
    assertTrue(r.shortOfCenter(touching - 0.01) > 0);
    assertTrue(r.shortOfCenter(0) < 0);
  }

  @Test
  void aPuckOverTheEdgeOfTheBlueLineIsInsideUntilItIsWhollyPast() {
    Rink r = Rink.NORTH_AMERICAN;
    double edge = -25 * FOOT;
    assertTrue(r.inOwnZone(edge));
    assertTrue(r.inOwnZone(edge + Rink.PUCK_RADIUS));
    assertFalse(r.inOwnZone(edge + Rink.PUCK_RADIUS + 0.001));
  }

  @Test
  void linesOutOfOrderAreRefused() {
    Exception e =
        assertThrows(
            IllegalArgumentException.class,
            () -> new Rink("bad", 60, 30, 8, 26, 21, 0.3, 0.15, 0.05, 20, 7, 6, 4.5, 1.83));
    assertTrue(e.getMessage().contains("rink bad"));
  }

  @Test
  void theOpponentSeesThePlaceAcrossCenter() {
    assertEquals(new Place(3, -4), new Place(-3, 4).seenByOpponent());
    assertEquals(5, new Place(0, 0).distanceTo(new Place(3, 4)), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new Place(Double.NaN, 0));
  }
}
