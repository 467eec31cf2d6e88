package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlipTest {

  /**
   * Non-regression: time in the air, range and height without drag, from the project's reference
   * notes, computed there with T = 2 v sin / g, R = v^2 sin 2 / g, H = (v sin)^2 / 2 g.
   */
  @ParameterizedTest
  @CsvSource({
    "15, 30, 1.53, 19.9, 2.9",
    "15, 45, 2.16, 22.9, 5.7",
    "18, 35, 2.10, 31.0, 5.4",
    "20, 25, 1.72, 31.2, 3.6"
  })
  void flightsWithoutDrag(double v, double degrees, double air, double carry, double apex) {
    Flip flip = new Flip(v, Math.toRadians(degrees));
    assertEquals(air, flip.airTime(), 0.006);
    assertEquals(carry, flip.carry(), 0.06);
    assertEquals(apex, flip.apex(), 0.06);
    assertEquals(flip.apex(), flip.heightAt(flip.airTime() / 2), 1e-12);
    assertEquals(0, flip.heightAt(flip.airTime()), 1e-12);
  }

  @Test
  void aPlaneIsCrossedInTheAir() {
    Flip flip = new Flip(15, Math.toRadians(30));
    assertEquals(10 / (15 * Math.cos(Math.toRadians(30))), flip.timeTo(10).orElseThrow(), 1e-12);
    assertTrue(flip.heightAt(flip.timeTo(10).orElseThrow()) > 2.8);
    assertTrue(flip.timeTo(20).isEmpty(), "lands short of 20 m");
  }

  /**
   * What leaving out drag in flight costs: with drag along the velocity, k = 0.0053 per metre,
   * integrated in small steps, 15 m/s at 30 degrees lands about one metre shorter.
   */
  @Test
  void theErrorOfLeavingOutDragIsAsStated() {
    double vx = 15 * Math.cos(Math.toRadians(30));
    double vz = 15 * Math.sin(Math.toRadians(30));
    double x = 0;
    double z = 0;
    double h = 1e-5;
    while (z >= 0) {
      double v = Math.hypot(vx, vz);
      vx -= h * 0.0053 * v * vx;
      vz -= h * (Slide.GRAVITY + 0.0053 * v * vz);
      x += h * vx;
      z += h * vz;
    }
    assertEquals(1.0, new Flip(15, Math.toRadians(30)).carry() - x, 0.5);
  }

  @Test
  void bouncesFollowOneAnotherAndDieOut() {
    Flip flip = new Flip(18, Math.toRadians(35));
    List<Flip.Hop> hops = flip.hops(PuckSettings.DEFAULT);
    // 10.3, 3.6, 1.26, 0.44 m/s upward; 0.15 is a slide.
    assertEquals(4, hops.size());
    for (int i = 1; i < hops.size(); i++) {
      Flip.Hop before = hops.get(i - 1);
      Flip.Hop hop = hops.get(i);
      assertEquals(before.end(), hop.start(), 0);
      assertEquals(before.to(), hop.from(), 0);
      assertEquals(0.35 * before.rising(), hop.rising(), 1e-12);
      double factor = 1 - 0.15 * 1.35 * before.rising() / before.forward();
      assertEquals(factor * before.forward(), hop.forward(), 1e-12);
    }
    double slide = flip.slideAfter(PuckSettings.DEFAULT).speed();
    assertTrue(slide > 0 && slide < hops.get(3).forward());
  }

  @Test
  void aLandingNeverGivesEnergyAndNeverTurnsThePuckRound() {
    SplittableRandom random = new SplittableRandom(21);
    for (int i = 0; i < 5000; i++) {
      double forward = random.nextDouble(0, 30);
      double falling = random.nextDouble(0, 20);
      double e = random.nextDouble();
      double after = Flip.forwardAfterLanding(forward, falling, e, random.nextDouble());
      assertTrue(after >= 0 && after <= forward);
    }
    assertEquals(0, Flip.forwardAfterLanding(1, 20, 0.35, 0.15), 0, "a steep fall stops it");
  }

  @Test
  void aFallFromAHeightTakesAsLongAsItShould() {
    SplittableRandom random = new SplittableRandom(22);
    for (int i = 0; i < 1000; i++) {
      double z = random.nextDouble(0, 5);
      double vz = random.nextDouble(-10, 10);
      assertEquals(0, Flip.height(z, vz, Flip.airTime(z, vz)), 1e-12 * (1 + z + vz * vz));
    }
  }

  @Test
  void aFlatReleaseDoesNotHopAndImpossibleOnesAreRefused() {
    Flip flat = new Flip(20, 0.01);
    assertTrue(flat.hops(PuckSettings.DEFAULT).isEmpty());
    assertEquals(flat.forward(), flat.slideAfter(PuckSettings.DEFAULT).speed(), 0);
    assertThrows(IllegalArgumentException.class, () -> new Flip(-1, 0.5));
    assertThrows(IllegalArgumentException.class, () -> new Flip(10, Math.PI / 2));
    assertThrows(IllegalArgumentException.class, () -> new Flip(10, -0.1));
  }
}
