package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.stats.Bootstrap.Resampled;

/** Drawing clusters again: same seed, same interval; wider where a cluster's trials agree. */
class BootstrapTest {

  private static final Bootstrap BOOTSTRAP = new Bootstrap(42, 4000);

  private static List<Count> ones(int clusters, int each, int successful) {
    return IntStream.range(0, clusters)
        .mapToObj(i -> new Count(i < successful ? each : 0, each))
        .toList();
  }

  /** Clusters of one trial are plain trials: the interval is p ∓ 1.96 sqrt(p (1 - p) / n). */
  @Test
  void singleTrialsGiveTheBinomialInterval() {
    Range range = BootstrapShare.of(BOOTSTRAP, ones(400, 1, 120)).interval().orElseThrow();
    double half = 1.96 * Math.sqrt(.3 * .7 / 400);
    assertEquals(.3 - half, range.low(), .005);
    assertEquals(.3 + half, range.high(), .005);
  }

  /** Forty clusters whose ten trials all agree carry what forty trials do. */
  @Test
  void agreeingTrialsOfAClusterCountOnce() {
    Range range = BootstrapShare.of(BOOTSTRAP, ones(40, 10, 12)).interval().orElseThrow();
    double half = 1.96 * Math.sqrt(.3 * .7 / 40);
    assertEquals(2 * half, range.high() - range.low(), .03);
    Interval naive = new Count(120, 400).wilson().orElseThrow();
    assertTrue(range.high() - range.low() > 2.5 * (naive.high() - naive.low()));
  }

  /** Validation: 97.5 % points of Student's distribution as every table has them. */
  @ParameterizedTest
  @CsvSource({"10, 2.262157", "12, 2.200985", "31, 2.042272", "100001, 1.959988"})
  void pointsLieAsFarOutAsStudentsTable(int clusters, double t) {
    double z = t * Math.sqrt(clusters / (clusters - 1.0));
    assertEquals(Erf.erfc(z / Math.sqrt(2)) / 2, Bootstrap.tail(clusters), 1e-7);
  }

  @Test
  void sameSeedSameResult() {
    List<Count> clusters = new ArrayList<>(List.of(c(3, 9), c(1, 4), c(0, 7), c(5, 6), c(2, 2)));
    clusters.addAll(List.of(c(4, 11), c(3, 8), c(0, 1), c(6, 9), c(2, 5)));
    Resampled once = BootstrapShare.of(BOOTSTRAP, clusters);
    assertEquals(once, BootstrapShare.of(BOOTSTRAP, clusters));
    assertNotEquals(
        once.interval(), BootstrapShare.of(new Bootstrap(43, 4000), clusters).interval());
    assertEquals(26.0 / 62, once.value().orElseThrow(), 1e-15);
    assertEquals(4000, once.resamples());
    assertEquals(0, once.withoutValue());
  }

  private static Count c(int successes, int trials) {
    return new Count(successes, trials);
  }

  /** A ratio of two sums that is no share, drawn pair by pair. */
  @Test
  void anyStatisticOfClustersIsDrawn() {
    record Pair(double seconds, int times) {}
    List<Pair> pairs = IntStream.range(0, 50).mapToObj(i -> new Pair(6.0 * i, 2 * i)).toList();
    Resampled drawn =
        BOOTSTRAP.of(
            pairs,
            some -> {
              double seconds = some.stream().mapToDouble(Pair::seconds).sum();
              int times = some.stream().mapToInt(Pair::times).sum();
              return times == 0 ? OptionalDouble.empty() : OptionalDouble.of(seconds / times);
            });
    assertEquals(3, drawn.interval().orElseThrow().low(), 1e-12);
    assertEquals(3, drawn.interval().orElseThrow().high(), 1e-12);
  }

  @Test
  void drawsWithoutValueAreCountedAndMayForbidAnInterval() {
    List<Count> clusters = new ArrayList<>(Collections.nCopies(10, c(0, 0)));
    clusters.set(3, c(1, 2));
    Resampled drawn = BootstrapShare.of(BOOTSTRAP, clusters);
    assertEquals(4000 * Math.pow(.9, 10), drawn.withoutValue(), 130);
    assertEquals(Optional.empty(), drawn.interval());
    assertEquals(OptionalDouble.of(.5), drawn.value());
    Resampled infinite = BOOTSTRAP.of(clusters, x -> OptionalDouble.of(Double.NaN));
    assertEquals(new Resampled(OptionalDouble.empty(), Optional.empty(), 4000, 4000), infinite);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 9})
  void fewClustersGiveNoInterval(int clusters) {
    Resampled drawn = BootstrapShare.of(BOOTSTRAP, Collections.nCopies(clusters, c(1, 3)));
    assertEquals(Optional.empty(), drawn.interval());
    assertEquals(clusters > 0, drawn.value().isPresent());
  }

  @Test
  void noDrawsAreRejected() {
    assertThrows(IllegalArgumentException.class, () -> new Bootstrap(1, 0));
  }
}
