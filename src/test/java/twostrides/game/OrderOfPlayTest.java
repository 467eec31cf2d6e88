package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class OrderOfPlayTest {

  @Test
  void oneWrongClockIsOneRow() {
    assertArrayEquals(
        new boolean[] {false, false, true, false, false},
        OrderOfPlay.against(new double[] {1, 2, 900, 3, 3}));
    assertArrayEquals(
        new boolean[] {false, false, true, false},
        OrderOfPlay.against(new double[] {10, 20, 5, 30}));
  }

  @Test
  void equalClocksStand() {
    assertArrayEquals(new boolean[3], OrderOfPlay.against(new double[] {7, 7, 7}));
    assertArrayEquals(new boolean[0], OrderOfPlay.against(new double[0]));
  }

  /**
   * What is kept never runs backward, and no larger kept set exists (checked against the quadratic
   * method).
   */
  @Test
  void keepsAsManyAsPossible() {
    Random random = new Random(7);
    for (int run = 0; run < 300; run++) {
      double[] t = random.ints(random.nextInt(30), 0, 20).asDoubleStream().toArray();
      boolean[] against = OrderOfPlay.against(t);
      double last = Double.NEGATIVE_INFINITY;
      int kept = 0;
      for (int i = 0; i < t.length; i++) {
        if (!against[i]) {
          assertTrue(t[i] >= last);
          last = t[i];
          kept++;
        }
      }
      assertEquals(longest(t), kept);
    }
  }

  private static int longest(double[] t) {
    int[] best = new int[t.length];
    int most = 0;
    for (int i = 0; i < t.length; i++) {
      best[i] = 1;
      for (int k = 0; k < i; k++) {
        if (t[k] <= t[i]) {
          best[i] = Math.max(best[i], best[k] + 1);
        }
      }
      most = Math.max(most, best[i]);
    }
    return most;
  }
}
