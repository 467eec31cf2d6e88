package twostrides.stats;

import static java.util.Arrays.stream;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hipparchus.special.Erf;

/**
 * Whether two groups wait differently long.
 *
 * <p>At each time with an event, of n at risk n1 in the first group and d events, d n1 / n are
 * expected in the first group, with variance d (n1 / n)(1 - n1 / n)(n - d) / (n - 1). Chi-square is
 * (observed - expected)² over the sum of variances, with one degree of freedom. Source: Mantel
 * 1966, Cancer Chemotherapy Reports 50:163; Peto and Peto 1972, JRSS A 135:185.
 *
 * @param firstEvents events in the first group
 * @param firstExpected events expected there if both waited alike
 * @param secondEvents events in the second group
 * @param secondExpected events expected there if both waited alike
 * @param chiSquare 0 or more
 * @param p chance of so large a chi-square if both wait alike, 0 to 1
 */
public record LogRank(
    int firstEvents,
    double firstExpected,
    int secondEvents,
    double secondExpected,
    double chiSquare,
    double p) {

  /** Compares the groups; empty where no event falls while both groups are at risk. */
  public static Optional<LogRank> of(List<CensoredTime> first, List<CensoredTime> second) {
    double[] waits1 = sorted(first, false);
    double[] waits2 = sorted(second, false);
    double[] ends1 = sorted(first, true);
    double[] ends2 = sorted(second, true);
    double[] times =
        DoubleStream.concat(stream(ends1), stream(ends2)).sorted().distinct().toArray();
    double expected1 = 0;
    double expected2 = 0;
    double variance = 0;
    for (double time : times) {
      double n1 = (double) waits1.length - before(waits1, time);
      double n2 = (double) waits2.length - before(waits2, time);
      double n = n1 + n2;
      double next = Math.nextUp(time);
      double d1 = (double) before(ends1, next) - before(ends1, time);
      double d2 = (double) before(ends2, next) - before(ends2, time);
      double d = d1 + d2;
      expected1 += d * (n1 / n);
      expected2 += d * (n2 / n);
      variance += n > 1 ? d * (n1 / n) * (n2 / n) * ((n - d) / (n - 1)) : 0;
    }
    if (!(variance > 0)) {
      return Optional.empty();
    }
    double excess = ends1.length - expected1;
    double chiSquare = excess * excess / variance;
    double p = Erf.erfc(Math.sqrt(chiSquare / 2));
    return Optional.of(new LogRank(ends1.length, expected1, ends2.length, expected2, chiSquare, p));
  }

  /** The seconds in rising order, of all waits or of those that ended. */
  private static double[] sorted(List<CensoredTime> waits, boolean endedOnly) {
    return waits.stream()
        .filter(w -> w.ended() || !endedOnly)
        .mapToDouble(CensoredTime::seconds)
        .sorted()
        .toArray();
  }

  /** How many of the sorted values are below the bound. */
  private static int before(double[] sorted, double bound) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < bound) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
