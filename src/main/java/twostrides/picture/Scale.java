package twostrides.picture;

import java.util.List;

/**
 * Coordinates about the middle of some points, in units of their mean distance from it over the
 * root of 2: what makes a fit of points of any size exact to the last figures. Source: Hartley
 * 1997, IEEE PAMI 19:580.
 *
 * @param x middle
 * @param y middle
 * @param unit length of one unit
 */
record Scale(double x, double y, double unit) {

  /** Of points of two numbers each. */
  static Scale of(List<double[]> points) {
    double x = points.stream().mapToDouble(p -> p[0]).average().orElseThrow();
    double y = points.stream().mapToDouble(p -> p[1]).average().orElseThrow();
    double far = points.stream().mapToDouble(p -> Math.hypot(p[0] - x, p[1] - y)).sum();
    return new Scale(x, y, far / points.size() / Math.sqrt(2));
  }

  double[] to(double px, double py) {
    return new double[] {(px - x) / unit, (py - y) / unit};
  }

  double[] from(double px, double py) {
    return new double[] {x + px * unit, y + py * unit};
  }
}
