package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;

/**
 * How often the intervals of adjusted rates hold each member's own share, in invented groups: the
 * quick part of {@code CoverageLongTest}. The bar is one-sided, 93 %: where members are alike an
 * interval that allows for their not being so holds more, and does no harm.
 */
class AdjustedCoverageTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final double LEAST = 0.93;
  private static final int RUNS = 200;

  /** What was found: members' own shares held, and how wide the intervals are. */
  private static final class Found {
    private int held;
    private int all;
    private double width;

    void add(Interval i, double share) {
      held += i.low() <= share && share <= i.high() ? 1 : 0;
      width += i.high() - i.low();
      all++;
    }

    double part() {
      return (double) held / all;
    }

    Found print(String name) {
      FIGURES.say(
          "adjusted rates, %s: own share held in %.1f %% of %d, mean width %.3f",
          name, 100 * part(), all, width / all);
      return this;
    }
  }

  /** The first member apart from the others; with that chance of being unlike the rest. */
  private static Found[] found(long seed, int[] trials, IntToDoubleFunction shares, double apart) {
    SplittableRandom random = new SplittableRandom(seed);
    Found[] found = {new Found(), new Found()};
    for (int run = 0; run < RUNS; run++) {
      List<Count> groups = new ArrayList<>();
      List<Double> truths = new ArrayList<>();
      for (int g = 0; g < trials.length; g++) {
        truths.add(shares.applyAsDouble(g));
        groups.add(AdjustedRatesTest.binomial(random, trials[g], truths.get(g)));
      }
      AdjustedRates rates = AdjustedRates.of(groups, apart);
      for (int g = 0; g < trials.length; g++) {
        found[g == 0 ? 0 : 1].add(rates.of(groups.get(g)).orElseThrow().interval(), truths.get(g));
      }
    }
    return found;
  }

  private static int[] each(int members, int trials) {
    int[] all = new int[members];
    Arrays.fill(all, trials);
    return all;
  }

  /** Eighteen members of 8 to 40 trials, their shares from Beta(6.6, 23.4). */
  @Test
  void membersWhoDiffer() {
    int[] trials = {8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 25, 25, 25, 28, 32, 40};
    SplittableRandom random = new SplittableRandom(22);
    BetaDistribution shares = new BetaDistribution(6.6, 23.4);
    Found[] found =
        found(
            21,
            trials,
            g -> shares.inverseCumulativeProbability(random.nextDouble()),
            AdjustedRates.APART);
    assertTrue(found[1].print("18 members who differ").part() >= LEAST);
  }

  /** One at 20 % among nineteen at 5 %: the chance of being unlike the rest is what holds him. */
  @Test
  void oneWhoIsUnlikeTheRest() {
    int[] trials = each(20, 130);
    IntToDoubleFunction shares = g -> g == 0 ? 0.20 : 0.05;
    Found[] found = found(23, trials, shares, AdjustedRates.APART);
    found[0].print("the one at 20 % among 5 %, n 130");
    found[1].print("the nineteen at 5 % beside him");
    Found[] alike = found(23, trials, shares, 0);
    alike[0].print("the one, were all from one distribution");
    alike[1].print("the nineteen, were all from one distribution");
    for (double apart : new double[] {0.02, 0.10}) {
      Found[] other = found(23, trials, shares, apart);
      other[0].print(
          String.format(Locale.ROOT, "the one, %.0f %% to be unlike the rest", 100 * apart));
      other[1].print(String.format(Locale.ROOT, "the nineteen, %.0f %% to be unlike", 100 * apart));
    }
    assertTrue(found[0].part() >= 0.85 && alike[0].part() < 0.75);
    assertTrue(found[1].part() >= LEAST);
    assertTrue(found[1].width < 0.8 * alike[1].width);
  }

  @Test
  void membersWhoAreAlike() {
    Found[] found = found(24, each(20, 47), g -> 0.05, AdjustedRates.APART);
    assertTrue(found[1].print("members alike at 5 %, n 47").part() >= LEAST);
  }
}
