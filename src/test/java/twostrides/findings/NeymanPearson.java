package twostrides.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;

/** The best test there can be for the habit of {@link HabitLeagueTest}. */
final class NeymanPearson {

  private static final double ICED = HabitLeagueTest.ICED;
  private static final double HABIT = HabitLeagueTest.HABIT;

  private NeymanPearson() {}

  /**
   * How often the best test there can be finds the habit in so many releases: the test of Neyman
   * and Pearson, told the 5 % of everybody and the 20 % of the one, its last count named by lot so
   * that the false alarm is used up. More icings speak for the habit, so it names from a count on.
   * What the others did tells nothing more, the 5 % being known.
   */
  static double found(int releases, double falseAlarm) {
    BinomialDistribution equal = new BinomialDistribution(releases, ICED);
    BinomialDistribution habit = new BinomialDistribution(releases, HABIT);
    double left = falseAlarm;
    double found = 0;
    for (int k = releases; k >= 0 && left > 0; k--) {
      double named = Math.min(1, left / equal.probability(k));
      left -= named * equal.probability(k);
      found += named * habit.probability(k);
    }
    return found;
  }

  /** The best test of a season in which the number of releases is itself drawn: by the odds. */
  static double foundInSeasons(double mean, double falseAlarm) {
    record Outcome(double equal, double habit) {}
    PoissonDistribution drawn = new PoissonDistribution(mean);
    List<Outcome> outcomes = new ArrayList<>();
    for (int n = 0; n <= 4 * mean; n++) {
      BinomialDistribution equal = new BinomialDistribution(n, ICED);
      BinomialDistribution habit = new BinomialDistribution(n, HABIT);
      for (int k = 0; k <= n; k++) {
        double chance = drawn.probability(n);
        outcomes.add(new Outcome(chance * equal.probability(k), chance * habit.probability(k)));
      }
    }
    outcomes.removeIf(o -> o.equal() == 0);
    outcomes.sort(Comparator.comparingDouble(o -> -o.habit() / o.equal()));
    double left = falseAlarm;
    double found = 0;
    for (Outcome o : outcomes) {
      double named = Math.min(1, left / o.equal());
      left -= named * o.equal();
      found += named * o.habit();
    }
    return found;
  }
}
