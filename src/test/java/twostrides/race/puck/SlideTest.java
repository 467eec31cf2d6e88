package twostrides.race.puck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlideTest {

  private static final int DRAWS = 2000;

  /** Simpson's rule; for the smooth integrands here 2,000 strips leave only rounding. */
  private static double integral(DoubleUnaryOperator f, double from, double to) {
    int strips = 2000;
    double h = (to - from) / strips;
    double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
    for (int i = 1; i < strips; i++) {
      sum += (i % 2 == 0 ? 2 : 4) * f.applyAsDouble(from + i * h);
    }
    return sum * h / 3;
  }

  /** A slide under a friction and a drag, per metre. */
  static Slide onIce(double speed, double friction, double drag) {
    return new Slide(speed, friction * Slide.GRAVITY, drag);
  }

  private static double relative(double expected, double found) {
    return Math.abs(found - expected) / Math.abs(expected);
  }

  /**
   * Validation against the equation of motion: with the speed as variable, dt = -dv / (a + k v^2)
   * and ds = v dt are integrated numerically from the release to a lower speed.
   */
  @Test
  void closedFormsAgreeWithTheEquationOfMotion() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 400; i++) {
      double v0 = random.nextDouble(2, 45);
      double a = random.nextDouble(0.1, 5);
      double k = random.nextDouble(0, 0.02);
      double v = v0 * random.nextDouble(0.02, 0.98);
      double t = integral(u -> 1 / (a + k * u * u), v, v0);
      double d = integral(u -> u / (a + k * u * u), v, v0);
      Slide slide = new Slide(v0, a, k);
      String at = slide + " down to " + v;
      assertEquals(0, relative(v, slide.speedAfter(d).orElseThrow()), 1e-9, at);
      assertEquals(0, relative(t, slide.timeTo(d).orElseThrow()), 1e-9, at);
      assertEquals(0, relative(d, slide.distanceAt(t)), 1e-9, at);
      assertEquals(0, relative(v, slide.speedAt(t)), 1e-9, at);
      assertEquals(
          0, relative(integral(u -> 1 / (a + k * u * u), 0, v0), slide.stoppingTime()), 1e-9, at);
      assertEquals(
          0,
          relative(integral(u -> u / (a + k * u * u), 0, v0), slide.stoppingDistance()),
          1e-9,
          at);
    }
  }

  /** The same against a plain Runge-Kutta integration in time, which shares nothing with it. */
  @Test
  void closedFormsAgreeWithSteppingThroughTime() {
    double a = 0.98;
    double k = 0.0053;
    double h = 1e-3;
    double v = 22;
    double s = 0;
    for (int i = 0; i < 5000; i++) {
      double k1 = -(a + k * v * v);
      double v2 = v + h / 2 * k1;
      double k2 = -(a + k * v2 * v2);
      double v3 = v + h / 2 * k2;
      double k3 = -(a + k * v3 * v3);
      double v4 = v + h * k3;
      double k4 = -(a + k * v4 * v4);
      s += h / 6 * (v + 2 * v2 + 2 * v3 + v4);
      v += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    Slide slide = new Slide(22, a, k);
    assertEquals(0, relative(v, slide.speedAt(5)), 1e-9);
    assertEquals(0, relative(s, slide.distanceAt(5)), 1e-9);
    assertEquals(0, relative(5, slide.timeTo(s).orElseThrow()), 1e-9);
  }

  /** Down to a millionth of the release speed, from the distance that is left. */
  @Test
  void noDigitsAreLostNearTheStop() {
    SplittableRandom random = new SplittableRandom(12);
    for (int i = 0; i < 200; i++) {
      double v0 = random.nextDouble(5, 40);
      double a = random.nextDouble(0.3, 3);
      double k = random.nextDouble(0, 0.02);
      double v = v0 * Math.pow(10, random.nextDouble(-6, -1));
      double left = integral(u -> u / (a + k * u * u), 0, v);
      assertEquals(0, relative(v, Slide.speedBeforeStop(a, k, left)), 1e-12);
      Slide slide = new Slide(v0, a, k);
      double stop = slide.stoppingDistance();
      double timeLeft = integral(u -> 1 / (a + k * u * u), 0, v);
      double t = slide.timeTo(stop - left).orElseThrow();
      // A double holds the distance to 1e-16 of it, so the speed there only to the root of that.
      assertEquals(slide.stoppingTime() - timeLeft, t, 1e-7 * t);
      if (v > 1e-3 * v0) {
        assertEquals(0, relative(v, slide.speedAfter(stop - left).orElseThrow()), 1e-9);
        assertEquals(0, relative(v, slide.speedAt(slide.stoppingTime() - timeLeft)), 1e-9);
      }
    }
  }

  @Test
  void withoutDragItIsCoulombsSlide() {
    Slide slide = new Slide(12, 1.2, 0);
    assertEquals(60, slide.stoppingDistance(), 1e-12);
    assertEquals(10, slide.stoppingTime(), 1e-12);
    assertEquals(12 * 5 - 0.6 * 25, slide.distanceAt(5), 1e-12);
    assertEquals(6, slide.speedAt(5), 1e-12);
    assertEquals(6, slide.speedAfter(45).orElseThrow(), 1e-12);
    assertEquals(5, slide.timeTo(45).orElseThrow(), 1e-12);
    Slide hardly = new Slide(12, 1.2, 1e-15);
    assertEquals(slide.timeTo(45).orElseThrow(), hardly.timeTo(45).orElseThrow(), 1e-10);
    assertEquals(slide.distanceAt(5), hardly.distanceAt(5), 1e-10);
  }

  @Test
  void withoutFrictionItSlowsForeverAndNeverStops() {
    Slide slide = new Slide(20, 0, 0.01);
    assertEquals(Double.POSITIVE_INFINITY, slide.stoppingDistance());
    assertEquals(Double.POSITIVE_INFINITY, slide.stoppingTime());
    assertEquals(20 * Math.exp(-0.5), slide.speedAfter(50).orElseThrow(), 1e-12);
    assertEquals(20 * Math.exp(-5), slide.speedAfter(500).orElseThrow(), 1e-12);
    assertEquals(Math.expm1(0.5) / (0.01 * 20), slide.timeTo(50).orElseThrow(), 1e-12);
    assertEquals(Math.log1p(0.01 * 20 * 3) / 0.01, slide.distanceAt(3), 1e-11);
    assertEquals(20 / (1 + 0.01 * 20 * 3), slide.speedAt(3), 1e-12);
    Slide hardly = new Slide(20, 1e-14, 0.01);
    assertEquals(slide.timeTo(50).orElseThrow(), hardly.timeTo(50).orElseThrow(), 1e-10);
  }

  @Test
  void withNeitherItGlidesOn() {
    Slide slide = new Slide(20, 0, 0);
    assertEquals(2.5, slide.timeTo(50).orElseThrow(), 1e-15);
    assertEquals(50, slide.distanceAt(2.5), 1e-15);
    assertEquals(20, slide.speedAfter(50).orElseThrow(), 1e-15);
    assertEquals(20, slide.speedAt(100), 1e-15);
  }

  @Test
  void pastTheStopThereIsNoTimeAndNoSpeed() {
    Slide slide = onIce(10, 0.1, 0.0053);
    double stop = slide.stoppingDistance();
    assertTrue(slide.timeTo(stop + 1e-6).isEmpty());
    assertTrue(slide.speedAfter(stop + 1e-6).isEmpty());
    assertTrue(new Slide(10, 0.98, 0).timeTo(1000).isEmpty());
    assertEquals(0, slide.speedAfter(stop).orElseThrow(), 1e-12);
    assertEquals(slide.stoppingTime(), slide.timeTo(stop).orElseThrow(), 1e-12);
    assertEquals(stop, slide.distanceAt(100), 0);
    assertEquals(0, slide.speedAt(100), 0);
    assertEquals(0, new Slide(0, 1, 0.005).distanceAt(3), 0);
    assertTrue(new Slide(0, 1, 0.005).timeTo(3).isEmpty());
  }

  @Test
  void valuesThatAreNoSlideAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Slide(-1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Slide(1, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> new Slide(1, 1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Slide(Double.POSITIVE_INFINITY, 1, 0));
  }

  /**
   * Validation: a = v0^2 / (2 D) of published problems; friction alone.
   *
   * <p>Sources, in order: apphysics.net problem F-2, its figures rounded; University of Guelph
   * physics tutorial 6-7; physics.it.com, stopping distance on a rough floor (g 9.807, friction 0.5
   * is no ice: a check of the formula); nethercraft.net, a puck at 16 m/s; Serway and Jewett, the
   * sliding hockey puck (from memory; some printings show 0.117 for 0.177); expertsmind.com
   * 30180153 (statement; its friction of 0.363 is no ice either).
   */
  @ParameterizedTest
  @CsvSource({
    "10.0, 40.0, 1.25, 0.005, 0.1276, 0.00006, 9.8",
    "11.0, 33.0, 1.83, 0.005, 0.187, 0.0005, 9.8",
    "20.0, 40.79, 4.90, 0.005, 0.5, 0.00005, 9.807",
    "16.0, 60.0, 2.13, 0.005, 0.217, 0.0007, 9.8",
    "20.0, 115.0, 1.74, 0.005, 0.177, 0.0005, 9.8",
    "21.0, 62.0, 3.56, 0.005, 0.363, 0.0005, 9.8"
  })
  void textbookStops(
      double v0, double stop, double a, double ulpA, double mu, double ulpMu, double g) {
    double exact = v0 * v0 / (2 * stop);
    assertEquals(a, exact, ulpA);
    assertEquals(mu, exact / g, ulpMu);
    Slide slide = new Slide(v0, mu * g, 0);
    // The published friction is rounded, which moves the stop by as much.
    assertEquals(stop, slide.stoppingDistance(), stop * ulpMu / mu * 1.01);
    assertEquals(2 * stop / v0, slide.stoppingTime(), 2 * stop / v0 * 0.005);
  }

  /** Validation: 4.08 s to the stop of the rough floor above, as published. */
  @Test
  void textbookStoppingTime() {
    assertEquals(4.08, new Slide(20, 0.5 * 9.807, 0).stoppingTime(), 0.005);
  }

  /**
   * Validation: 12 to 6 m/s in 5.0 s (physicsforums.com thread 745061, statement) and 13.30 to 6.30
   * m/s in 5.3 s (mathskey.com question 22041, statement). The second page rounds 1.321 m/s2 up to
   * 1.5 and so answers 0.15, which is wrong: 0.1348 is expected here.
   */
  @ParameterizedTest
  @CsvSource({"12.0, 6.0, 5.0, 1.2, 0.122", "13.30, 6.30, 5.3, 1.321, 0.1348"})
  void textbookSlowings(double v0, double v, double t, double a, double mu) {
    assertEquals(v, new Slide(v0, a, 0).speedAt(t), 0.003);
    assertEquals(v, new Slide(v0, mu * 9.8, 0).speedAt(t), 0.03);
    if (v0 > 13) {
      assertTrue(Math.abs(new Slide(v0, 0.15 * 9.8, 0).speedAt(t) - v) > 0.7, "the page's 0.15");
    }
  }

  /**
   * Non-regression: red line to far goal line, 26 m, friction 0.10, without drag and with 0.0053
   * per metre; from the project's reference notes, computed there apart from this code.
   */
  @ParameterizedTest
  @CsvSource({
    "8, 4.48, 5.35, 0.005",
    "10, 3.06, 3.38, 0.005",
    "12, 2.40, 2.62, 0.005",
    "15, 1.845, 1.995, 0.0005",
    "20, 1.344, 1.448, 0.0005",
    "25, 1.062, 1.142, 0.0005",
    "30, 0.879, 0.944, 0.0005"
  })
  void overTwentySixMetres(double v0, double coulomb, double both, double half) {
    assertEquals(coulomb, onIce(v0, 0.10, 0).timeTo(26).orElseThrow(), half);
    assertEquals(both, onIce(v0, 0.10, 0.0053).timeTo(26).orElseThrow(), half * 1.5);
  }

  /** Non-regression, same source: 8 m/s arrives at 2.0 m/s; least speeds that reach 26 m. */
  @Test
  void slowestThatArrive() {
    assertEquals(2.0, onIce(8, 0.10, 0.0053).speedAfter(26).orElseThrow(), 0.05);
    assertEquals(26, onIce(5.0, 0.05, 0).stoppingDistance(), 0.6);
    assertEquals(26, onIce(7.1, 0.10, 0).stoppingDistance(), 0.6);
    assertEquals(26, onIce(8.7, 0.15, 0).stoppingDistance(), 0.6);
    assertTrue(onIce(7.1, 0.10, 0.0053).timeTo(26).isEmpty(), "drag stops it short");
  }

  @Test
  void moreFrictionMoreDragAndLessSpeedAreLater() {
    SplittableRandom random = new SplittableRandom(13);
    for (int i = 0; i < DRAWS; i++) {
      double v0 = random.nextDouble(5, 40);
      double mu = random.nextDouble(0.02, 0.3);
      double k = random.nextDouble(0, 0.02);
      double more = random.nextDouble(1.0001, 1.5);
      Slide slide = onIce(v0, mu, k);
      double d = slide.stoppingDistance() * random.nextDouble(0.05, 0.95);
      double t = slide.timeTo(d).orElseThrow();
      Slide rough = onIce(v0, mu * more, k);
      Slide thick = onIce(v0, mu, (k + 0.001) * more);
      Slide quick = onIce(v0 * more, mu, k);
      assertTrue(rough.timeTo(d).orElse(Double.POSITIVE_INFINITY) > t);
      assertTrue(thick.timeTo(d).orElse(Double.POSITIVE_INFINITY) > t);
      assertTrue(quick.timeTo(d).orElseThrow() < t);
      assertTrue(rough.distanceAt(t) < d);
      assertTrue(thick.distanceAt(t) < d);
      assertTrue(quick.distanceAt(t) > d);
      assertTrue(quick.speedAfter(d).orElseThrow() > slide.speedAfter(d).orElseThrow());
    }
  }
}
