package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import twostrides.race.CenterRun.Body;
import twostrides.race.CenterRun.Run;
import twostrides.rink.Rink;

/** A run that looks only where a checker can be there, against one that looks everywhere. */
class CenterRunTest {
  private static final double STEP = 0.05;
  private static final SkaterSettings LEGS = SkaterLevel.ELITE_MEN.settings();

  @Test
  void looksThatAreLeftOutWouldHaveShownNobody() {
    CenterRun runs = new CenterRun(Rink.NORTH_AMERICAN, LEGS);
    Random dice = new Random(3);
    int raced = 0;
    for (int i = 0; i < 2000; i++) {
      List<Body> bodies = new ArrayList<>();
      for (int k = 0; k < 4; k++) {
        bodies.add(
            new Body(
                -25 + (k == 0 ? 20 : 45) * dice.nextDouble(),
                -10 + 20 * dice.nextDouble(),
                4 * dice.nextGaussian(),
                3 * dice.nextGaussian()));
      }
      double degrees = 15 * (dice.nextInt(9) - 4);
      double slope = Math.tan(Math.toRadians(degrees));
      if (runs.run(bodies, slope, -1).isPresent()) {
        Run run = runs.run(bodies, slope, -1).get();
        assertEquals(chance(bodies, degrees, run.time()), run.chance());
        assertEquals(Optional.empty(), runs.run(bodies, slope, run.chance()), "no better");
        assertEquals(Optional.of(run), runs.run(bodies, slope, run.chance() - 1e-9), "better");
        raced++;
      }
    }
    assertEquals(true, raced > 1000, "most ways are open");
  }

  private static double chance(List<Body> bodies, double degrees, double time) {
    Body c = bodies.get(0);
    double ahead = Rink.NORTH_AMERICAN.shortOfCenter(c.x());
    double wx = ahead - c.vx() * coast(time);
    double wy = ahead * Math.tan(Math.toRadians(degrees)) - c.vy() * coast(time);
    double push = LEGS.carryingSpeed() / Math.hypot(wx, wy);
    double chance = 1;
    for (Body checker : bodies.subList(1, bodies.size())) {
      double a = arrival(c, push * wx, push * wy, checker, time + 9 * LEGS.errorScale());
      chance *=
          (1 + Math.exp(-a / LEGS.errorScale())) / (1 + Math.exp((time - a) / LEGS.errorScale()));
    }
    return chance;
  }

  private static double arrival(Body c, double wx, double wy, Body o, double until) {
    double before = 0;
    for (int j = 0; j <= 240 && (j - 1) * STEP < until; j++) {
      double t = j * STEP;
      double s = Math.max(0, t - LEGS.reaction());
      double u = coast(s);
      double drift = t - s + u;
      double qx = c.x() - o.x() + c.vx() * coast(t) + wx * (t - coast(t)) - o.vx() * drift;
      double qy = c.y() - o.y() + c.vy() * coast(t) + wy * (t - coast(t)) - o.vy() * drift;
      double late = Math.sqrt(qx * qx + qy * qy) - LEGS.reach() - LEGS.topSpeed() * (s - u);
      if (late <= 0) {
        return j == 0 ? 0 : STEP * (j - 1 + before / (before - late));
      }
      before = late;
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double coast(double t) {
    return LEGS.tau() * (1 - Math.exp(-t / LEGS.tau()));
  }
}
