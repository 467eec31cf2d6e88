package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

class DrawsTest {

  /**
   * Validation: quantiles of the standard normal as in the check values of Wichura 1988, AS 241
   * (0.25, 0.001, 1e-20), and the usual two-sided points of printed tables; digits beyond the
   * tables from scipy.stats.norm.ppf.
   */
  @Test
  void normalQuantilesAreThePublishedOnes() {
    assertEquals(-0.6744897501960817, NormalQuantile.of(0.25), 1e-15);
    assertEquals(-3.090232306167814, NormalQuantile.of(0.001), 1e-14);
    assertEquals(-9.26234008979841, NormalQuantile.of(1e-20), 1e-13);
    assertEquals(1.959963984540054, NormalQuantile.of(0.975), 1e-14);
    assertEquals(1.6448536269514722, NormalQuantile.of(0.95), 1e-14);
    assertEquals(2.5758293035489004, NormalQuantile.of(0.995), 1e-13);
    assertEquals(0, NormalQuantile.of(0.5));
  }

  /** The error function of another library leads back to p, over all three ranges. */
  @Test
  void theDistributionFunctionUndoesTheQuantile() {
    for (double x = 0.5; x < 700; x *= 1.01) {
      double p = Math.exp(-x);
      double q = NormalQuantile.of(p);
      assertEquals(1, Erf.erfc(-q / Math.sqrt(2)) / 2 / p, 1e-12 * (1 + x));
      double high = Math.min(1 - p, 1 - 0x1p-53);
      assertEquals(
          1 - high, Erf.erfc(NormalQuantile.of(high) / Math.sqrt(2)) / 2, 1e-12 * (1 - high));
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
        new double[] {d.uniform(0, 0), d.uniform(1, 0), d.uniform(0, 1), d.uniform(1999, 40)});
  }

  @Test
  void orderAndThreadsDoNotMatter() {
    SeededRandom d = new SeededRandom(5, "any");
    double[] forward = IntStream.range(0, 5_000).mapToDouble(i -> d.uniform(i, i % 7)).toArray();
    double[] again =
        IntStream.range(0, 5_000).parallel().mapToDouble(i -> d.uniform(i, i % 7)).toArray();
    double[] back = new double[5_000];
    for (int i = back.length - 1; i >= 0; i--) {
      back[i] = new SeededRandom(5, "any").uniform(i, i % 7);
    }
    assertArrayEquals(forward, again);
    assertArrayEquals(forward, back);
  }

  @Test
  void seedAndReleaseAndIndexAllCount() {
    double u = new SeededRandom(5, "a").uniform(3, 4);
    assertNotEquals(u, new SeededRandom(6, "a").uniform(3, 4));
    assertNotEquals(u, new SeededRandom(5, "b").uniform(3, 4));
    assertNotEquals(u, new SeededRandom(5, "a").uniform(4, 3));
    Set<Double> seen = new HashSet<>();
    for (int draw = 0; draw < 500; draw++) {
      for (int variable = 0; variable < 40; variable++) {
        assertTrue(seen.add(new SeededRandom(0, "").uniform(draw, variable)));
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
    spread(IntStream.range(0, n).mapToDouble(i -> d.uniform(i, 0)).toArray());
    spread(IntStream.range(0, n).mapToDouble(i -> d.uniform(0, i)).toArray());
    spread(IntStream.range(0, n).mapToDouble(i -> d.uniform(i / 40, i % 40)).toArray());
    spread(IntStream.range(0, n).mapToDouble(i -> new SeededRandom(i, "even").uniform(0, 0)).toArray());
    spread(IntStream.range(0, n).mapToDouble(i -> new SeededRandom(77, "r" + i).uniform(0, 0)).toArray());
  }

  /** Neighbours in draw, variable, seed and id do not follow each other: |r| below 4/sqrt(n). */
  @Test
  void neighboursAreUncorrelated() {
    int n = 50_000;
    SeededRandom d = new SeededRandom(8, "near");
    SeededRandom next = new SeededRandom(9, "near");
    double[] sums = new double[3];
    for (int i = 0; i < n; i++) {
      double u = d.uniform(i, 0) - 0.5;
      sums[0] += u * (d.uniform(i + 1, 0) - 0.5);
      sums[1] += u * (d.uniform(i, 1) - 0.5);
      sums[2] += u * (next.uniform(i, 0) - 0.5);
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
      double u = d.uniform(i, 0);
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
      double x = d.triangular(i, 2, 0.05, 0.08, 0.15);
      assertTrue(x >= 0.05 && x <= 0.15);
      sum += x;
      squares += x * x;
    }
    double mean = 0.28 / 3;
    double variance =
        (0.05 * 0.05 + 0.08 * 0.08 + 0.15 * 0.15 - 0.05 * 0.08 - 0.05 * 0.15 - 0.08 * 0.15) / 18;
    assertEquals(mean, sum / n, 4 * Math.sqrt(variance / n));
    assertEquals(variance, squares / n - mean * mean, 0.03 * variance);
    assertEquals(0.08, SeededRandom.triangular(0.3, 0.05, 0.08, 0.15), 1e-15);
    assertEquals(0.15, SeededRandom.triangular(1, 0.05, 0.15, 0.15), 1e-15);
    assertEquals(2, SeededRandom.triangular(0.4, 2, 2, 2), 1e-15);
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
