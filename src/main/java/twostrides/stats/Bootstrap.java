package twostrides.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Intervals by resampling whole clusters, with replacement. Trials of one cluster are more alike
 * than trials of two, so an interval that takes them as independent is too narrow; resampling
 * clusters keeps what belongs together. Percentile method: Efron and Tibshirani 1993, An
 * Introduction to the Bootstrap, chapter 13, with points farther out than 2.5 and 97.5 %: m
 * clusters resampled vary (m - 1) / m as much as they should, and a normal number of so few has
 * longer tails, so the points are those of minus and plus sqrt(m / (m - 1)) t, with t the 97.5 %
 * point of Student's distribution on m - 1 degrees of freedom. Source: Hesterberg 2014, arXiv
 * 1411.5279 (expanded percentile interval). On invented clusters of 25 trials that hung together,
 * it held the true share in 94 to 96 % of runs with 10, 12, 20 and 40 clusters; the plain points
 * held it in 91 % with 10.
 *
 * <p>The same seed, resamples and clusters in the same order give the same result; one thread.
 *
 * @param seed start of the random numbers
 * @param resamples how often to resample, 1 or more; 2000 steady the third digit
 */
public record Bootstrap(long seed, int resamples) {

  /** Fewest clusters for an interval, assumed: fewer were not tried. */
  public static final int FEWEST_CLUSTERS = 10;

  /** Rejects a number of resamples below 1. */
  public Bootstrap {
    if (resamples < 1) {
      throw new IllegalArgumentException("a bootstrap needs 1 resample or more, not " + resamples);
    }
  }

  /**
   * What the resamples gave.
   *
   * @param value the statistic of the clusters as they are; empty where it has no value
   * @param interval 95 % interval from the resamples with a value; empty with fewer than {@link
   *     #FEWEST_CLUSTERS} clusters or where some resamples in twenty or more have no value
   * @param resamples how often clusters were resampled
   * @param withoutValue resamples whose statistic had no value; they are left out
   */
  public record Resampled(
      OptionalDouble value, Optional<Range> interval, int resamples, int withoutValue) {}

  /**
   * Any statistic of clusters. A share whose successes are rare is not one of them: resamples hold
   * none or always the same few and the interval is much too narrow; use {@link Clustered}.
   *
   * @param statistic takes as many clusters as were given, some of them repeatedly; the list is
   *     used again for the next resample. A value that is not finite counts as none
   */
  public <T> Resampled of(List<T> clusters, Function<List<T>, OptionalDouble> statistic) {
    return ofSeveral(clusters, some -> new double[] {statistic.apply(some).orElse(Double.NaN)})
        .get(0);
  }

  /**
   * Several statistics of the same resamples, each as {@link #of} would give it.
   *
   * @param statistics the same number of values each time; one that is not finite counts as none
   */
  public <T> List<Resampled> ofSeveral(List<T> clusters, Function<List<T>, double[]> statistics) {
    double[] whole = statistics.apply(List.copyOf(clusters));
    if (clusters.size() < FEWEST_CLUSTERS) {
      return Arrays.stream(whole)
          .mapToObj(v -> new Resampled(finite(v), Optional.empty(), 0, 0))
          .toList();
    }
    SplittableRandom random = new SplittableRandom(seed);
    double[][] values = new double[whole.length][resamples];
    int[] found = new int[whole.length];
    List<T> resampled = new ArrayList<>(clusters);
    for (int resample = 0; resample < resamples; resample++) {
      for (int i = 0; i < clusters.size(); i++) {
        resampled.set(i, clusters.get(random.nextInt(clusters.size())));
      }
      double[] some = statistics.apply(resampled);
      for (int k = 0; k < some.length; k++) {
        if (Double.isFinite(some[k])) {
          values[k][found[k]++] = some[k];
        }
      }
    }
    double tail = tail(clusters.size());
    List<Resampled> out = new ArrayList<>();
    for (int k = 0; k < whole.length; k++) {
      int without = resamples - found[k];
      Optional<Range> interval = interval(Arrays.copyOf(values[k], found[k]), without, tail);
      out.add(new Resampled(finite(whole[k]), interval, resamples, without));
    }
    return out;
  }

  private static OptionalDouble finite(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  /** A twentieth without value could hide a whole tail, so there is no interval then. */
  private static Optional<Range> interval(double[] values, int without, double tail) {
    if (values.length == 0 || without * 20L >= values.length + (long) without) {
      return Optional.empty();
    }
    Arrays.sort(values);
    return Optional.of(new Range(point(values, tail), point(values, 1 - tail)));
  }

  /**
   * The part of the resamples to leave out at each end: 0.0086 of 10 clusters, 0.025 of very many.
   */
  static double tail(int clusters) {
    double freedom = clusters - 1.0;
    double t = new TDistribution(freedom).inverseCumulativeProbability(0.975);
    return LogisticFit.twoSided(t * Math.sqrt(clusters / freedom)) / 2;
  }

  /** The quantile between sorted values: position part (n - 1), Hyndman and Fan 1996, type 7. */
  private static double point(double[] sorted, double part) {
    double position = part * (sorted.length - 1);
    int below = (int) Math.floor(position);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
  }
}
