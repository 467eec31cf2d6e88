package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twostrides.demo.Chance.Telling;
import twostrides.demo.Skater.Habits;
import twostrides.demo.Skater.Legs;
import twostrides.demo.Skater.Role;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/** Skaters as bodies, worked by hand: who gets where, and who gets to the carrier. */
class IceTest {
  private static final Rink RINK = Rink.NORTH_AMERICAN;
  private static final Place BLUE_LINE = new Place(-7.5, 0);

  private static Skater skater(int number, Role role, double top) {
    return new Skater(number, "No " + number, role, Habits.USUAL, new Legs(top, 4.6, 0.3));
  }

  private static final Skater CARRIER = skater(4, Role.DEFENDER, 8.2);

  /** A home player with the puck at his blue line, and opponents where they are put. */
  private static Ice around(double speed, Body... checkers) {
    Ice ice = new Ice(RINK, new Dice(1, 1));
    Body carrier = new Body(CARRIER, Side.HOME, BLUE_LINE.x(), BLUE_LINE.y());
    carrier.vx = speed;
    ice.bodies(Side.HOME).add(carrier);
    ice.bodies(Side.AWAY).addAll(List.of(checkers));
    ice.held(Side.HOME, CARRIER, BLUE_LINE);
    for (Body b : checkers) {
      b.late = 0;
    }
    return ice;
  }

  private static Body checker(int number, double x, double y, double vx) {
    Body b = new Body(skater(number, Role.FORWARD, 8.2), Side.AWAY, x, y);
    b.vx = vx;
    return b;
  }

  private static double chance(Ice ice) {
    return new Futures(RINK, new Dice(2, 2)).chance(ice);
  }

  @Test
  void aSkaterFromRestTakesAsLongAsHisPushAndTopSpeedSay() {
    Body b = new Body(skater(9, Role.FORWARD, 8), Side.HOME, 0, 0);
    b.goThrough(100, 0, 8);
    double seconds = 0;
    while (b.x < 20) {
      b.step(0.01);
      seconds += 0.01;
    }
    // v = 4.6 t up to 8 m/s: 8 / 4.6 = 1.739 s and 6.96 m; the other 13.04 m at 8 m/s.
    assertEquals(1.739 + 13.04 / 8, seconds, 0.03);
    assertEquals(8, b.vx, 1e-9);
  }

  @Test
  void aSkaterStopsWhereHeMeansTo() {
    Body b = new Body(skater(9, Role.FORWARD, 8), Side.HOME, 0, 0);
    b.goTo(10, -4, 8);
    for (int i = 0; i < 60; i++) {
      b.step(Ice.STEP);
    }
    assertTrue(b.distanceTo(10, -4) < 0.6, b.x + ", " + b.y);
    assertEquals(0, Math.hypot(b.vx, b.vy), 0.2);
  }

  @Test
  void nobodyNearAndHeGainsCenterWithACheckerOnHimHeDoesNot() {
    assertEquals(1, chance(around(4)));
    assertEquals(1, chance(around(4, checker(7, 24, 0, 0), checker(8, 22, 9, 0))));
    double held = chance(around(0, checker(7, BLUE_LINE.x() + 0.9, 0, 0)));
    assertTrue(held < 0.1, "a checker on him leaves " + held);
  }

  /** Between the two the chance falls as the checker comes nearer, and with speed toward him. */
  @Test
  void nearerAndFasterCheckersLeaveLess() {
    double before = 1.1;
    for (double metres : new double[] {14, 6, 4.5, 3, 1.6}) {
      double p = chance(around(2, checker(7, BLUE_LINE.x() + metres, 0.5, 0)));
      assertTrue(p <= before + 0.15, metres + " m: " + p + " after " + before);
      before = p;
    }
    assertTrue(before < 0.5, "a checker 1.6 m off leaves " + before);
    double coming = chance(around(2, checker(7, -2.5, 1, -6)));
    double going = chance(around(2, checker(7, -2.5, 1, 6)));
    assertTrue(coming < going - 0.2, "coming " + coming + ", going " + going);
  }

  @Test
  void whoIsPassedAtSpeedIsLeftBehind() {
    // Two metres behind, standing, while the carrier is at 7 m/s: 8.2 m/s does not make it up.
    assertEquals(1, chance(around(7, checker(7, BLUE_LINE.x() - 2, 0, 0))));
  }

  @Test
  void aCheckerWhoHasNotAnsweredYetTakesNothing() {
    Ice ice = around(0, checker(7, BLUE_LINE.x() + 0.5, 0, 0));
    Body checker = ice.bodies(Side.AWAY).get(0);
    assertTrue(Contact.reached(ice, ice.holder().orElseThrow()).isPresent());
    checker.late = 0.5;
    assertTrue(Contact.reached(ice, ice.holder().orElseThrow()).isEmpty());
  }

  @Test
  void futuresLeaveTheWorldAsItIs() {
    Ice ice = around(3, checker(7, -3, 2, -2));
    Body carrier = ice.holder().orElseThrow();
    chance(ice);
    assertEquals(BLUE_LINE, Ice.place(carrier));
    assertEquals(-3, ice.bodies(Side.AWAY).get(0).x);
  }

  /** The truth is worked out with chance of its own: more of it never changes a game. */
  @Test
  void futuresChangeNoGame() {
    String bare = DemoLeague.simulate(2, 8, Telling.NO_FUTURES).games().get(1).sheetCsv();
    assertEquals(bare, DemoLeague.simulate(2, 8, Telling.RELEASED).games().get(1).sheetCsv());
    assertEquals(bare, DemoLeague.simulate(2, 8, Telling.KEPT_TOO).games().get(1).sheetCsv());
  }

  @Test
  void theBoardsHold() {
    Ice ice = around(0, checker(7, 29, 12, 0));
    Body b = ice.bodies(Side.AWAY).get(0);
    b.late = 5;
    b.goThrough(60, 40, 8);
    for (int i = 0; i < 40; i++) {
      ice.step(Ice.STEP);
    }
    double corner = RINK.cornerRadius();
    double dx = b.x - (RINK.length() / 2 - corner);
    double dy = b.y - (RINK.width() / 2 - corner);
    assertTrue(Math.hypot(dx, dy) < corner, b.x + ", " + b.y);
  }
}
