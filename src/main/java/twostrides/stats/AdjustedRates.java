package twostrides.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;

/**
 * The shares of members of a group, each adjusted by those of all: a share of few cases leans on
 * the others, the more the fewer cases it has.
 *
 * <p>Model: successes are binomial; a member's rate follows the group's beta distribution with mean
 * m and spread t = 1 / (alpha + beta), but with a chance of {@link #APART} from a wide one with the
 * same mean, so that one who is unlike the rest is neither pulled all the way to it nor taken for
 * proof that all differ (robust mixture: Berger and Berliner 1986, Annals of Statistics 14:461, for
 * one such "contamination"). What is not known of m and t is never set to a best value but averaged
 * over, by likelihood, with all m alike beforehand and all sqrt(t) alike (the prior of Gelman et
 * al., Bayesian Data Analysis, section 5.3). There is no switch to a common share: members who look
 * alike by chance keep the interval that allows for their not being so.
 *
 * <p>Sums over grids: spreads, means about the pooled share, and {@link ShareGrid} for the shares.
 * Members without trials say nothing. The order of members does not matter.
 */
public final class AdjustedRates {

  /**
   * Fewest members of two trials or more; below, nothing can be said of how they differ. Assumed.
   */
  private static final int FEWEST_MEMBERS = 3;

  /**
   * Chance that a member is unlike the rest. Assumed: 0.02 and 0.10 hold one who is in 82 and 89 %
   * instead of 87 %, and change nothing else by more than a point (docs/checks.md).
   */
  static final double APART = 0.05;

  /** Cases that the wide distribution counts for, alpha + beta. Assumed. */
  private static final double WIDE = 2;

  /** Largest root of the spread, assumed: a prior of one case. */
  private static final double WIDEST = 1;

  /** Below this root of the spread, a prior of 2,500 cases, all spreads are taken as one. */
  private static final double NARROWEST = 0.02;

  /**
   * Spreads, each the middle of a range of roots, ranges growing by one factor. 100 of them and
   * 2,000 cells change no rate or end by 0.001, but where members are all or none.
   */
  private static final int SPREADS = 16;

  /** Means about the pooled share for each spread, in standard errors to either side and apart. */
  private static final double REACH = 4.5;

  private static final double APART_BY = 0.75;

  private static final Comparator<Count> ORDER =
      Comparator.comparingInt(Count::trials).thenComparingInt(Count::successes);

  /**
   * One mean and spread.
   *
   * @param shares how a member's share is distributed for it, on the grid
   * @param cases 1 / spread
   * @param mean the mean
   * @param weight how likely they are; the weights sum to 1
   */
  record Belief(ShareGrid shares, double mean, double cases, double weight) {}

  private final List<Belief> beliefs;
  private final Map<Count, AdjustedRate> rates;

  private AdjustedRates(List<Belief> beliefs, Map<Count, AdjustedRate> rates) {
    this.beliefs = beliefs;
    this.rates = rates;
  }

  /** From the members' counts. */
  public static AdjustedRates of(List<Count> members) {
    return of(members, APART);
  }

  /**
   * The same with another chance of being unlike the rest.
   *
   * @param apart 0 to 1
   */
  static AdjustedRates of(List<Count> members, double apart) {
    if (members.stream().filter(c -> c.trials() >= 2).count() < FEWEST_MEMBERS) {
      return new AdjustedRates(List.of(), Map.of());
    }
    Map<Count, Integer> times = new TreeMap<>(ORDER);
    members.stream().filter(c -> c.trials() > 0).forEach(c -> times.merge(c, 1, Integer::sum));
    List<Belief> before = before(times, apart);
    double[] log = before.stream().mapToDouble(b -> Math.log(b.weight())).toArray();
    Map<Count, double[]> evidence = new TreeMap<>(ORDER);
    times.forEach(
        (count, n) -> {
          ShareGrid likelihood = ShareGrid.likelihood(count);
          double[] chance = new double[log.length];
          for (int i = 0; i < log.length; i++) {
            chance[i] = before.get(i).shares().sumOfProducts(likelihood);
            log[i] += n * Math.log(chance[i]);
          }
          evidence.put(count, chance);
        });
    double highest = DoubleStream.of(log).max().orElseThrow();
    double sum = DoubleStream.of(log).map(l -> Math.exp(l - highest)).sum();
    List<Belief> beliefs = new ArrayList<>();
    for (int i = 0; i < log.length; i++) {
      Belief b = before.get(i);
      beliefs.add(new Belief(b.shares(), b.mean(), b.cases(), Math.exp(log[i] - highest) / sum));
    }
    Map<Count, AdjustedRate> rates = new TreeMap<>(ORDER);
    evidence.forEach((count, chance) -> rates.put(count, rate(beliefs, count, chance)));
    return new AdjustedRates(List.copyOf(beliefs), rates);
  }

  /**
   * The rate of a member.
   *
   * @param chance for each belief, how likely the count is by it
   */
  private static AdjustedRate rate(List<Belief> beliefs, Count count, double[] chance) {
    ShareGrid masses = new ShareGrid();
    for (int i = 0; i < chance.length; i++) {
      // The weight holds the member's own count already; it comes back as the likelihood.
      double weight = beliefs.get(i).weight() / chance[i];
      if (weight > 0) {
        masses.add(weight, beliefs.get(i).shares());
      }
    }
    ShareGrid own = masses.times(ShareGrid.likelihood(count));
    return new AdjustedRate(
        count, own.mean(), new Interval(own.quantile(0.025), own.quantile(0.975)));
  }

  /** Means and spreads with their weights before any count but the pooled share is looked at. */
  private static List<Belief> before(Map<Count, Integer> times, double apart) {
    double successes = 0.5;
    double trials = 1;
    double members = 0;
    for (Map.Entry<Count, Integer> e : times.entrySet()) {
      successes += (double) e.getKey().successes() * e.getValue();
      trials += (double) e.getKey().trials() * e.getValue();
      members += e.getValue();
    }
    double pooled = Math.asin(Math.sqrt(successes / trials));
    List<Belief> beliefs = new ArrayList<>();
    double low = 0;
    for (int s = 0; s < SPREADS; s++) {
      double high = NARROWEST * Math.pow(WIDEST / NARROWEST, s / (SPREADS - 1.0));
      double spread = (low + high) / 2 * ((low + high) / 2);
      // In angles the pooled share is off by half a root of its variance over p (1 - p).
      double error = Math.sqrt(1 / trials + spread / (1 + spread) / members) / 2;
      for (double off = -REACH; off <= REACH; off += APART_BY) {
        double angle = pooled + off * error;
        if (angle > 0 && angle < Math.PI / 2) {
          double mean = ShareGrid.share(angle);
          ShareGrid shares = ShareGrid.beta(mean, 1 / spread);
          // Both parts over 1 - apart: the weights take that out again.
          shares.add(apart / (1 - apart), ShareGrid.beta(mean, WIDE));
          // Even in the root of the spread and in the mean, of which an angle holds sin 2 angle.
          double weight = (high - low) * error * Math.sin(2 * angle);
          beliefs.add(new Belief(shares, mean, 1 / spread, weight));
        }
      }
      low = high;
    }
    return beliefs;
  }

  /** Means and spreads with their weights. */
  List<Belief> beliefs() {
    return beliefs;
  }

  /**
   * The rate of a member with that count; empty without trials, and where there are too few
   * members.
   */
  public Optional<AdjustedRate> of(Count member) {
    if (member.trials() == 0 || rates.isEmpty()) {
      return Optional.empty();
    }
    if (!rates.containsKey(member)) {
      throw new IllegalArgumentException(member + " is not the count of a member");
    }
    return Optional.of(rates.get(member));
  }

  /**
   * How likely each of some members has the highest share of them; in their order, summing to 1.
   * Empty where there are too few members, or none given.
   *
   * @param some counts of members, each with trials
   */
  public List<Double> highest(List<Count> some) {
    if (beliefs.isEmpty() || some.isEmpty()) {
      return List.of();
    }
    double[] chances = new double[some.size()];
    List<ShareGrid> likelihoods = some.stream().map(ShareGrid::likelihood).toList();
    for (int i = 0; i < beliefs.size(); i++) {
      double weight = beliefs.get(i).weight();
      List<ShareGrid> masses = new ArrayList<>();
      for (int k = 0; k < some.size(); k++) {
        masses.add(beliefs.get(i).shares().times(likelihoods.get(k)));
      }
      double[] one = ShareGrid.highest(masses);
      for (int k = 0; k < chances.length; k++) {
        chances[k] += weight * one[k];
      }
    }
    return DoubleStream.of(chances).boxed().toList();
  }
}
