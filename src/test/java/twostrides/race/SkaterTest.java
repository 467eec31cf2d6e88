package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import twostrides.rink.Place;

class SkaterTest {

  private static final double VM = 9.6;
  private static final double TAU = 1.45;

  @Test
  void straightAheadTheDiscIsTheSprint() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 5_000; i++) {
      double v0 = random.nextDouble(0, 9);
      double angle = random.nextDouble(-Math.PI, Math.PI);
      double delay = random.nextDouble(0, 0.6);
      double beyond = random.nextDouble(0.01, 50);
      double reach = random.nextDouble(0, 1.5);
      double d = v0 * delay + reach + beyond;
      double cos = Math.cos(angle);
      double sin = Math.sin(angle);
      double t = new Skater(VM, TAU, delay, reach).timeTo(d * cos, d * sin, v0 * cos, v0 * sin);
      assertEquals(delay + SprintTest.time(beyond, v0, VM, TAU), t, 1e-12 * (1 + t));
    }
  }

  @Test
  void fromRestNoDirectionIsBetter() {
    SkaterSettings s = SkaterLevel.JUNIOR.settings().withReach(0);
    Racer racer = new Racer(true, 3, -2, 0, 0);
    double expected = s.reaction() + SprintTest.time(20, 0, s.topSpeed(), s.tau());
    for (double a = 0; a < 6.3; a += 0.1) {
      double t = s.skater().timeTo(racer, new Place(3 + 20 * Math.cos(a), -2 + 20 * Math.sin(a)));
      assertEquals(expected, t, 1e-12);
    }
  }

  /** Straight ahead and straight behind, fine grid: no jump, never sooner for a farther target. */
  @Test
  void arrivalIsContinuousAndRisesWithDistance() {
    double step = 0.001;
    for (double v : new double[] {0, 2, 8, -2, -8, -9.6}) {
      for (double reach : new double[] {0, 1.5}) {
        double before = Double.NaN;
        for (int i = 1; i <= 40_000; i++) {
          double t = new Skater(VM, TAU, 0.3, reach).timeTo(i * step, 0, v, 0);
          if (i > 1 && !(before == 0 && v <= 0)) {
            assertTrue(t >= before, () -> "sooner at a farther target, v " + v);
            // From rest a millimetre takes sqrt(2 d tau/vm) = 17 ms; the slowest start is from
            // there.
            assertTrue(t - before < 0.02, () -> "a jump, v " + v);
          }
          before = t;
        }
      }
    }
  }

  /** Away from the target he first is carried off, however near it is: known, not an error. */
  @Test
  void movingAwayHeHasToComeBack() {
    double away = new Skater(VM, TAU, 0, 0).timeTo(0.001, 0, -8, 0);
    assertTrue(away > 1.5 && away < 3, "" + away);
    assertEquals(0, new Skater(VM, TAU, 0, 0.5).timeTo(0.001, 0, -8, 0));
    assertEquals(0, new Skater(VM, TAU, 0, 0).slack(away, 0.001, 0, -8, 0), 1e-9);
  }

  /** A dense look at the disc over time finds no entry before the one given, and one there. */
  @Test
  void theFirstEntryIsTheFirst() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 3_000; i++) {
      double vm = random.nextDouble(5, 11);
      double tau = random.nextDouble(0.5, 2.5);
      double vx = random.nextDouble(-10, 10);
      double vy = random.nextDouble(-6, 6);
      double size = i % 2 == 0 ? 30 : 4;
      double dx = random.nextDouble(-size, size);
      double dy = random.nextDouble(-size, size) * (i % 3 == 0 ? 0.05 : 1);
      double delay = i % 4 == 0 ? 0 : random.nextDouble(0, 0.8);
      double reach = i % 5 == 0 ? 0 : random.nextDouble(0, 2);
      double t = new Skater(vm, tau, delay, reach).timeTo(dx, dy, vx, vy);
      assertEquals(
          0, Math.min(0, new Skater(vm, tau, delay, reach).slack(t, dx, dy, vx, vy)), 1e-8);
      for (double at = 0; at < t - 1e-6; at += 0.002) {
        double slack = new Skater(vm, tau, delay, reach).slack(at, dx, dy, vx, vy);
        assertTrue(slack < 1e-9, "inside already at " + at + " of " + t);
      }
    }
  }

  @Test
  void passingCloseIsNotStaying() {
    double first = new Skater(VM, TAU, 0, 0).timeTo(1, 0, 8, 0);
    assertEquals(SprintTest.time(1, 8, VM, TAU), first, 1e-12);
    assertTrue(new Skater(VM, TAU, 0, 0).slack(0.5, 1, 0, 8, 0) < -1);
  }

  /** The disc against equations of motion integrated with the push in one fixed direction. */
  @Test
  void theEdgeOfTheDiscIsAFullPushInOneDirection() {
    SplittableRandom random = new SplittableRandom(23);
    for (int i = 0; i < 50; i++) {
      double a = random.nextDouble(-Math.PI, Math.PI);
      double vx0 = random.nextDouble(-8, 8);
      double vy0 = random.nextDouble(-8, 8);
      double end = random.nextDouble(0.2, 4);
      double x = 0;
      double y = 0;
      double vx = vx0;
      double vy = vy0;
      int steps = 4_000;
      double h = end / steps;
      for (int k = 0; k < steps; k++) {
        // Midpoint rule, error of order h^2.
        double mx = vx + h / 2 * (VM * Math.cos(a) - vx) / TAU;
        double my = vy + h / 2 * (VM * Math.sin(a) - vy) / TAU;
        x += h * mx;
        y += h * my;
        vx += h * (VM * Math.cos(a) - mx) / TAU;
        vy += h * (VM * Math.sin(a) - my) / TAU;
      }
      assertEquals(0, new Skater(VM, TAU, 0, 0).slack(end, x, y, vx0, vy0), 1e-5);
    }
  }

  @Test
  void thePictureMayBeTurnedAndMirrored() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 2_000; i++) {
      double dx = random.nextDouble(-30, 30);
      double dy = random.nextDouble(-30, 30);
      double vx = random.nextDouble(-6, 6);
      double vy = random.nextDouble(-6, 6);
      double t = new Skater(VM, TAU, 0.35, 1.5).timeTo(dx, dy, vx, vy);
      assertEquals(t, new Skater(VM, TAU, 0.35, 1.5).timeTo(dx, -dy, vx, -vy));
      assertEquals(t, new Skater(VM, TAU, 0.35, 1.5).timeTo(-dy, dx, -vy, vx), 1e-9);
    }
  }

  @Test
  void fasterOrLongerReachIsNeverLater() {
    SplittableRandom random = new SplittableRandom(6);
    for (int i = 0; i < 5_000; i++) {
      double dx = random.nextDouble(-30, 30);
      double dy = random.nextDouble(-30, 30);
      double vx = random.nextDouble(-6, 6);
      double vy = random.nextDouble(-6, 6);
      double t = new Skater(8, TAU, 0.35, 0.5).timeTo(dx, dy, vx, vy);
      assertTrue(new Skater(8.2, TAU, 0.35, 0.5).timeTo(dx, dy, vx, vy) <= t + 1e-9);
      assertTrue(new Skater(8, TAU, 0.35, 0.6).timeTo(dx, dy, vx, vy) <= t + 1e-9);
    }
  }
}
