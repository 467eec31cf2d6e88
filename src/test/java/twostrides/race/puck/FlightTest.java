package twostrides.race.puck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.rink.Rink;

/** A puck in the air, up ice from -29 m so that nothing is in its way. */
class FlightTest {

  private static PuckPath flip(double speed, double degrees) {
    return PuckPath.of(
        Rink.INTERNATIONAL,
        Ice.ORDINARY,
        new PuckRelease(-29, 3, speed, 0, Math.toRadians(degrees)));
  }

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
    PuckPath path = flip(v, degrees);
    PuckPiece first = path.pieces().get(0);
    assertEquals(Joint.LANDED, first.joint());
    assertEquals(air, first.end(), 0.006);
    assertEquals(carry, first.length(), 0.06);
    assertEquals(apex, path.heightAt(first.end() / 2), 0.06);
    assertEquals(0, path.heightAt(first.end()), 1e-12);
  }

  @Test
  void aPlaneIsCrossedInTheAir() {
    PuckPath path = flip(15, 30);
    double t = path.reaches(-19).orElseThrow();
    assertEquals(10 / (15 * Math.cos(Math.toRadians(30))), t, 1e-12);
    assertTrue(path.heightAt(t) > 2.8);
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
    assertEquals(1.0, flip(15, 30).pieces().get(0).length() - x, 0.5);
  }

  @Test
  void bouncesFollowOneAnotherAndDieOut() {
    List<PuckPiece> pieces = flip(18, 35).pieces();
    // 10.3, 3.6, 1.26, 0.44 m/s upward; 0.15 is a slide.
    for (int i = 1; i < 4; i++) {
      PuckPiece before = pieces.get(i - 1);
      PuckPiece hop = pieces.get(i);
      double rising = before.flight().orElseThrow().rising();
      assertEquals(before.end(), hop.start(), 0);
      assertEquals(before.to().x(), hop.from().x(), 1e-12);
      assertEquals(0.35 * rising, hop.flight().orElseThrow().rising(), 1e-12);
      double factor = 1 - 0.15 * 1.35 * rising / before.speed();
      assertEquals(factor * before.speed(), hop.speed(), 1e-12);
    }
    assertTrue(pieces.get(4).flight().isEmpty());
    assertTrue(pieces.get(4).speed() > 0 && pieces.get(4).speed() < pieces.get(3).speed());
  }

  @Test
  void aLandingNeverGivesEnergyAndNeverTurnsThePuckRound() {
    SplittableRandom random = new SplittableRandom(21);
    for (int i = 0; i < 5000; i++) {
      double forward = random.nextDouble(0, 30);
      double after = new Flight(0, random.nextDouble(0, 20)).forwardAfterLanding(forward);
      assertTrue(after >= 0 && after <= forward);
    }
    assertEquals(0, new Flight(0, 20).forwardAfterLanding(1), 0, "a steep fall stops it");
  }

  @Test
  void aFallFromAHeightTakesAsLongAsItShould() {
    SplittableRandom random = new SplittableRandom(22);
    for (int i = 0; i < 1000; i++) {
      double z = random.nextDouble(0, 5);
      double vz = random.nextDouble(-10, 10);
      Flight flight = new Flight(z, vz);
      assertEquals(0, flight.after(flight.airTime()).height(), 1e-12 * (1 + z + vz * vz));
      assertEquals(-flight.falling(), flight.after(flight.airTime()).rising(), 1e-12 * (1 + z));
    }
  }

  @Test
  void aFlatReleaseDoesNotHop() {
    PuckPiece first = flip(20, 0.5).pieces().get(0);
    assertTrue(first.flight().isEmpty());
    assertEquals(20 * Math.cos(Math.toRadians(0.5)), first.speed(), 0);
  }
}
