package twostrides.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A share over clusters, the days of a year for one: trials of one cluster may hang together, which
 * plain {@link Count#wilson()} does not allow for.
 *
 * <p>The Wilson interval of the same share on fewer trials, n / d. The design effect d is the
 * variance of the share over clusters, m / (m - 1) sum (y - n_i p)² / n² for m clusters, by that of
 * independent trials, p (1 - p) / n. Source: Rao and Scott 1992, Biometrics 48:577 (from memory).
 * Below 1 it counts as 1: few clusters often look more alike than chance would make them, and no
 * interval should gain by that. Unlike resampling clusters ({@link Bootstrap}) it also holds for
 * rare successes: docs/checks.md.
 *
 * @param clusters what was counted in each
 */
public record Clustered(List<Count> clusters) {

  /** Copies the counts. */
  public Clustered {
    clusters = List.copyOf(clusters);
  }

  /** One cluster: its trials count as independent, so that the interval is plain Wilson. */
  public Clustered(Count only) {
    this(List.of(only));
  }

  /** Both, cluster by cluster; clusters that the shorter list lacks have no trials there. */
  public Clustered plus(Clustered other) {
    List<Count> sums = new ArrayList<>();
    for (int i = 0; i < Math.max(clusters.size(), other.clusters.size()); i++) {
      sums.add(at(i).plus(other.at(i)));
    }
    return new Clustered(sums);
  }

  private Count at(int cluster) {
    return cluster < clusters.size() ? clusters.get(cluster) : new Count(0, 0);
  }

  /** All clusters together. */
  public Count total() {
    return clusters.stream().reduce(new Count(0, 0), Count::plus);
  }

  /**
   * How many times the variance of independent trials, 1 or more; 1 where all trials succeed or all
   * fail, and with fewer than two clusters that have trials.
   */
  public double designEffect() {
    Count total = total();
    long telling = clusters.stream().filter(c -> c.trials() > 0).count();
    if (telling < 2 || total.successes() == 0 || total.successes() == total.trials()) {
      return 1;
    }
    double p = total.share().orElseThrow();
    double squares = 0;
    for (Count c : clusters) {
      double off = c.successes() - c.trials() * p;
      squares += off * off;
    }
    double binomial = total.trials() * p * (1 - p);
    return Math.max(1, telling / (telling - 1.0) * squares / binomial);
  }

  /** 95 % interval of the share of all clusters together; empty without trials. */
  public Optional<Interval> interval() {
    return total().wilson(designEffect());
  }
}
