package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import twostrides.checks.Printed;
import twostrides.stats.Calibration;
import twostrides.stats.Forecast;

/** Fits lines through log odds to cases of several games, and scores them one game left out. */
public final class Regression {

  /** Fewest cases in a bin that is held to what it says. */
  private static final int ENOUGH = 40;

  private static final int BINS = 5;

  private Regression() {}

  /**
   * A case.
   *
   * @param game its game
   * @param x the places, without the 1 of the intercept
   * @param happened what came of it, 0 or 1; a share where a chance is all that is known
   */
  record Case(String game, List<Double> x, double happened) {

    static Case of(String game, double happened, double... x) {
      return new Case(game, Arrays.stream(x).boxed().toList(), happened);
    }

    /** Log odds by a line. */
    double at(LogisticLine line) {
      return line.at(x.stream().mapToDouble(v -> v).toArray());
    }
  }

  /** Maximum likelihood by Newton's method; the covariance is the inverse of the information. */
  static LogisticLine fit(List<Case> cases) {
    int n = cases.get(0).x().size() + 1;
    double[] b = new double[n];
    RealMatrix covariance = MatrixUtils.createRealMatrix(n, n);
    for (int step = 0; step < 50; step++) {
      RealMatrix information = MatrixUtils.createRealMatrix(n, n);
      double[] score = new double[n];
      for (Case c : cases) {
        double p = LogisticLine.chance(at(b, c.x()));
        for (int i = 0; i < n; i++) {
          double xi = i == 0 ? 1 : c.x().get(i - 1);
          score[i] += xi * (c.happened() - p);
          for (int j = 0; j < n; j++) {
            information.addToEntry(i, j, xi * (j == 0 ? 1 : c.x().get(j - 1)) * p * (1 - p));
          }
        }
      }
      DecompositionSolver solver = new LUDecomposition(information).getSolver();
      double[] change = solver.solve(new ArrayRealVector(score)).toArray();
      for (int i = 0; i < n; i++) {
        b[i] += change[i];
      }
      covariance = solver.getInverse();
    }
    return new LogisticLine(b, covariance.getData());
  }

  private static double at(double[] b, List<Double> x) {
    double sum = b[0];
    for (int i = 0; i < x.size(); i++) {
      sum += b[i + 1] * x.get(i);
    }
    return sum;
  }

  /** For each game the line of all the others. */
  static Map<String, LogisticLine> leavingOut(List<Case> cases) {
    Map<String, LogisticLine> lines = new LinkedHashMap<>();
    for (String game : cases.stream().map(Case::game).distinct().toList()) {
      lines.put(game, fit(cases.stream().filter(c -> !c.game().equals(game)).toList()));
    }
    return lines;
  }

  /** The chance that a higher chance is said of one that happened than of one that did not. */
  public static double area(List<Forecast> forecasts) {
    double higher = 0;
    long pairs = 0;
    for (Forecast yes : forecasts) {
      for (Forecast no : forecasts) {
        if (yes.happened() && !no.happened()) {
          pairs++;
          higher += yes.probability() > no.probability() ? 1 : 0;
          higher += yes.probability() == no.probability() ? 0.5 : 0;
        }
      }
    }
    return higher / pairs;
  }

  /**
   * How good forecasts are.
   *
   * @param n how many
   * @param brier Brier score
   * @param base Brier score of always saying the base rate
   * @param area area under the curve
   * @param worst greatest difference between said and happened in a bin of 40 cases or more
   */
  public record Score(int n, double brier, double base, double area, double worst) {
    /** Brier score as a share of the base rate's: 1 no better than the base rate. */
    public double ofBase() {
      return brier / base;
    }
  }

  /**
   * Scores forecasts and prints them, bin by bin.
   *
   * @param figures where to
   * @param times how many of them stand for one case
   */
  public static Score score(Printed figures, String what, List<Forecast> forecasts, int times) {
    Calibration c = Calibration.of(forecasts, BINS).orElseThrow();
    List<String> words = new ArrayList<>();
    double worst = 0;
    for (Calibration.Bin bin : c.bins()) {
      if (bin.observed().trials() == 0) {
        continue;
      }
      double said = bin.meanForecast().orElseThrow();
      double share = bin.observed().share().orElseThrow();
      words.add(format("%.2f/%.2f (%d)", said, share, bin.observed().trials()));
      if (bin.observed().trials() >= ENOUGH * times) {
        worst = Math.max(worst, Math.abs(said - share));
      }
    }
    Score s =
        new Score(forecasts.size(), c.brier(), c.parts().uncertainty(), area(forecasts), worst);
    figures.say(
        "%s: n %d, Brier %.3f, base rate %.3f, log loss %.3f, area %.2f; said/happened %s; bins of %d cases or more"
            + " off by %.2f at most",
        what,
        s.n(),
        s.brier(),
        s.base(),
        forecasts.stream().mapToDouble(Regression::loss).average().orElseThrow(),
        s.area(),
        String.join(" ", words),
        ENOUGH,
        s.worst());
    return s;
  }

  private static double loss(Forecast f) {
    double p = Math.max(Fitted.HOLD, Math.min(1 - Fitted.HOLD, f.probability()));
    return -Math.log(f.happened() ? p : 1 - p);
  }

  /** Forecasts of cases. */
  static <T> List<Forecast> forecasts(
      List<T> cases, ToDoubleFunction<T> said, Predicate<T> happened) {
    return cases.stream().map(c -> new Forecast(said.applyAsDouble(c), happened.test(c))).toList();
  }

  /**
   * Holds a line that is shipped to the one fitted anew, to the digits that are shipped, and prints
   * the new one in the form of {@link Fitted}.
   */
  static void same(
      Printed figures, String what, LogisticLine fitted, LogisticLine shipped, int coefficients) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < coefficients; i++) {
      rows.append(i == 0 ? "{" : ", {");
      for (int j = 0; j <= i; j++) {
        rows.append(format("%s%.6f", j == 0 ? "" : ", ", fitted.covariance(i, j)));
      }
      rows.append("}");
    }
    figures.say(
        "%s fitted anew: {%s}, errors %s; covariance {%s}",
        what,
        IntStream.range(0, coefficients)
            .mapToObj(i -> format("%.4f", fitted.coefficient(i)))
            .collect(Collectors.joining(", ")),
        IntStream.range(0, coefficients)
            .mapToObj(i -> format("%.3f", Math.sqrt(fitted.covariance(i, i))))
            .collect(Collectors.joining(", ")),
        rows);
    for (int i = 0; i < coefficients; i++) {
      assertEquals(fitted.coefficient(i), shipped.coefficient(i), 0.00006, what + " " + i);
      for (int j = 0; j <= i; j++) {
        assertEquals(
            fitted.covariance(i, j), shipped.covariance(i, j), 0.0000006, what + " " + i + j);
      }
    }
  }

  private static String format(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
