package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.hipparchus.special.Beta;

/**
 * The beta distribution that fits the shares of a group best, by maximum likelihood with a simplex
 * from several starts, and what it makes of single shares. Only the formulas are shared with the
 * program: its own fit goes along the profile over the spread.
 */
final class DrawnShares {

  private static final double[] STARTS = {1, 10, 100, 1000};

  /** Log likelihood above the common share that still counts; less is rounding. */
  private static final double LEAST = 1e-6;

  private static final double FEWEST_CASES = 0.1;
  private static final double MOST_CASES = 1e6;

  /** Steps over the spread for each factor of ten. */
  private static final int PER_DECADE = 20;

  /** What a spread is believed to be: how many cases the group counts for, mean, and weight. */
  private record Belief(double cases, double mean, double meanVariance, double weight) {}

  private final List<Formulas.Share> group;
  private final boolean enough;
  private final Formulas.Share pooled;
  private final Optional<double[]> shapes;
  private final List<Belief> beliefs = new ArrayList<>();

  /** Fits a group; a player without cases says nothing. */
  DrawnShares(List<Formulas.Share> group) {
    this.group = group;
    enough = group.stream().filter(s -> s.n() >= 2).count() >= 3;
    int k = group.stream().mapToInt(Formulas.Share::k).sum();
    int n = group.stream().mapToInt(Formulas.Share::n).sum();
    pooled = new Formulas.Share(k, n);
    boolean mixed = enough && k > 0 && k < n;
    shapes = mixed ? fit() : Optional.empty();
    if (shapes.isPresent()) {
      believe();
    }
  }

  /** How the caption of the players of a penalty kill says it. */
  String word() {
    return !enough
        ? "too few groups"
        : shapes.isPresent() ? "groups differ" : "groups do not differ";
  }

  /** Drawn share, its interval, and how much comes from the group. */
  List<Want> cells(Formulas.Share own) {
    if (!enough) {
      return List.of(Want.text(Want.NONE), Want.text(Want.NONE), Want.text(Want.NONE));
    }
    if (shapes.isEmpty()) {
      return List.of(
          Want.text(pooled.percent() + " %"),
          Want.like(
              "# to # %, the group's",
              Formulas.hundred(pooled.wilson()[0]), Formulas.hundred(pooled.wilson()[1])),
          Want.text("100 %"));
    }
    double prior = shapes.get()[0] + shapes.get()[1];
    double drawn = (shapes.get()[0] + own.k()) / (prior + own.n());
    return List.of(
        Want.like("# %", Want.fitted(drawn)),
        interval(own, drawn),
        Want.like("# %", Want.fitted(prior / (prior + own.n()))));
  }

  /**
   * 95 % of the beta distribution about the drawn share with the mean square error for variance.
   */
  private Want interval(Formulas.Share own, double drawn) {
    double error = 0;
    for (Belief b : beliefs) {
      double all = b.cases() + own.n();
      double share = (b.mean() * b.cases() + own.k()) / all;
      error +=
          b.weight()
              * (share * (1 - share) / (all + 1)
                  + Math.pow(b.cases() / all, 2) * b.meanVariance()
                  + Math.pow(share - drawn, 2));
    }
    double cases = Math.max(FEWEST_CASES, drawn * (1 - drawn) / error - 1);
    double a = drawn * cases;
    double b = cases - a;
    return Want.like(
        "# to # %", Want.fitted(quantile(0.025, a, b)), Want.fitted(quantile(0.975, a, b)));
  }

  /**
   * Every spread t = 1 / (alpha + beta) by its likelihood at the best mean, with the width about
   * that mean, and all values of the root of t alike beforehand.
   */
  private void believe() {
    List<double[]> steps = new ArrayList<>();
    double highest = Double.NEGATIVE_INFINITY;
    double decades = Math.log10(MOST_CASES / FEWEST_CASES);
    for (int i = 0; i <= decades * PER_DECADE; i++) {
      double cases = FEWEST_CASES * Math.pow(10, (double) i / PER_DECADE);
      double mean = bestMean(cases);
      double variance = -1 / slopes(mean, cases)[1];
      double log =
          likelihood(mean * cases, (1 - mean) * cases) + Math.log(Math.sqrt(variance / cases));
      highest = Math.max(highest, log);
      steps.add(new double[] {cases, mean, variance, log});
    }
    double sum = 0;
    for (double[] s : steps) {
      sum += Math.exp(s[3] - highest);
    }
    for (double[] s : steps) {
      beliefs.add(new Belief(s[0], s[1], s[2], Math.exp(s[3] - highest) / sum));
    }
  }

  private double bestMean(double cases) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      boolean rises = slopes(middle, cases)[0] > 0;
      low = rises ? middle : low;
      high = rises ? high : middle;
    }
    return (low + high) / 2;
  }

  /** First and second derivative of the log likelihood by the mean. */
  private double[] slopes(double mean, double cases) {
    double[] d = new double[2];
    for (Formulas.Share s : group) {
      for (int i = 0; i < s.k(); i++) {
        double x = cases / (mean * cases + i);
        d[0] += x;
        d[1] -= x * x;
      }
      for (int i = 0; i < s.n() - s.k(); i++) {
        double x = cases / ((1 - mean) * cases + i);
        d[0] -= x;
        d[1] -= x * x;
      }
    }
    return d;
  }

  private Optional<double[]> fit() {
    double k = pooled.k();
    double n = pooled.n();
    double common = k * Math.log(k / n) + (n - k) * Math.log(1 - k / n);
    double best = common + LEAST;
    Optional<double[]> found = Optional.empty();
    for (double start : STARTS) {
      double[] shapes =
          shapes(
              new SimplexOptimizer(1e-13, 1e-13)
                  .optimize(
                      new MaxEval(20_000),
                      new ObjectiveFunction(p -> likelihood(shapes(p)[0], shapes(p)[1])),
                      GoalType.MAXIMIZE,
                      new InitialGuess(new double[] {Math.log(k / (n - k)), Math.log(start)}),
                      new NelderMeadSimplex(2, 0.5))
                  .getPoint());
      double value = likelihood(shapes[0], shapes[1]);
      if (value > best && shapes[0] + shapes[1] < 0.99 * MOST_CASES) {
        best = value;
        found = Optional.of(shapes);
      }
    }
    return found;
  }

  /** Alpha and beta from the log odds of the mean and the log of their sum. */
  private static double[] shapes(double[] p) {
    double mean = 1 / (1 + Math.exp(-p[0]));
    double sum = Math.min(MOST_CASES, Math.max(FEWEST_CASES, Math.exp(p[1])));
    return new double[] {mean * sum, (1 - mean) * sum};
  }

  /** Log likelihood without binomial coefficients: ratios of gamma functions are products. */
  private double likelihood(double alpha, double beta) {
    double sum = 0;
    for (Formulas.Share s : group) {
      sum += rising(alpha, s.k()) + rising(beta, s.n() - s.k()) - rising(alpha + beta, s.n());
    }
    return sum;
  }

  private static double rising(double from, int steps) {
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += Math.log(from + i);
    }
    return sum;
  }

  private static double quantile(double part, double a, double b) {
    double low = 0;
    double high = 1;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      boolean below = Beta.regularizedBeta(middle, a, b) < part;
      low = below ? middle : low;
      high = below ? high : middle;
    }
    return low;
  }
}
