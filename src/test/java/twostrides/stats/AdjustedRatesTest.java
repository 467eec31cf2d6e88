package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;

/** Adjusted rates against a published analysis, sums done in another way, and at their edges. */
class AdjustedRatesTest {

  /**
   * Tumours among control rats: Tarone 1982, Biometrics 38:215, as in Gelman et al., Bayesian Data
   * Analysis, table 5.1; the last one is the current group, 4 of 14.
   */
  private static final List<Count> RATS =
      groups(
          "0/20 0/20 0/20 0/20 0/20 0/20 0/20 0/19 0/19 0/19 0/19 0/18 0/18 0/17 1/20 1/20 1/20 1/20"
              + " 1/19 1/19 1/18 1/18 2/25 2/24 2/23 2/20 2/20 2/20 2/20 2/20 2/20 1/10 5/49 2/19"
              + " 5/46 3/27 2/17 7/49 7/47 3/20 3/20 2/13 9/48 10/50 4/20 4/20 4/20 4/20 4/20 4/20"
              + " 4/20 10/48 4/19 4/19 4/19 5/22 11/46 12/49 5/20 5/20 6/23 5/19 6/22 6/20 6/20 6/20"
              + " 16/52 15/46 15/47 9/24 4/14");

  private static List<Count> groups(String text) {
    List<Count> counts = new ArrayList<>();
    for (String one : text.split(" ", -1)) {
      int slash = one.indexOf('/');
      counts.add(
          new Count(
              Integer.parseInt(one.substring(0, slash)),
              Integer.parseInt(one.substring(slash + 1))));
    }
    return Collections.unmodifiableList(counts);
  }

  @Test
  void theRatsAreAllThere() {
    assertEquals(71, RATS.size());
    assertEquals(new Count(267, 1739), RATS.stream().reduce(new Count(0, 0), Count::plus));
  }

  /**
   * Validation: posterior means of alpha and beta under the same prior, without anybody apart: 2.4
   * and 14.3, Gelman et al., Bayesian Data Analysis, section 5.3 (from memory); 2.403 and 14.320 by
   * a fine grid with log gamma functions in scipy 1.17.
   */
  @Test
  void beliefsOfTheRatsAreAsPublished() {
    double alpha = 0;
    double beta = 0;
    double sum = 0;
    for (AdjustedRates.Belief b : AdjustedRates.of(RATS, 0).beliefs()) {
      alpha += b.weight() * b.mean() * b.cases();
      beta += b.weight() * (1 - b.mean()) * b.cases();
      sum += b.weight();
    }
    assertEquals(1, sum, 1e-12);
    assertEquals(2.403, alpha, 0.03);
    assertEquals(14.320, beta, 0.15);
  }

  /** Everything once more by log gamma functions and incomplete betas, on a grid of its own. */
  @Test
  void ratesAreTheIntegral() {
    check(RATS, new Count(4, 14), new Count(0, 20), new Count(16, 52));
    check(groups("0/9 1/40 0/3 2/51 0/0 1/30 26/130"), new Count(26, 130), new Count(0, 3));
    check(groups("0/3 2/4 1/7"), new Count(0, 3), new Count(2, 4));
  }

  private static void check(List<Count> groups, Count... members) {
    AdjustedRates rates = AdjustedRates.of(groups);
    for (Count member : members) {
      AdjustedRate rate = rates.of(member).orElseThrow();
      double low = rate.interval().low();
      double high = rate.interval().high();
      double[] wanted =
          integral(groups, member, low - REACH, low + REACH, high - REACH, high + REACH);
      assertEquals(wanted[0], rate.share(), REACH, member.toString());
      assertTrue(wanted[1] < 0.025 && 0.025 < wanted[2], member + " low " + low);
      assertTrue(wanted[3] < 0.975 && 0.975 < wanted[4], member + " high " + high);
    }
  }

  /** How far rates and ends of intervals may be off. */
  private static final double REACH = 0.002;

  /** Mean share of the member, and the parts below each of some shares. */
  private static double[] integral(List<Count> groups, Count member, double... shares) {
    Map<Count, Long> times =
        groups.stream().collect(Collectors.groupingBy(g -> g, Collectors.counting()));
    double sum = 0;
    double[] results = new double[1 + shares.length];
    for (double root = 0.01; root < 1; root += 0.02) {
      double cases = 1 / (root * root);
      for (double mean = 0.0025; mean < 1; mean += 0.005) {
        double log = offset(groups);
        for (Map.Entry<Count, Long> g : times.entrySet()) {
          log +=
              g.getValue()
                  * Math.log(
                      0.95 * chance(g.getKey(), mean, cases) + 0.05 * chance(g.getKey(), mean, 2));
        }
        double all = Math.exp(log);
        sum += all;
        double near = 0.95 * chance(member, mean, cases);
        double wide = 0.05 * chance(member, mean, 2);
        for (double[] part : new double[][] {{near, cases}, {wide, 2}}) {
          double weight = all * part[0] / (near + wide);
          double a = mean * part[1] + member.successes();
          double b = (1 - mean) * part[1] + member.trials() - member.successes();
          results[0] += weight * a / (a + b);
          for (int i = 0; weight > 1e-9 * sum && i < shares.length; i++) {
            results[i + 1] += weight * below(shares[i], a, b);
          }
        }
      }
    }
    for (int i = 0; i < results.length; i++) {
      results[i] /= sum;
    }
    return results;
  }

  private static double below(double share, double a, double b) {
    return share <= 0 ? 0 : Beta.regularizedBeta(share, a, b);
  }

  /** Against underflow any constant does: the binomial of one share for all. */
  private static double offset(List<Count> groups) {
    Count all = groups.stream().reduce(new Count(0, 0), Count::plus);
    double p = all.share().orElseThrow();
    return -(all.successes() * Math.log(p) + (all.trials() - all.successes()) * Math.log(1 - p));
  }

  private static double chance(Count g, double mean, double cases) {
    double a = mean * cases;
    double b = cases - a;
    return Math.exp(
        Gamma.logGamma(a + g.successes())
            - Gamma.logGamma(a)
            + Gamma.logGamma(b + g.trials() - g.successes())
            - Gamma.logGamma(b)
            + Gamma.logGamma(cases)
            - Gamma.logGamma(cases + g.trials()));
  }

  /** Rates come nearer to the truth than shares, and intervals hold it. */
  @Test
  void ratesAreNearerThanShares() {
    SplittableRandom random = new SplittableRandom(5);
    BetaDistribution truth = new BetaDistribution(12, 28);
    List<Count> groups = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (int g = 0; g < 400; g++) {
      double share = truth.inverseCumulativeProbability(random.nextDouble());
      shares.add(share);
      groups.add(binomial(random, 20 + random.nextInt(60), share));
    }
    AdjustedRates rates = AdjustedRates.of(groups);
    int held = 0;
    double raw = 0;
    double adjusted = 0;
    for (int g = 0; g < groups.size(); g++) {
      AdjustedRate rate = rates.of(groups.get(g)).orElseThrow();
      double share = shares.get(g);
      held += rate.interval().low() <= share && share <= rate.interval().high() ? 1 : 0;
      raw += Math.pow(groups.get(g).share().orElseThrow() - share, 2);
      adjusted += Math.pow(rate.share() - share, 2);
    }
    assertEquals(0.95, held / 400.0, 0.03);
    assertTrue(adjusted < 0.75 * raw, adjusted + " of " + raw);
  }

  static Count binomial(SplittableRandom random, int trials, double share) {
    int k = 0;
    for (int i = 0; i < trials; i++) {
      k += random.nextDouble() < share ? 1 : 0;
    }
    return new Count(k, trials);
  }

  /** With few cases one leans on the others, with many one stands alone. */
  @Test
  void fewCasesLeanOnTheOthers() {
    List<Count> groups = groups("4/40 4/40 4/40 4/40 4/40 4/40 4/40 4/40 4/10 40/100");
    AdjustedRates rates = AdjustedRates.of(groups);
    double few = rates.of(new Count(4, 10)).orElseThrow().share();
    double many = rates.of(new Count(40, 100)).orElseThrow().share();
    assertTrue(0.1 < few && few < 0.36, "of ten " + few);
    assertTrue(0.36 < many && many < 0.4, "of a hundred " + many);
  }

  /** Who looks like everybody may still be unlike: no interval is the pooled share's. */
  @Test
  void whoLooksAlikeKeepsAnIntervalOfHisOwn() {
    List<Count> groups = Collections.nCopies(20, new Count(4, 10));
    AdjustedRate rate = AdjustedRates.of(groups).of(new Count(4, 10)).orElseThrow();
    Interval pooled = new Count(80, 200).wilson().orElseThrow();
    assertEquals(0.4, rate.share(), 0.002);
    assertTrue(rate.interval().low() < pooled.low() && pooled.high() < rate.interval().high());
  }

  @Test
  void noneAndAllOfAllHaveRatesToo() {
    AdjustedRate none = AdjustedRates.of(groups("0/5 0/9 0/20")).of(new Count(0, 9)).orElseThrow();
    assertTrue(0 < none.share() && none.share() < 0.1, none.toString());
    assertTrue(none.interval().low() < 0.001, none.toString());
    AdjustedRate all = AdjustedRates.of(groups("5/5 9/9 20/20")).of(new Count(9, 9)).orElseThrow();
    assertEquals(1 - none.share(), all.share(), 1e-9);
    assertEquals(1 - none.interval().high(), all.interval().low(), 1e-9);
  }

  @Test
  void twoMembersAreTooFew() {
    AdjustedRates rates = AdjustedRates.of(groups("1/9 0/0 1/1 8/9 1/1"));
    assertEquals(Optional.empty(), rates.of(new Count(1, 9)));
    assertEquals(List.of(), rates.highest(List.of(new Count(1, 9))));
    assertEquals(Optional.empty(), AdjustedRates.of(List.of()).of(new Count(0, 0)));
  }

  @Test
  void onlyMembersHaveRates() {
    AdjustedRates rates = AdjustedRates.of(groups("1/9 2/9 8/9 0/0"));
    assertEquals(Optional.empty(), rates.of(new Count(0, 0)));
    assertThrows(IllegalArgumentException.class, () -> rates.of(new Count(3, 9)));
  }

  @Test
  void orderOfMembersDoesNotMatter() {
    List<Count> reversed = new ArrayList<>(RATS);
    Collections.reverse(reversed);
    Count one = new Count(4, 14);
    assertEquals(AdjustedRates.of(RATS).of(one), AdjustedRates.of(reversed).of(one));
    assertEquals(
        AdjustedRates.of(RATS).highest(RATS.subList(40, 60)),
        AdjustedRates.of(reversed).highest(RATS.subList(40, 60)));
  }

  @Test
  void equalsAreEquallyLikelyTheHighest() {
    List<Count> groups = groups("2/40 2/40 2/40 2/40 0/30");
    for (double chance : AdjustedRates.of(groups).highest(groups.subList(0, 4))) {
      assertEquals(0.25, chance, 1e-9);
    }
  }

  /** Who has one of ten is not the likeliest beside 26 of 130, though beside 6 of 130 he may be. */
  @Test
  void theLikeliestHighestIsNotTheHighestShare() {
    List<Count> groups = groups("26/130 1/4 6/130 6/130 7/130 5/130 6/130 8/130 6/130 7/130 5/130");
    List<Double> chances = AdjustedRates.of(groups).highest(groups);
    assertEquals(1, chances.stream().mapToDouble(c -> c).sum(), 1e-9);
    assertTrue(chances.get(0) > 0.9, chances.toString());
    assertTrue(chances.get(1) < 0.1 && chances.get(1) > chances.get(2), chances.toString());
  }

  /** Shares drawn from what is believed, and how often each is the highest. */
  @Test
  void highestIsWhatDrawingSays() {
    List<Count> groups = groups("7/118 0/102 4/87 6/45 4/34 4/28 2/22");
    AdjustedRates rates = AdjustedRates.of(groups, 0);
    List<Double> chances = rates.highest(groups);
    SplittableRandom random = new SplittableRandom(3);
    int[] highest = new int[groups.size()];
    int runs = 4000;
    for (int run = 0; run < runs; run++) {
      AdjustedRates.Belief belief = one(rates.beliefs(), random.nextDouble());
      int best = 0;
      double most = -1;
      for (int i = 0; i < groups.size(); i++) {
        Count c = groups.get(i);
        double a = belief.mean() * belief.cases() + c.successes();
        double b = belief.cases() + c.trials() - a;
        double share = new BetaDistribution(a, b).inverseCumulativeProbability(random.nextDouble());
        if (share > most) {
          most = share;
          best = i;
        }
      }
      highest[best]++;
    }
    for (int i = 0; i < highest.length; i++) {
      assertEquals((double) highest[i] / runs, chances.get(i), 0.025, groups.get(i).toString());
    }
  }

  private static AdjustedRates.Belief one(List<AdjustedRates.Belief> beliefs, double at) {
    double left = at;
    for (AdjustedRates.Belief b : beliefs) {
      left -= b.weight();
      if (left <= 0) {
        return b;
      }
    }
    return beliefs.get(beliefs.size() - 1);
  }
}
