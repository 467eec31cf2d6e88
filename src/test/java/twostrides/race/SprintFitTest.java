package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SprintFitTest {

  private static final double[] DISTANCES = {5, 10, 15, 20, 30, 40};
  private static final double[] TIMES = {1.158, 1.893, 2.541, 3.149, 4.313, 5.444};

  /**
   * Validation: worked fit in the README of the R package shorts (Jovanovic and Vescovi, commit
   * 06d389e), a runner's splits as written: vm 8.5911, tau 0.8113 and the residuals below.
   */
  @Test
  void thePublishedFitWithoutCorrectionIsReproduced() {
    SprintFit f = SprintFit.of(DISTANCES, TIMES, 0);
    assertEquals(8.5911, f.topSpeed(), 0.00005);
    assertEquals(0.8113, f.tau(), 0.00005);
    double[] published = {-0.053, -0.004, 0.020, 0.027, 0.014, -0.022};
    for (int i = 0; i < published.length; i++) {
      assertEquals(published[i], residual(f, i), 0.0005);
    }
  }

  /**
   * Validation: the same README with 0.3 s added to every time: vm 9.1278, tau 1.3776, greatest
   * error 0.0164 s.
   */
  @Test
  void thePublishedFitWithCorrectionIsReproduced() {
    SprintFit f = SprintFit.of(DISTANCES, TIMES, 0.3);
    assertEquals(9.1278, f.topSpeed(), 0.00005);
    assertEquals(1.3776, f.tau(), 0.00005);
    double greatest =
        IntStream.range(0, 6).mapToDouble(i -> Math.abs(residual(f, i))).max().orElseThrow();
    assertEquals(0.0164, greatest, 0.00005);
    assertEquals(0.3, f.offset());
  }

  /**
   * Validation, as above, for the first fit: 95 % of top speed at 14 m, half the first acceleration
   * at 1.3 m, both read to whole digits; the model gives 14.25 and 1.35 m.
   */
  @Test
  void theFittedCurveReachesItsMarks() {
    SprintFit f = SprintFit.of(DISTANCES, TIMES, 0);
    double fast = f.tau() * Math.log(20);
    double half = f.tau() * Math.log(2);
    assertEquals(14.25, SprintTest.distance(fast, 0, f.topSpeed(), f.tau()), 0.01);
    assertEquals(1.35, SprintTest.distance(half, 0, f.topSpeed(), f.tau()), 0.01);
  }

  @Test
  void exactSplitsGiveBackTheSkaterAndTheOffset() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 200; i++) {
      double vm = random.nextDouble(6, 11);
      double tau = random.nextDouble(0.7, 2);
      double offset = random.nextDouble(0, 0.4);
      double[] times = new double[DISTANCES.length];
      double[] late = new double[DISTANCES.length];
      for (int k = 0; k < times.length; k++) {
        times[k] = SprintTest.time(DISTANCES[k], 0, vm, tau);
        late[k] = times[k] - offset;
      }
      SprintFit plain = SprintFit.of(DISTANCES, times, 0);
      assertEquals(vm, plain.topSpeed(), 1e-6);
      assertEquals(tau, plain.tau(), 1e-6);
      SprintFit free = SprintFit.withOffset(DISTANCES, late);
      assertEquals(vm, free.topSpeed(), 1e-5);
      assertEquals(tau, free.tau(), 1e-5);
      assertEquals(offset, free.offset(), 1e-5);
    }
  }

  /** A third parameter can only come closer, and its minimum is flat in every direction. */
  @Test
  void theFittedOffsetIsTheBestOffset() {
    SprintFit free = SprintFit.withOffset(DISTANCES, TIMES);
    assertTrue(free.offset() > 0.1 && free.offset() < 0.6, "" + free.offset());
    double best = rss(free);
    for (double shift : new double[] {-0.02, 0, 0.02}) {
      double given = rss(SprintFit.of(DISTANCES, TIMES, free.offset() + shift));
      assertTrue(shift == 0 ? Math.abs(given - best) < 1e-10 : given > best, "" + shift);
    }
  }

  @Test
  void splitsThatCannotBeUsedAreRefusedInWords() {
    refused("at least 3 splits, not 2", new double[] {5, 10}, new double[] {1, 2});
    refused("3 distances, 2 times", new double[] {5, 10, 15}, new double[] {1, 2});
    refused("times must rise", new double[] {5, 10, 15}, new double[] {1.2, 2, 1.9});
    refused("times must rise", new double[] {5, 10, 15}, new double[] {1.2, Double.NaN, 3});
    refused("distances must rise", new double[] {0, 10, 15}, new double[] {1.2, 2, 3});
    assertThrows(
        IllegalArgumentException.class,
        () -> SprintFit.withOffset(new double[] {5, 10, 15}, new double[] {1.2, 2, 2.7}));
    assertThrows(IllegalArgumentException.class, () -> SprintFit.of(DISTANCES, TIMES, -2));
  }

  /** Slower and slower: no skater who pushes on does that. */
  @Test
  void splitsThatNoSprintMakesAreRefused() {
    double[] distances = {5, 10, 15, 20};
    double[] slowing = {0.5, 1.2, 2.2, 3.6};
    assertThrows(
        IllegalArgumentException.class, () -> SprintFit.of(distances, slowing, 0).topSpeed());
  }

  private static void refused(String words, double[] distances, double[] times) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> SprintFit.of(distances, times, 0))
            .getMessage();
    assertTrue(message.contains(words), message);
  }

  /** Written time and offset less fitted time, s. */
  private static double residual(SprintFit f, int split) {
    double fitted = SprintTest.time(DISTANCES[split], 0, f.topSpeed(), f.tau());
    return TIMES[split] + f.offset() - fitted;
  }

  private static double rss(SprintFit f) {
    return IntStream.range(0, TIMES.length).mapToDouble(i -> residual(f, i) * residual(f, i)).sum();
  }
}
