package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.hipparchus.special.Erf;

/** The formulas of docs/numbers.md, written out once more and apart from the program's own. */
final class Formulas {

  /** 97.5 % point of the normal distribution, as docs/numbers.md has it. */
  static final double Z = 1.959963984540054;

  private static final int FEWEST = 10;

  private Formulas() {}

  /**
   * k of n.
   *
   * @param design how many times the variance of independent cases the share has over games
   */
  record Share(int k, int n, double design) {

    /** Of cases that are taken as independent. */
    Share(int k, int n) {
      this(k, n, 1);
    }

    /** All games together, with the design effect as docs/numbers.md has it; never below 1. */
    static Share over(List<Share> games) {
      int k = games.stream().mapToInt(Share::k).sum();
      int n = games.stream().mapToInt(Share::n).sum();
      double m = games.stream().filter(g -> g.n() > 0).count();
      if (m < 2 || k == 0 || k == n) {
        return new Share(k, n);
      }
      double squares =
          games.stream().mapToDouble(g -> Math.pow(g.k() - 1.0 * g.n() * k / n, 2)).sum();
      return new Share(k, n, Math.max(1, m / (m - 1) * squares / (1.0 * k * (n - k) / n)));
    }

    double value() {
      return (double) k / n;
    }

    boolean few() {
      return n < FEWEST;
    }

    /** Whole per cent, a half up. */
    int percent() {
      return (200 * k + n) / (2 * n);
    }

    /** The same, but that some are never none and never all. */
    private String said() {
      return k > 0 && percent() == 0
          ? "under 1"
          : k < n && percent() == 100 ? "over 99" : String.valueOf(percent());
    }

    Want words() {
      return n == 0 ? Want.text("none") : few() ? Want.text(Want.FEW) : Want.text(said() + " %");
    }

    /** Wilson 1927, of k / design of n / design: lower and upper end. */
    double[] wilson() {
      double y = k / design;
      double all = n / design;
      double root = Z * Math.sqrt(Z * Z + 4 * y * (all - y) / all);
      double below = 2 * (all + Z * Z);
      return new double[] {(2 * y + Z * Z - root) / below, (2 * y + Z * Z + root) / below};
    }

    /** "5 to 15 %"; nothing below ten. */
    Want interval() {
      return few()
          ? Want.text("")
          : Want.like("# to # %", hundred(wilson()[0]), hundred(wilson()[1]));
    }

    /** "12 of 96 (13 %, 95 % interval 7 to 21 %)". */
    Want sentence(String before, String after) {
      String counts = before + k + " of " + n;
      if (few()) {
        return Want.text(counts + (n == 0 ? "" : " (" + Want.FEW + ")") + after);
      }
      return Want.like(
          counts + " (" + said() + " %, 95 % interval # to # %)" + after,
          hundred(wilson()[0]),
          hundred(wilson()[1]));
    }
  }

  /** A share in whole per cent. */
  static Want.Num hundred(double share) {
    return Want.num(100 * share, 0);
  }

  /** Newcombe 1998, method 10, in points of a hundred. */
  static Want difference(Share a, Share b) {
    if (a.n() == 0 || b.n() == 0) {
      return Want.text(Want.NONE);
    }
    if (a.few() || b.few()) {
      return Want.text(Want.FEW);
    }
    double[] i = newcombe(a, b);
    return Want.like(
        "# (# to #)",
        Want.signed(100 * (a.value() - b.value()), 0, 0),
        Want.signed(100 * i[0], 0, 0),
        Want.signed(100 * i[1], 0, 0));
  }

  /** Lower and upper end of the interval of a difference. */
  static double[] newcombe(Share a, Share b) {
    double d = a.value() - b.value();
    double down =
        Math.sqrt(Math.pow(a.value() - a.wilson()[0], 2) + Math.pow(b.wilson()[1] - b.value(), 2));
    double up =
        Math.sqrt(Math.pow(a.wilson()[1] - a.value(), 2) + Math.pow(b.value() - b.wilson()[0], 2));
    return new double[] {d - down, d + up};
  }

  /** A mean with so many decimals; too few below ten. */
  static Want mean(double total, int n, int places, double step, String unit) {
    if (n < FEWEST) {
      return Want.text(n == 0 ? Want.NONE : Want.FEW);
    }
    return Want.like("#" + unit, Want.num(total / n, places, step));
  }

  /** A wait in seconds, ended or cut short. */
  record Wait(double seconds, boolean ended) {}

  /**
   * The median of the Kaplan-Meier curve with the interval of Brookmeyer and Crowley, log-log band:
   * at each time with an end, who waited at least so long is at risk.
   */
  static Median middle(List<Wait> waits) {
    TreeSet<Double> times = new TreeSet<>();
    waits.stream().filter(Wait::ended).forEach(w -> times.add(w.seconds()));
    Optional<Double> median = Optional.empty();
    Optional<Double> low = Optional.empty();
    Optional<Double> high = Optional.empty();
    double curve = 1;
    double sum = 0;
    for (double t : times) {
      double risk = waits.stream().filter(w -> w.seconds() >= t).count();
      double ends = waits.stream().filter(w -> w.ended() && w.seconds() == t).count();
      curve *= 1 - ends / risk;
      sum += ends / (risk * (risk - ends));
      boolean over = risk <= ends;
      double reach = Z * Math.sqrt(sum) / Math.abs(Math.log(curve));
      double lower = over ? 0 : Math.pow(curve, Math.exp(reach));
      double upper = over ? 1 : Math.pow(curve, Math.exp(-reach));
      median = median.isEmpty() && half(curve) ? Optional.of(t) : median;
      low = low.isEmpty() && half(lower) ? Optional.of(t) : low;
      high = high.isEmpty() && half(upper) ? Optional.of(t) : high;
    }
    return new Median(median, low, high);
  }

  /** Seconds that half of some waits reach, with the ends of the interval; those that there are. */
  record Median(Optional<Double> middle, Optional<Double> low, Optional<Double> high) {}

  /** The same in words. */
  static Want median(List<Wait> waits) {
    if (waits.size() < FEWEST) {
      return Want.text(waits.isEmpty() ? Want.NONE : Want.FEW);
    }
    Median m = middle(waits);
    if (m.middle().isEmpty()) {
      return Want.text("not reached");
    }
    List<Want.Num> numbers = new ArrayList<>();
    for (Optional<Double> t : List.of(m.middle(), m.low(), m.high())) {
      t.ifPresent(s -> numbers.add(Want.num(s, 0, 0.01)));
    }
    return new Want("# s (" + hole(m.low()) + " to " + hole(m.high()) + ")", numbers, true);
  }

  private static String hole(Optional<Double> end) {
    return end.isPresent() ? "#" : Want.NONE;
  }

  private static boolean half(double share) {
    return share <= 0.5 + 1e-9;
  }

  /**
   * Fisher's exact test, one-sided, with half the chance of the count itself: the chance of a first
   * share as large, were the two one. Binomial coefficients come one from the other.
   */
  static double exact(Share a, Share b) {
    int all = a.k() + b.k();
    int least = Math.max(0, all - b.n());
    int most = Math.min(all, a.n());
    double weight = 1;
    double sum = 0;
    double above = 0;
    for (int k = least; k <= most; k++) {
      sum += weight;
      above += k > a.k() ? weight : k == a.k() ? weight / 2 : 0;
      weight *= (double) (a.n() - k) / (k + 1) * (all - k) / (b.n() - all + k + 1);
    }
    return above / sum;
  }

  /**
   * The same where cases of a game hang together: the normal score of the chance, over the root of
   * the design effect of the difference.
   */
  static double exactOverGames(Share a, Share b) {
    double design = (a.design() / a.n() + b.design() / b.n()) / (1.0 / a.n() + 1.0 / b.n());
    double score = Math.sqrt(2) * Erf.erfcInv(2 * exact(a, b));
    return Erf.erfc(score / Math.sqrt(design) / Math.sqrt(2)) / 2;
  }

  /**
   * The word for a trend over games in order, and p where there is one: logistic regression by
   * Newton's method, and the score test where the fit has no end.
   */
  static Want trend(String before, List<Share> games) {
    long told = games.stream().filter(g -> g.n() > 0).count();
    int n = games.stream().mapToInt(Share::n).sum();
    int k = games.stream().mapToInt(Share::k).sum();
    if (told < 3 || n < FEWEST) {
      return Want.text(before + "too few to say.");
    }
    if (k == 0 || k == n) {
      return Want.text(before + "flat or unclear.");
    }
    double z = endless(games) ? score(games, k, n) : logistic(games);
    double p = Erf.erfc(Math.abs(z) / Math.sqrt(2));
    String word = p >= 0.05 ? "flat or unclear" : z > 0 ? "rising" : "falling";
    return Want.like(before + word + " (p = #).", Want.num(p, 3));
  }

  /**
   * The same as a picture says it, with how many games more would tell: the error of a slope falls
   * with their number to the power of 1.5, and 2.80 errors are called a slope in 8 of 10 cases.
   */
  static Want change(List<Share> byGame, int games) {
    long told = byGame.stream().filter(g -> g.n() > 0).count();
    int n = byGame.stream().mapToInt(Share::n).sum();
    int k = byGame.stream().mapToInt(Share::k).sum();
    if (told < 3 || n < FEWEST) {
      return Want.text("Too few to say whether it changes.");
    }
    String in = " in " + SentenceFigures.count(games, "game");
    if (k == 0 || k == n) {
      return Want.text("No clear change" + in + ".");
    }
    boolean endless = endless(byGame);
    double z = endless ? score(byGame, k, n) : logistic(byGame);
    if (Erf.erfc(Math.abs(z) / Math.sqrt(2)) < 0.05) {
      return Want.text((z > 0 ? "More often" : "Less often") + in + ", beyond chance.");
    }
    double needed = games * Math.pow(2.80 / Math.abs(z), 2 / 3.0);
    return Want.text(
        endless || needed > 1000
            ? "No clear change" + in + "."
            : "No clear change"
                + in
                + "; about "
                + (Math.round(Math.ceil(needed)) - games)
                + " more like these would tell.");
  }

  /** Whether one game parts all successes from all failures. */
  private static boolean endless(List<Share> games) {
    List<Integer> hits = new ArrayList<>();
    List<Integer> misses = new ArrayList<>();
    for (int x = 0; x < games.size(); x++) {
      if (games.get(x).k() > 0) {
        hits.add(x);
      }
      if (games.get(x).k() < games.get(x).n()) {
        misses.add(x);
      }
    }
    return hits.get(hits.size() - 1) <= misses.get(0)
        || misses.get(misses.size() - 1) <= hits.get(0);
  }

  /** Cochran 1954, Armitage 1955. */
  private static double score(List<Share> games, int k, int n) {
    double p = (double) k / n;
    double center = 0;
    for (int x = 0; x < games.size(); x++) {
      center += (double) games.get(x).n() * x / n;
    }
    double sum = 0;
    double square = 0;
    for (int x = 0; x < games.size(); x++) {
      sum += (x - center) * (games.get(x).k() - games.get(x).n() * p);
      square += games.get(x).n() * Math.pow(x - center, 2);
    }
    return square == 0 ? 0 : sum / Math.sqrt(p * (1 - p) * square);
  }

  /** Slope over its standard error. */
  private static double logistic(List<Share> games) {
    double a = 0;
    double b = 0;
    double error = 1;
    for (int step = 0; step < 50; step++) {
      double[] s = new double[5];
      for (int x = 0; x < games.size(); x++) {
        double p = 1 / (1 + Math.exp(-a - b * x));
        double off = games.get(x).k() - games.get(x).n() * p;
        double w = games.get(x).n() * p * (1 - p);
        s[0] += off;
        s[1] += off * x;
        s[2] += w;
        s[3] += w * x;
        s[4] += w * x * x;
      }
      double det = s[2] * s[4] - s[3] * s[3];
      // Short steps: the whole one may overshoot far from the top.
      a += clipped((s[4] * s[0] - s[3] * s[1]) / det);
      b += clipped((s[2] * s[1] - s[3] * s[0]) / det);
      error = Math.sqrt(s[2] / det);
    }
    return b / error;
  }

  private static double clipped(double step) {
    return Math.max(-1, Math.min(1, step));
  }
}
