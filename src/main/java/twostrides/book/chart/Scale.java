package twostrides.book.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight axis.
 *
 * @param from value at its left end
 * @param to value at its right end
 * @param left pixels
 * @param right pixels
 */
record Scale(double from, double to, double left, double right) {

  /** Steps between ticks of a scale of shares. */
  private static final double[] STEPS = {0.01, 0.02, 0.05, 0.1, 0.2, 0.25};

  /** More ticks than these are not read. Assumed. */
  private static final int MOST_TICKS = 6;

  /** A scale begins at zero unless everything shown lies above this part of its upper end. */
  private static final double FAR_FROM_ZERO = 0.5;

  /** A scale of shares that holds all values and ends at ticks. */
  static Scale ofShares(double least, double most, double left, double right) {
    double low = least < FAR_FROM_ZERO * most ? 0 : least;
    double step = step(low, most);
    double from = Math.floor(low / step + 1e-9) * step;
    double to = Math.max(Math.ceil(most / step - 1e-9) * step, from + step);
    return new Scale(from, Math.min(1, to), left, right);
  }

  private static double step(double from, double to) {
    for (double step : STEPS) {
      if ((to - from) / step <= MOST_TICKS - 1) {
        return step;
      }
    }
    return STEPS[STEPS.length - 1];
  }

  /** Pixels of a value; of the nearer end where it lies outside. */
  double at(double value) {
    double inside = Math.max(from, Math.min(to, value));
    return left + (inside - from) / Math.max(to - from, 1e-12) * (right - left);
  }

  /** Whether a value lies on it. */
  boolean holds(double value) {
    return from <= value && value <= to;
  }

  /** Values with a tick. */
  List<Double> ticks() {
    double step = step(from, to);
    List<Double> ticks = new ArrayList<>();
    for (int i = 0; from + i * step <= to + step / 100; i++) {
      ticks.add(from + i * step);
    }
    return ticks;
  }

  /** Grid lines over a height and percent under them. */
  void percents(Sketch s, double top, double bottom) {
    for (double tick : ticks()) {
      s.line("grid", at(tick), top, at(tick), bottom);
      s.middle(Type.NOTE, Words.percent(tick), at(tick), bottom + 16);
    }
  }

  /**
   * The line that values are compared with, its name above it.
   *
   * @param label words above the line
   * @param value where it stands
   * @param edge pixels of the form: the words stay inside
   */
  void reference(Sketch s, String label, double value, double edge, double top, double bottom) {
    String words = Lettering.lines(label, Type.STRONG, edge - 8, 1).get(0);
    s.line("reference", at(value), top, at(value), bottom);
    s.inside(Type.STRONG, words, at(value), top - 5, 0, edge);
  }
}
