package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import twostrides.rink.Rink;

/** Seeded scenes: what must hold of a race to the red line whatever the numbers are. */
class MeasuredGainTest {

  private static final Rink RINK = Rink.NORTH_AMERICAN;
  private static final SkaterSettings LEGS = SkaterLevel.ELITE_WOMEN.settings();

  /** The puck an inch short of touching the red line. */
  private static final double INCH_SHORT = -RINK.redLineHalfWidth() - Rink.PUCK_RADIUS - 0.0254;

  private static Sighting carrier(double x, double y, double vx, double vy) {
    return new Sighting(new Racer(true, x, y, vx, vy), true);
  }

  private static Sighting checker(double x, double y, double vx, double vy) {
    return new Sighting(new Racer(false, x, y, vx, vy), true);
  }

  private static GainChance chance(Sighting carrier, List<Sighting> checkers, int draws) {
    return new MeasuredGain(RINK, carrier, checkers, LEGS, 0)
        .run(new SeededRandom(7, "g#1"), draws);
  }

  private static double p(Sighting carrier, Sighting... checkers) {
    return chance(carrier, List.of(checkers), 300).raw();
  }

  @Test
  void nobodyNearIsNearOne() {
    assertEquals(1, p(carrier(-20, 5, 4, 0)));
    assertTrue(p(carrier(-8, 5, 4, 0), checker(-22, -8, 0, 0), checker(25, 0, 0, 0)) > 0.99);
  }

  @Test
  void aStickOnThePuckAtTheHashMarksIsLow() {
    assertTrue(p(carrier(-21, 6.7, 0, 0), checker(-20, 6.7, 0, 0)) < 0.01);
  }

  @Test
  void anInchShortIsNearOne() {
    assertTrue(p(carrier(INCH_SHORT, 0, 5, 0), checker(INCH_SHORT - 1, 0, 5, 0)) > 0.97);
    assertTrue(p(carrier(INCH_SHORT, 0, 0, 0), checker(INCH_SHORT - 3, 0, 0, 0)) > 0.97);
    assertEquals(1, p(carrier(INCH_SHORT + 0.03, 0, 0, 0), checker(INCH_SHORT, 0, 0, 0)));
  }

  /**
   * With a checker inside of him he goes out along the boards, up to half a metre from them: 45
   * degrees out he would be 0.9 m off them, 60 degrees out beyond them.
   */
  @Test
  void aWayMayLeadToHalfAMetreFromTheBoards() {
    double x = -5;
    double y = RINK.width() / 2 - 0.9 - RINK.shortOfCenter(x);
    GainChance near = chance(carrier(x, y, 3, 4), List.of(checker(x + 3.5, y - 1, 2, 0)), 1);
    assertEquals(45, near.degrees());
    GainChance nearer =
        chance(carrier(x, y + 0.6, 3, 4), List.of(checker(x + 3.5, y - 0.4, 2, 0)), 1);
    assertEquals(30, nearer.degrees());
    assertTrue(near.raw() > nearer.raw());
  }

  @Test
  void aCheckerFartherDownIceNeverLowersTheChance() {
    Random random = new Random(20311004);
    for (int i = 0; i < 60; i++) {
      Sighting carrier =
          carrier(-3 - 20 * random.nextDouble(), 22 * random.nextDouble() - 11, speed(random), 0);
      List<Sighting> others = new ArrayList<>();
      for (int k = random.nextInt(4); k > 0; k--) {
        others.add(somebody(random, carrier));
      }
      double back = 6 * random.nextDouble();
      double y = carrier.racer().y() + 10 * random.nextDouble() - 5;
      double before = 0;
      for (double farther = 0; farther < 8; farther += 1) {
        List<Sighting> all = new ArrayList<>(others);
        all.add(checker(carrier.racer().x() - back - farther, y, 0, 0));
        double p = chance(carrier, all, 60).raw();
        assertTrue(p >= before - 1e-6, i + ": " + p + " after " + before);
        before = p;
      }
    }
  }

  private static double speed(Random random) {
    return 7 * random.nextDouble();
  }

  private static Sighting somebody(Random random, Sighting carrier) {
    return checker(
        carrier.racer().x() + 24 * random.nextDouble() - 10,
        22 * random.nextDouble() - 11,
        8 * random.nextDouble() - 4,
        6 * random.nextDouble() - 3);
  }

  @Test
  void anotherCheckerNeverRaisesTheChance() {
    Random random = new Random(5);
    for (int i = 0; i < 100; i++) {
      Sighting carrier =
          carrier(-3 - 20 * random.nextDouble(), 20 * random.nextDouble() - 10, speed(random), 0);
      List<Sighting> checkers = new ArrayList<>();
      double before = 1;
      for (int k = 0; k < 5; k++) {
        checkers.add(somebody(random, carrier));
        double p = chance(carrier, checkers, 40).raw();
        assertTrue(p <= before + 1e-12, i + ": " + p + " after " + before);
        before = p;
      }
    }
  }

  @Test
  void theMirrorImageHasTheSameChance() {
    Random random = new Random(11);
    for (int i = 0; i < 60; i++) {
      Sighting carrier =
          carrier(
              -3 - 20 * random.nextDouble(),
              20 * random.nextDouble() - 10,
              speed(random),
              4 * random.nextDouble() - 2);
      List<Sighting> checkers = List.of(somebody(random, carrier), somebody(random, carrier));
      GainChance here = chance(carrier, checkers, 100);
      GainChance there =
          chance(mirrored(carrier), checkers.stream().map(c -> mirrored(c)).toList(), 100);
      assertEquals(here.raw(), there.raw(), 1e-12);
    }
  }

  private static Sighting mirrored(Sighting s) {
    Racer r = s.racer();
    return new Sighting(new Racer(r.chases(), r.x(), -r.y(), r.vx(), -r.vy()), s.speedKnown());
  }

  @Test
  void anUnknownSpeedSpreadsTheChanceAndItsMirrorImageAgreesWithinTheError() {
    Sighting still = checker(-10, 3, 0, 0);
    Sighting unknown = new Sighting(still.racer(), false);
    Sighting carrier = carrier(-12, 0, 3, 0);
    assertTrue(
        chance(carrier, List.of(unknown), 2000).error()
            > 2 * chance(carrier, List.of(still), 2000).error());
    GainChance here = chance(carrier, List.of(unknown), 2000);
    GainChance there = chance(mirrored(carrier), List.of(mirrored(unknown)), 2000);
    assertEquals(here.raw(), there.raw(), 3 * Math.hypot(here.error(), there.error()));
  }

  /**
   * Against a race played out: the carrier's way integrated in small steps of the equation of
   * motion, the checker's arrival searched by {@link Skater#slack}, his error drawn and those who
   * would have had the puck before the release left out.
   */
  @Test
  void agreesWithARacePlayedOut() {
    Sighting carrier = carrier(-9, 2, 4, 1);
    Sighting[] all = {checker(-11, 0, 3, 1), checker(2, 4, -1, 0), checker(-6, 9, 0, -2)};
    GainChance measured = chance(carrier, List.of(all), 4000);
    Random random = new Random(3);
    int trials = 10_000;
    int gained = 0;
    double dx = RINK.shortOfCenter(-9);
    double dy = dx * Math.tan(Math.toRadians(measured.degrees()));
    for (int i = 0; i < trials; i++) {
      gained += played(carrier, all, dx, dy, random) ? 1 : 0;
    }
    double share = gained / (double) trials;
    assertTrue(share > 0.1 && share < 0.9, "says nothing: " + share);
    assertEquals(share, measured.raw(), 4 * Math.sqrt(share * (1 - share) / trials));
  }

  private static boolean played(
      Sighting carrier, Sighting[] checkers, double dx, double dy, Random random) {
    double tau = LEGS.tau();
    double time = LEGS.carrier().timeTo(dx, dy, 4, 1);
    double u = tau * (1 - Math.exp(-time / tau));
    double wx = (dx - 4 * u) / (time - u);
    double wy = (dy - u) / (time - u);
    for (Sighting checker : checkers) {
      double arrival = Double.POSITIVE_INFINITY;
      double x = carrier.racer().x();
      double y = carrier.racer().y();
      double vx = 4;
      double vy = 1;
      double step = 0.002;
      for (double t = 0; t < time + 3; t += step) {
        Racer r = checker.racer();
        double slack = LEGS.skater().slack(t, x - r.x(), y - r.y(), r.vx(), r.vy());
        if (slack >= 0) {
          arrival = t;
          break;
        }
        x += step * vx / 2;
        y += step * vy / 2;
        vx += step * (wx - vx) / tau;
        vy += step * (wy - vy) / tau;
        x += step * vx / 2;
        y += step * vy / 2;
      }
      double at;
      do {
        at = arrival + LEGS.errorScale() * logistic(random.nextDouble());
      } while (at < 0);
      if (at < time) {
        return false;
      }
    }
    return true;
  }

  private static double logistic(double u) {
    return Math.log(u / (1 - u));
  }

  @Test
  void theSameSeedGivesTheSameChance() {
    Sighting carrier = new Sighting(new Racer(true, -10, 3, 0, 0), false);
    List<Sighting> checkers = List.of(new Sighting(new Racer(false, -12, 1, 0, 0), false));
    assertEquals(chance(carrier, checkers, 500), chance(carrier, checkers, 500));
  }
}
