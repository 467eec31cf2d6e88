package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SprintTest {

  private static final double[] DISTANCES = {5, 6.1, 10, 15, 20, 30, 40, 44.8};

  /**
   * Non-regression: times from rest over {@link #DISTANCES}, then the speed at 30 m, then the first
   * acceleration, computed apart from this code by Lambert's W from the levels' top speed and tau.
   */
  private static final Map<SkaterLevel, List<Double>> TABLE =
      Map.of(
          SkaterLevel.ELITE_MEN,
          List.of(1.43, 1.61, 2.17, 2.80, 3.39, 4.51, 5.59, 6.09, 9.17, 6.6),
          SkaterLevel.ELITE_WOMEN,
          List.of(1.54, 1.73, 2.34, 3.04, 3.69, 4.93, 6.13, 6.71, 8.22, 5.9),
          SkaterLevel.JUNIOR,
          List.of(1.48, 1.66, 2.24, 2.90, 3.52, 4.69, 5.82, 6.35, 8.74, 6.3),
          SkaterLevel.YOUTH_U15,
          List.of(1.61, 1.82, 2.46, 3.20, 3.89, 5.20, 6.48, 7.09, 7.75, 5.3),
          SkaterLevel.YOUTH_U13,
          List.of(1.73, 1.95, 2.65, 3.46, 4.23, 5.69, 7.12, 7.80, 6.94, 4.7));

  @Test
  void everyLevelRunsItsTable() {
    for (SkaterLevel level : SkaterLevel.values()) {
      SkaterSettings s = level.settings();
      List<Double> row = TABLE.get(level);
      for (int i = 0; i < DISTANCES.length; i++) {
        assertEquals(
            row.get(i), time(DISTANCES[i], 0, s.topSpeed(), s.tau()), 0.005001, level.word());
      }
      assertEquals(row.get(8), speedAt30(s), 0.005001, level.word());
      assertEquals(row.get(9), s.topSpeed() / s.tau(), 0.0500001, level.word());
    }
  }

  /**
   * Validation: means over skaters with their standard deviation. Budarick et al. 2018 (doi
   * 10.1080/14763141.2018.1503323, abstract): peak speed of a standing-start sprint 8.96 +/- 0.44
   * m/s (high-calibre men), 8.02 +/- 0.36 m/s (women). Wilson et al. 2021, Int. J. Exerc. Sci.
   * 14:666 (abstract): women 15 m in 2.96 +/- 0.12 s, fastest of seven. The defaults stand off by
   * 0.48, 0.55 and 0.63 of these; gates start late, so the last would be larger with the offset
   * known.
   */
  @Test
  void publishedMeansAreMetWithinTheirSpread() {
    SkaterSettings men = SkaterLevel.ELITE_MEN.settings();
    SkaterSettings women = SkaterLevel.ELITE_WOMEN.settings();
    assertEquals(0.48, (speedAt30(men) - 8.96) / 0.44, 0.005);
    assertEquals(0.55, (speedAt30(women) - 8.02) / 0.36, 0.005);
    double time = time(15, 0, women.topSpeed(), women.tau());
    assertEquals(0.63, (time - 2.96) / 0.12, 0.005);
  }

  /**
   * Validation: Gamble et al. 2024, IJSPP 19:496 (abstract), varsity women, 40 m: 28.3 +/- 1.1 km/h
   * at most; Stastny et al. 2023, Biol. Sport 40:899 (abstract), pooled over men and women of 11 to
   * 37 years: 6.76 m/s on average over 30 m, which lies between our slowest and fastest level.
   */
  @Test
  void speedsLieWhereOthersMeasuredThem() {
    SkaterSettings women = SkaterLevel.ELITE_WOMEN.settings();
    double t = time(40, 0, women.topSpeed(), women.tau());
    double speed = speed(t, 0, women.topSpeed(), women.tau());
    assertTrue(Math.abs(speed * 3.6 - 28.3) < 2 * 1.1, "varsity, ours elite: " + speed);
    double pooled = 30 / 6.76;
    SkaterSettings men = SkaterLevel.ELITE_MEN.settings();
    SkaterSettings youth = SkaterLevel.YOUTH_U13.settings();
    assertTrue(time(30, 0, youth.topSpeed(), youth.tau()) > pooled);
    assertEquals(pooled, time(30, 0, men.topSpeed(), men.tau()), 0.1);
  }

  /**
   * Non-regression, computed apart by Lambert's W: elite men over 5 m from 0, 3, 5, 7 m/s, and what
   * a carrying factor of 0.95 adds.
   */
  @Test
  void initialSpeedMattersMoreThanThePuck() {
    SkaterSettings s = SkaterLevel.ELITE_MEN.settings();
    double[] from = {0, 3, 5, 7};
    double[] time = {1.430, 1.027, 0.821, 0.665};
    double[] added = {0.043, 0.023, 0.014, 0.008};
    for (int i = 0; i < from.length; i++) {
      double free = time(5, from[i], s.topSpeed(), s.tau());
      double carried = time(5, from[i], s.carryingSpeed(), s.tau());
      assertEquals(time[i], free, 0.0005);
      assertEquals(added[i], carried - free, 0.0005);
    }
  }

  @Test
  void timeUndoesDistanceFromAnySpeed() {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < 20_000; i++) {
      double vm = random.nextDouble(3, 12);
      double tau = random.nextDouble(0.3, 3);
      double v0 = i % 5 == 0 ? 0 : random.nextDouble(0, 14);
      double t = i % 3 == 0 ? random.nextDouble(0, 0.01) : random.nextDouble(0, 30);
      double d = distance(t, v0, vm, tau);
      assertEquals(t, time(d, v0, vm, tau), 1e-9 * (1 + t));
    }
  }

  @Test
  void speedIsTheSlopeOfDistance() {
    double h = 1e-5;
    for (double t = 0.1; t < 6; t += 0.1) {
      double slope = (distance(t + h, 4, 9.6, 1.45) - distance(t - h, 4, 9.6, 1.45)) / (2 * h);
      assertEquals(speed(t, 4, 9.6, 1.45), slope, 1e-8);
    }
  }

  @Test
  void noDistanceTakesNoTime() {
    assertEquals(0, time(0, 0, 9.6, 1.45));
  }

  /** Seconds over a distance straight ahead, from a speed: the disc's front. */
  static double time(double d, double v0, double vm, double tau) {
    return new Skater(vm, tau, 0, 0).timeTo(d, 0, v0, 0);
  }

  /** Speed in m/s after a time, dv/dt = (vm - v)/tau. */
  static double speed(double t, double v0, double vm, double tau) {
    return vm - (vm - v0) * Math.exp(-t / tau);
  }

  /** Metres in a time. */
  static double distance(double t, double v0, double vm, double tau) {
    return vm * t + (vm - v0) * tau * Math.expm1(-t / tau);
  }

  private static double speedAt30(SkaterSettings s) {
    return speed(time(30, 0, s.topSpeed(), s.tau()), 0, s.topSpeed(), s.tau());
  }
}
