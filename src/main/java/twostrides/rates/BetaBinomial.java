package twostrides.rates;

import java.util.List;
import java.util.Optional;

/**
 * How far the shares of groups really differ, beyond the chance in their counts: each group's share
 * is drawn from one beta distribution, its successes are binomial. Fitted by maximum likelihood on
 * the whole counts, see {@link SpreadLikelihood}; the distribution then draws single shares toward
 * the group (empirical Bayes: Efron and Morris 1975, JASA 70:311).
 *
 * <p>Groups without trials are tolerated and say nothing. The order of groups does not matter.
 */
public sealed interface BetaBinomial {

  /**
   * Fewest groups of two trials or more; below, a spread cannot be told from chance. Assumed.
   * Groups of one trial say nothing on the spread, though they help with the mean.
   */
  int FEWEST_GROUPS = 3;

  /** Largest spread 1 / (alpha + beta), assumed: a prior of a tenth of a trial draws nothing. */
  double WIDEST = 10;

  /** Smallest spread that still counts as a difference, assumed: a prior of a million trials. */
  double NARROWEST = 1e-6;

  /** The case in words. */
  String word();

  /** The count's share drawn toward the groups; empty where there are too few groups. */
  Optional<Shrunk> shrink(Count count);

  /**
   * The groups differ.
   *
   * <p>Where every group is all or none, the likelihood rises without end as alpha + beta goes to
   * 0; alpha + beta then stops at 1 / {@link #WIDEST}.
   *
   * @param prior how their shares spread
   * @param gain log likelihood above that of one common share, above 0
   * @param belief how sure that spread is
   */
  record Fitted(BetaPrior prior, double gain, SpreadBelief belief) implements BetaBinomial {
    @Override
    public String word() {
      return "groups differ";
    }

    @Override
    public Optional<Shrunk> shrink(Count count) {
      Shrunk drawn = prior.shrink(count);
      Interval wider = belief.about(count, drawn.share());
      return Optional.of(new Shrunk(count, drawn.share(), wider, drawn.priorWeight(), false));
    }
  }

  /**
   * The likelihood is highest where alpha + beta is infinite: the groups differ no more than chance
   * makes them. That is not proof that they are alike.
   *
   * @param pooled all groups together, at least one trial
   */
  record GroupsDoNotDiffer(Count pooled) implements BetaBinomial {
    /** Rejects a pool without trials. */
    public GroupsDoNotDiffer {
      if (pooled.trials() == 0) {
        throw new IllegalArgumentException("groups that do not differ have trials");
      }
    }

    @Override
    public String word() {
      return "groups do not differ";
    }

    /**
     * The pooled share with its Wilson interval, whatever the count: both are the group's. How far
     * a member may lie from it all the same cannot be told here; intervals that allowed for every
     * spread that fits held members who are alike in 98 to 100 % (docs/checks.md).
     */
    @Override
    public Optional<Shrunk> shrink(Count count) {
      double share = pooled.share().orElseThrow();
      return Optional.of(new Shrunk(count, share, pooled.wilson().orElseThrow(), 1, true));
    }
  }

  /**
   * Nothing to draw toward.
   *
   * @param groups how many groups have two trials or more
   */
  record TooFewGroups(int groups) implements BetaBinomial {
    @Override
    public String word() {
      return "too few groups";
    }

    @Override
    public Optional<Shrunk> shrink(Count count) {
      return Optional.empty();
    }
  }

  /** Fits the groups; each count is one group. */
  static BetaBinomial fit(List<Count> groups) {
    int telling = (int) groups.stream().filter(g -> g.trials() >= 2).count();
    if (telling < FEWEST_GROUPS) {
      return new TooFewGroups(telling);
    }
    Count pooled = groups.stream().reduce(new Count(0, 0), Count::plus);
    if (pooled.successes() == 0 || pooled.successes() == pooled.trials()) {
      return new GroupsDoNotDiffer(pooled);
    }
    SpreadLikelihood likelihood = new SpreadLikelihood(groups);
    double common = likelihood.value(likelihood.pooledMean(), 0);
    double spread = BestSpread.of(likelihood);
    double mean = likelihood.bestMean(spread);
    double gain = likelihood.value(mean, spread) - common;
    if (spread <= NARROWEST || gain < BestSpread.LEAST_GAIN) {
      return new GroupsDoNotDiffer(pooled);
    }
    return new Fitted(BetaPrior.of(mean, 1 / spread), gain, SpreadBelief.of(likelihood));
  }
}
