package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * The polynomials against Java's own functions, which are within one unit in the last place of the
 * exact value.
 */
class RatiosTest {

  private static final double NEAR = 2e-15;

  @Test
  void theyAreJavasFunctionsDividedByTheirArgument() {
    SplittableRandom dice = new SplittableRandom(1993);
    for (int i = 0; i < 200_000; i++) {
      // From tiny to several, so that both sides of every switch are met.
      double z = Math.pow(10, -9 + 9.7 * dice.nextDouble());
      assertEquals(Math.atan(z) / z, Ratios.atan(z * z), NEAR, "atan " + z);
      assertEquals(Math.sin(z) / z, Ratios.sin(z * z), NEAR, "sin " + z);
      assertEquals(Math.cos(z), Ratios.cos(z * z), NEAR, "cos " + z);
      assertEquals(Math.log1p(z) / z, Ratios.logOnePlus(z), NEAR, "log " + z);
      assertEquals(1, Ratios.expLessOne(z) * z / Math.expm1(z), NEAR, "exp " + z);
      assertEquals(1, Ratios.expLessOne(-z) * -z / Math.expm1(-z), NEAR, "exp " + -z);
    }
  }

  @Test
  void theyMeetWhereThePolynomialEnds() {
    for (double end : new double[] {0.1, 0.19140625, 0.34, 0.41}) {
      double past = Math.nextUp(end);
      assertEquals(Ratios.atan(end), Ratios.atan(past), NEAR);
      assertEquals(Ratios.sin(end), Ratios.sin(past), NEAR);
      assertEquals(Ratios.cos(end), Ratios.cos(past), NEAR);
      assertEquals(Ratios.logOnePlus(end), Ratios.logOnePlus(past), NEAR);
      assertEquals(Ratios.expLessOne(end), Ratios.expLessOne(past), NEAR);
    }
  }

  @Test
  void atNothingTheyAreOne() {
    assertEquals(1, Ratios.atan(0));
    assertEquals(1, Ratios.sin(0));
    assertEquals(1, Ratios.cos(0));
    assertEquals(1, Ratios.logOnePlus(0));
    assertEquals(1, Ratios.expLessOne(0));
  }
}
