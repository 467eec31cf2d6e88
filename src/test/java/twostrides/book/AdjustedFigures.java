package twostrides.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hipparchus.random.RandomDataGenerator;
import org.hipparchus.special.Beta;

/**
 * Adjusted rates once more. Only the model of docs/numbers.md is shared with the program: it sums
 * over shares on a grid, here chances of counts are products in closed form, shares are mixtures of
 * beta distributions with their incomplete beta functions, and who is the highest is drawn.
 */
final class AdjustedFigures {

  private static final double APART = 0.05;
  private static final double WIDE = 2;

  /** Steps over alpha + beta, 1 to a million, for each factor of ten. */
  private static final int PER_DECADE = 5;

  /** What is left out of beliefs, of all together. */
  private static final double LEAST = 0.001;

  private static final int DRAWS = 40_000;

  /** That the others' beta distribution counts for so many cases and has that mean. */
  private record Belief(double cases, double mean, double weight) {}

  /** A beta distribution in a mixture. */
  private record Part(double a, double b, double weight) {}

  private final boolean enough;
  private final List<Belief> beliefs;
  private final Map<Formulas.Share, double[]> known = new HashMap<>();

  /** From everybody's shares; one without cases says nothing. */
  AdjustedFigures(List<Formulas.Share> members) {
    enough = members.stream().filter(s -> s.n() >= 2).count() >= 3;
    beliefs = enough ? believed(members) : List.of();
  }

  private static List<Belief> believed(List<Formulas.Share> members) {
    Map<Formulas.Share, Long> times =
        members.stream()
            .filter(s -> s.n() > 0)
            .collect(Collectors.groupingBy(s -> s, Collectors.counting()));
    double k = 0.5 + members.stream().mapToInt(Formulas.Share::k).sum();
    double n = 1.0 + members.stream().mapToInt(Formulas.Share::n).sum();
    double m = members.stream().filter(s -> s.n() > 0).count();
    List<double[]> grid = new ArrayList<>();
    double highest = Double.NEGATIVE_INFINITY;
    for (double decade = 0.5 / PER_DECADE; decade < 6; decade += 1.0 / PER_DECADE) {
      double cases = Math.pow(10, decade);
      // The log odds of the pooled share, as far as members may really differ.
      double error = Math.sqrt((1 / n + 1 / (cases + 1) / m) / (k / n * (1 - k / n)));
      for (double off = -6; off <= 6; off += 0.5) {
        double mean = 1 / (1 + (n - k) / k * Math.exp(-off * error));
        // Even in the mean and in the root of 1 / cases, on a grid of logs.
        double log = Math.log(mean * (1 - mean) * error / Math.sqrt(cases));
        for (Map.Entry<Formulas.Share, Long> s : times.entrySet()) {
          log += s.getValue() * Math.log(near(s.getKey(), mean, cases) + wide(s.getKey(), mean));
        }
        highest = Math.max(highest, log);
        grid.add(new double[] {cases, mean, log});
      }
    }
    double top = highest;
    double sum = grid.stream().mapToDouble(g -> Math.exp(g[2] - top)).sum();
    List<Belief> all =
        new ArrayList<>(
            grid.stream().map(g -> new Belief(g[0], g[1], Math.exp(g[2] - top) / sum)).toList());
    all.sort(Comparator.comparingDouble(Belief::weight));
    double left = LEAST;
    while (all.get(0).weight() < left) {
      left -= all.remove(0).weight();
    }
    return List.copyOf(all);
  }

  private static double near(Formulas.Share s, double mean, double cases) {
    return (1 - APART) * chance(s, mean * cases, cases);
  }

  private static double wide(Formulas.Share s, double mean) {
    return APART * chance(s, mean * WIDE, WIDE);
  }

  /** Chance of these successes in this order: ratios of gamma functions are products. */
  private static double chance(Formulas.Share s, double alpha, double cases) {
    double chance = 1;
    for (int i = 0; i < s.n(); i++) {
      chance *= (i < s.k() ? alpha + i : cases - alpha + i - s.k()) / (cases + i);
    }
    return chance;
  }

  /** What a member's share may be. */
  private List<Part> parts(Formulas.Share own) {
    List<Part> parts = new ArrayList<>();
    for (Belief b : beliefs) {
      double near = near(own, b.mean(), b.cases());
      double wide = wide(own, b.mean());
      for (double cases : new double[] {b.cases(), WIDE}) {
        parts.add(
            new Part(
                b.mean() * cases + own.k(),
                (1 - b.mean()) * cases + own.n() - own.k(),
                b.weight() * (cases == WIDE ? wide : near) / (near + wide)));
      }
    }
    parts.sort(Comparator.comparingDouble(Part::weight));
    double left = LEAST;
    while (parts.get(0).weight() < left) {
      left -= parts.remove(0).weight();
    }
    return parts;
  }

  /** Mean, lower and upper end. */
  private double[] figures(Formulas.Share own) {
    return known.computeIfAbsent(
        own,
        s -> {
          List<Part> parts = parts(s);
          double sum = parts.stream().mapToDouble(Part::weight).sum();
          double mean =
              parts.stream().mapToDouble(p -> p.weight() * p.a() / (p.a() + p.b())).sum() / sum;
          return new double[] {mean, quantile(parts, 0.025 * sum), quantile(parts, 0.975 * sum)};
        });
  }

  private static double quantile(List<Part> parts, double part) {
    double low = 0;
    double high = 1;
    while (high - low > 5e-4) {
      double middle = (low + high) / 2;
      double below = 0;
      for (Part p : parts) {
        below += p.weight() * Beta.regularizedBeta(middle, p.a(), p.b(), 1e-6);
      }
      low = below < part ? middle : low;
      high = below < part ? high : middle;
    }
    return (low + high) / 2;
  }

  private boolean none(Formulas.Share own) {
    return !enough || own.n() == 0;
  }

  /** "7 %". */
  Want rate(Formulas.Share own) {
    return none(own) ? Want.text(Want.NONE) : Want.like("# %", Want.rate(figures(own)[0]));
  }

  /** "3 to 13 %". */
  Want interval(Formulas.Share own) {
    return none(own)
        ? Want.text(Want.NONE)
        : Want.like("# to # %", Want.fitted(figures(own)[1]), Want.fitted(figures(own)[2]));
  }

  /** "7 % (3 to 13 %)". */
  Want both(Formulas.Share own) {
    return none(own)
        ? Want.text(Want.NONE)
        : rate(own).then(Want.text(" (")).then(interval(own)).then(Want.text(")"));
  }

  /** "6 of 45 (adjusted rate 7 %, 95 % interval 3 to 13 %)", or the plain share. */
  Want sentence(String before, Formulas.Share own, String after) {
    return none(own)
        ? own.sentence(before, after)
        : Want.text(before + own.k() + " of " + own.n() + " (adjusted rate ")
            .then(rate(own))
            .then(Want.text(", 95 % interval "))
            .then(interval(own))
            .then(Want.text(")" + after));
  }

  /** How often each of some members has the highest share, drawn; empty without three members. */
  Map<Integer, Double> highest(List<Formulas.Share> some) {
    Map<Integer, Double> chances = new TreeMap<>();
    RandomDataGenerator random = new RandomDataGenerator(11);
    for (Belief b : beliefs) {
      int draws = (int) Math.ceil(DRAWS * b.weight());
      double[] near = some.stream().mapToDouble(s -> near(s, b.mean(), b.cases())).toArray();
      double[] wide = some.stream().mapToDouble(s -> wide(s, b.mean())).toArray();
      for (int draw = 0; draw < draws && !some.isEmpty(); draw++) {
        int best = 0;
        double most = -1;
        for (int i = 0; i < some.size(); i++) {
          Formulas.Share s = some.get(i);
          double cases = random.nextDouble() * (near[i] + wide[i]) < near[i] ? b.cases() : WIDE;
          double share =
              random.nextBeta(b.mean() * cases + s.k(), (1 - b.mean()) * cases + s.n() - s.k());
          if (share > most) {
            most = share;
            best = i;
          }
        }
        chances.merge(best, b.weight() / draws, Double::sum);
      }
    }
    return chances;
  }
}
