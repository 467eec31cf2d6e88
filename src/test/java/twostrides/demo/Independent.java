package twostrides.demo;

import java.util.Optional;
import twostrides.stats.Count;
import twostrides.stats.Difference;
import twostrides.stats.Interval;
import twostrides.stats.Range;

/**
 * How often 95 % intervals of independent trials hold the truth, counted out over all outcomes by
 * the binomial distribution. What is off 95 % here comes from whole numbers.
 */
final class Independent {

  /** Outcomes rarer than this are left out. */
  private static final double RAREST = 1e-12;

  private Independent() {}

  /** The chance of a count whose Wilson interval holds the share. */
  static double share(int trials, double share) {
    double[] chances = chances(trials, share);
    double sum = 0;
    for (int k = 0; k <= trials; k++) {
      if (chances[k] > RAREST) {
        Interval i = new Count(k, trials).wilson().orElseThrow();
        sum += i.low() <= share && share <= i.high() ? chances[k] : 0;
      }
    }
    return sum;
  }

  /** The chance of two counts whose Newcombe interval holds the difference. */
  static double difference(int trials1, double share1, int trials2, double share2) {
    double[] first = chances(trials1, share1);
    double[] second = chances(trials2, share2);
    double sum = 0;
    for (int i = 0; i <= trials1; i++) {
      for (int j = 0; j <= trials2; j++) {
        if (first[i] * second[j] > RAREST) {
          Optional<Range> r =
              new Difference(new Count(i, trials1), new Count(j, trials2)).interval();
          sum += r.orElseThrow().contains(share1 - share2) ? first[i] * second[j] : 0;
        }
      }
    }
    return sum;
  }

  private static double[] chances(int trials, double share) {
    double[] chances = new double[trials + 1];
    chances[0] = Math.pow(1 - share, trials);
    for (int k = 0; k < trials; k++) {
      chances[k + 1] = chances[k] * (trials - k) / (k + 1.0) * share / (1 - share);
    }
    return chances;
  }
}
