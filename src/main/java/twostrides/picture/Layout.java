package twostrides.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkMark;

/** Whether points lie so that they fix a picture of a plane: four of which no three are in line. */
final class Layout {

  /** Marks must lie this far off the lines through others, metres. Assumed. */
  static final double OFF_LINE = 1;

  private Layout() {}

  /**
   * Of the four points that lie best, how far the nearest of them is off a line through two others:
   * the least height of their triangles.
   */
  static double spread(List<double[]> points) {
    double best = 0;
    int n = points.size();
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        for (int c = b + 1; c < n; c++) {
          double first = height(points.get(a), points.get(b), points.get(c));
          for (int d = c + 1; d < n && first > best; d++) {
            double least =
                Math.min(
                    Math.min(first, height(points.get(a), points.get(b), points.get(d))),
                    Math.min(
                        height(points.get(a), points.get(c), points.get(d)),
                        height(points.get(b), points.get(c), points.get(d))));
            best = Math.max(best, least);
          }
        }
      }
    }
    return best;
  }

  private static double height(double[] a, double[] b, double[] c) {
    double twice = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
    double longest = Math.max(apart(a, b), Math.max(apart(b, c), apart(a, c)));
    return longest > 0 ? twice / longest : 0;
  }

  private static double apart(double[] a, double[] b) {
    return Math.hypot(b[0] - a[0], b[1] - a[1]);
  }

  /** The place's two numbers. */
  static double[] of(Place p) {
    return new double[] {p.x(), p.y()};
  }

  /** The nearest mark that, clicked too, would make enough of these. */
  static Optional<RinkMark> missing(Rink rink, List<RinkMark> clicked) {
    List<double[]> points = clicked.stream().map(m -> of(m.place())).toList();
    double x = points.stream().mapToDouble(p -> p[0]).average().orElseThrow();
    double y = points.stream().mapToDouble(p -> p[1]).average().orElseThrow();
    Place middle = new Place(x, y);
    return RinkMark.of(rink).stream()
        .filter(m -> !clicked.contains(m))
        .filter(m -> spread(with(points, of(m.place()))) >= OFF_LINE)
        .min(Comparator.comparingDouble(m -> m.place().distanceTo(middle)));
  }

  private static List<double[]> with(List<double[]> points, double[] more) {
    return Stream.concat(points.stream(), Stream.of(more)).toList();
  }
}
