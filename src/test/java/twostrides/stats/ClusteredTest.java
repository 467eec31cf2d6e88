package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.Test;

/** A share over clusters: Wilson's where trials are independent, wider where they are not. */
class ClusteredTest {

  /** 12 of 40 clusters of ten trials succeed as one: worth 39 trials, 40 less the one for p. */
  @Test
  void agreeingTrialsOfAClusterCountOnce() {
    List<Count> counts = new ArrayList<>(Collections.nCopies(12, new Count(10, 10)));
    counts.addAll(Collections.nCopies(28, new Count(0, 10)));
    Clustered clustered = new Clustered(counts);
    assertEquals(400 / 39.0, clustered.designEffect(), 1e-12);
    // (2np + z² ∓ z sqrt(z² + 4np(1 - p))) / (2(n + z²)) with n 39, p 0.3, by hand
    assertEquals(0.17954, clustered.interval().orElseThrow().low(), 1e-5);
    assertEquals(0.45632, clustered.interval().orElseThrow().high(), 1e-5);
  }

  /** Two clusters, 3 of 10 and 7 of 20: p 1/3, squares 2 (1/3)², by binomial 20/3. */
  @Test
  void clustersMoreAlikeThanChanceGainNothing() {
    Clustered clustered = new Clustered(List.of(new Count(3, 10), new Count(7, 20)));
    assertEquals(1, clustered.designEffect());
    assertEquals(new Count(10, 30).wilson(), clustered.interval());
  }

  @Test
  void clustersWithoutTrialsDoNotCount() {
    List<Count> counts = List.of(new Count(9, 10), new Count(0, 0), new Count(1, 10));
    // p 1/2, squares 2 x 4², twice that for two clusters, by 20/4
    assertEquals(2 * 32 / 5.0, new Clustered(counts).designEffect(), 1e-12);
    assertEquals(1, new Clustered(List.of(new Count(3, 10), new Count(0, 0))).designEffect());
    assertEquals(Optional.empty(), new Clustered(List.of()).interval());
    assertEquals(Optional.empty(), new Clustered(List.of(new Count(0, 0))).interval());
  }

  @Test
  void sumsGoClusterByCluster() {
    Clustered long3 = new Clustered(List.of(new Count(1, 2), new Count(0, 0), new Count(2, 5)));
    Clustered one = new Clustered(new Count(3, 4));
    Clustered sum = new Clustered(List.of(new Count(4, 6), new Count(0, 0), new Count(2, 5)));
    assertEquals(sum, long3.plus(one));
    assertEquals(sum, one.plus(long3));
    assertEquals(one, new Clustered(List.of()).plus(one));
    assertEquals(new Count(3, 4).wilson(), one.interval());
  }

  @Test
  void noSuccessAnywhereIsWilsons() {
    Clustered clustered = new Clustered(Collections.nCopies(12, new Count(0, 7)));
    assertEquals(new Count(0, 84).wilson(), clustered.interval());
  }

  /** Beta clusters of 25 trials, correlation 1/21, so d = 1 + 24/21: plain Wilson holds 82 %. */
  @Test
  void holdsWhereTrialsHangTogether() {
    SplittableRandom random = new SplittableRandom(9);
    BetaDistribution shares = new BetaDistribution(6, 14);
    int held = 0;
    int plain = 0;
    for (int run = 0; run < 400; run++) {
      List<Count> counts = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        double share = shares.inverseCumulativeProbability(random.nextDouble());
        int k = 0;
        for (int trial = 0; trial < 25; trial++) {
          k += random.nextDouble() < share ? 1 : 0;
        }
        counts.add(new Count(k, 25));
      }
      Clustered clustered = new Clustered(counts);
      held += holds(clustered.interval().orElseThrow());
      plain += holds(clustered.total().wilson().orElseThrow());
    }
    assertTrue(0.92 * 400 <= held && held <= 0.97 * 400, held + " of 400");
    assertTrue(plain < 0.87 * 400, plain + " of 400");
  }

  private static int holds(Interval interval) {
    return interval.low() <= 0.3 && 0.3 <= interval.high() ? 1 : 0;
  }
}
