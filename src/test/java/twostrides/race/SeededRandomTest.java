package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SeededRandomTest {

  /** Shares of the standard normal below the usual points of printed tables. */
  @Test
  void normalNumbersAreNormal() {
    int n = 200_000;
    SeededRandom random = new SeededRandom(3, "normal");
    double[] points = {-3.090232, -1.959964, -0.674490, 0, 0.674490, 1.644854, 2.575829};
    double[] shares = {0.001, 0.025, 0.25, 0.5, 0.75, 0.95, 0.995};
    double[] z = IntStream.range(0, n).mapToDouble(i -> random.simulation(i).normal(0)).toArray();
    for (int k = 0; k < points.length; k++) {
      double point = points[k];
      double share = Arrays.stream(z).filter(v -> v < point).count() / (double) n;
      assertEquals(shares[k], share, 4 * Math.sqrt(shares[k] * (1 - shares[k]) / n));
    }
  }

  /**
   * Non-regression, from a second implementation of the hash in another language; a change of these
   * numbers changes every result.
   */
  @Test
  void theNumbersStayTheSame() {
    SeededRandom d = new SeededRandom(20240917L, "g12-r7");
    assertArrayEquals(
        new double[] {
          0.01905497851466975, 0.6006707265951395, 0.3953801284872446, 0.6532964404340661
        },
        new double[] {
          d.simulation(0).uniform(0),
          d.simulation(1).uniform(0),
          d.simulation(0).uniform(1),
          d.simulation(1999).uniform(40)
        });
  }

  @Test
  void orderAndThreadsDoNotMatter() {
    SeededRandom d = new SeededRandom(5, "any");
    double[] forward =
        IntStream.range(0, 5_000).mapToDouble(i -> d.simulation(i).uniform(i % 7)).toArray();
    double[] again =
        IntStream.range(0, 5_000)
            .parallel()
            .mapToDouble(i -> d.simulation(i).uniform(i % 7))
            .toArray();
    double[] back = new double[5_000];
    for (int i = back.length - 1; i >= 0; i--) {
      back[i] = new SeededRandom(5, "any").simulation(i).uniform(i % 7);
    }
    assertArrayEquals(forward, again);
    assertArrayEquals(forward, back);
  }

  @Test
  void seedAndReleaseAndIndexAllCount() {
    double u = new SeededRandom(5, "a").simulation(3).uniform(4);
    assertNotEquals(u, new SeededRandom(6, "a").simulation(3).uniform(4));
    assertNotEquals(u, new SeededRandom(5, "b").simulation(3).uniform(4));
    assertNotEquals(u, new SeededRandom(5, "a").simulation(4).uniform(3));
    Set<Double> seen = new HashSet<>();
    for (int draw = 0; draw < 500; draw++) {
      for (int variable = 0; variable < 40; variable++) {
        assertTrue(seen.add(new SeededRandom(0, "").simulation(draw).uniform(variable)));
      }
    }
  }

  /**
   * Chi-square over 100 equal cells, 200,000 numbers, for several ways to walk the indices. The 0.1
   * and 99.9 % points of chi-square with 99 degrees of freedom are 61.1 and 148.2 (printed tables).
   */
  @Test
  void numbersAreEvenlySpread() {
    int n = 200_000;
    SeededRandom d = new SeededRandom(77, "even");
    spread(IntStream.range(0, n).mapToDouble(i -> d.simulation(i).uniform(0)).toArray());
    spread(IntStream.range(0, n).mapToDouble(i -> d.simulation(0).uniform(i)).toArray());
    spread(IntStream.range(0, n).mapToDouble(i -> d.simulation(i / 40).uniform(i % 40)).toArray());
    spread(
        IntStream.range(0, n)
            .mapToDouble(i -> new SeededRandom(i, "even").simulation(0).uniform(0))
            .toArray());
    spread(
        IntStream.range(0, n)
            .mapToDouble(i -> new SeededRandom(77, "r" + i).simulation(0).uniform(0))
            .toArray());
  }

  /** Neighbours in draw, variable, seed and id do not follow each other: |r| below 4/sqrt(n). */
  @Test
  void neighboursAreUncorrelated() {
    int n = 50_000;
    SeededRandom d = new SeededRandom(8, "near");
    SeededRandom next = new SeededRandom(9, "near");
    double[] sums = new double[3];
    for (int i = 0; i < n; i++) {
      double u = d.simulation(i).uniform(0) - 0.5;
      sums[0] += u * (d.simulation(i + 1).uniform(0) - 0.5);
      sums[1] += u * (d.simulation(i).uniform(1) - 0.5);
      sums[2] += u * (next.simulation(i).uniform(0) - 0.5);
    }
    for (double sum : sums) {
      assertEquals(0, sum / n * 12, 4 / Math.sqrt(n));
    }
  }

  @Test
  void uniformIsNeverAnEnd() {
    assertEquals(0x1p-53, SeededRandom.unit(0L));
    assertEquals(1 - 0x1p-53, SeededRandom.unit(-1L));
    SeededRandom d = new SeededRandom(1, "ends");
    for (int i = 0; i < 100_000; i++) {
      double u = d.simulation(i).uniform(0);
      assertTrue(u > 0 && u < 1);
    }
  }

  /** Mean (low + mode + high)/3 and variance of the triangular distribution. */
  @Test
  void triangularHasItsMeanAndVariance() {
    int n = 100_000;
    SeededRandom d = new SeededRandom(4, "triangle");
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double x = d.simulation(i).triangular(2, 0.05, 0.08, 0.15);
      assertTrue(x >= 0.05 && x <= 0.15);
      sum += x;
      squares += x * x;
    }
    double mean = 0.28 / 3;
    double variance =
        (0.05 * 0.05 + 0.08 * 0.08 + 0.15 * 0.15 - 0.05 * 0.08 - 0.05 * 0.15 - 0.08 * 0.15) / 18;
    assertEquals(mean, sum / n, 4 * Math.sqrt(variance / n));
    assertEquals(variance, squares / n - mean * mean, 0.03 * variance);
    assertEquals(2, d.simulation(0).triangular(2, 2, 2, 2), 0, "a known value");
  }

  private static void spread(double[] values) {
    int[] cells = new int[100];
    for (double v : values) {
      cells[(int) (v * 100)]++;
    }
    double expected = values.length / 100.0;
    double chi = 0;
    for (int c : cells) {
      chi += (c - expected) * (c - expected) / expected;
    }
    assertTrue(chi > 61.1 && chi < 148.2, "chi-square " + chi);
  }
}
