package twostrides.book.chart;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * A rink drawn from its lengths, from the own end boards to some place past center. The rink keeps
 * its proportions; all of it is pale, so that what is drawn on it dominates.
 *
 * @param rink its lengths
 * @param left pixels, outer side of the boards
 * @param top pixels, outer side of the boards
 * @param scale pixels a metre
 * @param farX metres past center at which the drawing ends; the rink's half length for all of it
 * @param up whether the attack goes up the page; else it goes to the right
 */
record Ice(Rink rink, double left, double top, double scale, double farX, boolean up) {

  /** Radius of a face-off spot, metres: 1 foot; for drawing only, assumed. */
  private static final double SPOT_RADIUS = 0.3048;

  /** Depth of the goal frame, metres; for drawing only, assumed. */
  private static final double GOAL_DEPTH = 1.1;

  private double along() {
    return (rink.length() / 2 + farX) * scale;
  }

  private double across() {
    return rink.width() * scale;
  }

  /** Pixels from its left to its right side. */
  double width() {
    return up ? across() : along();
  }

  /** Pixels from its upper to its lower side. */
  double height() {
    return up ? along() : across();
  }

  /** Pixels of its lower side. */
  double bottom() {
    return top + height();
  }

  /**
   * Where a place of the ice lies; a place outside the drawing is moved to its edge.
   *
   * @param x metres, acting team's frame
   * @param y metres, acting team's frame
   */
  Point2D at(double x, double y) {
    double half = rink.width() / 2;
    double far = (farX - Math.max(-rink.length() / 2, Math.min(farX, x))) * scale;
    double side = (half - Math.max(-half, Math.min(half, y))) * scale;
    return up
        ? new Point2D.Double(left + side, top + far)
        : new Point2D.Double(left + along() - far, top + side);
  }

  /** Where a place of the ice lies. */
  Point2D at(Place p) {
    return at(p.x(), p.y());
  }

  /** A box of the ice, from one place to another in metres. */
  void box(Sketch s, String css, double x1, double y1, double x2, double y2) {
    Point2D a = at(x1, y1);
    Point2D b = at(x2, y2);
    double x = Math.min(a.getX(), b.getX());
    double y = Math.min(a.getY(), b.getY());
    s.rect(css, x, y, Math.abs(a.getX() - b.getX()), Math.abs(a.getY() - b.getY()));
  }

  void ground(Sketch s) {
    boards(s, "ice");
  }

  /** Boards, lines, circles and goals, on the ground or on what was drawn on it. */
  void lines(Sketch s) {
    double half = rink.width() / 2;
    end(s, -1);
    box(
        s,
        "red-line",
        -rink.redLineHalfWidth(),
        half,
        Math.min(farX, rink.redLineHalfWidth()),
        -half);
    centerCircle(s);
    if (whole()) {
      end(s, 1);
    }
    boards(s, "boards");
  }

  private boolean whole() {
    return farX >= rink.length() / 2;
  }

  /** Everything of one end; {@code side} is -1 for the own end, 1 for the other. */
  private void end(Sketch s, int side) {
    double half = rink.width() / 2;
    double goal = side * rink.goalLine();
    double ends = boardsAt(rink.goalLine());
    s.path("thin-red", "M", at(goal, ends), "L", at(goal, -ends));
    double inner = side * rink.blueLineNeutralEdge();
    box(s, "blue-line", inner, half, inner + side * rink.blueLineWidth(), -half);
    double r = rink.goalWidth() * scale;
    int sweep = side < 0 ? 1 : 0;
    s.path(
        "thin-blue",
        "M",
        at(goal, rink.goalWidth()),
        "A",
        r,
        r,
        0,
        0,
        sweep,
        at(goal, -rink.goalWidth()));
    box(s, "net", goal, rink.goalWidth() / 2, goal + side * GOAL_DEPTH, -rink.goalWidth() / 2);
    for (int hand : new int[] {-1, 1}) {
      disc(s, "thin-red", side * rink.endSpotX(), hand * rink.endSpotY(), rink.circleRadius());
      disc(s, "spot", side * rink.endSpotX(), hand * rink.endSpotY(), SPOT_RADIUS);
      disc(s, "spot", side * rink.neutralSpotX(), hand * rink.endSpotY(), SPOT_RADIUS);
    }
  }

  /** Drawn as wide as a circle at the ends, and cut where the drawing ends. */
  private void centerCircle(Sketch s) {
    double r = rink.circleRadius();
    if (farX >= r) {
      disc(s, "thin-blue", 0, 0, r);
      return;
    }
    double x = farX;
    double y = Math.sqrt(r * r - x * x);
    s.path("thin-blue", "M", at(x, y), "A", r * scale, r * scale, 0, 1, 0, at(x, -y));
  }

  private void disc(Sketch s, String css, double x, double y, double radius) {
    s.circle(css, at(x, y).getX(), at(x, y).getY(), radius * scale);
  }

  /** Half the width of the ice at a distance from center: less where the corners are round. */
  private double boardsAt(double distance) {
    double r = rink.cornerRadius();
    double into = distance - (rink.length() / 2 - r);
    return into <= 0 ? rink.width() / 2 : rink.width() / 2 - r + Math.sqrt(r * r - into * into);
  }

  private void boards(Sketch s, String css) {
    double half = rink.width() / 2;
    double end = rink.length() / 2;
    double r = rink.cornerRadius();
    List<Object> steps = new ArrayList<>();
    steps.add("M");
    if (whole()) {
      steps.add(at(end - r, -half));
      corner(steps, at(end, r - half));
      steps.addAll(List.of("L", at(end, half - r)));
      corner(steps, at(end - r, half));
    } else {
      steps.add(at(farX, half));
    }
    steps.addAll(List.of("L", at(r - end, half)));
    corner(steps, at(-end, half - r));
    steps.addAll(List.of("L", at(-end, r - half)));
    corner(steps, at(r - end, -half));
    steps.addAll(whole() ? List.of("Z") : List.of("L", at(farX, -half)));
    s.path(css, steps.toArray());
  }

  private void corner(List<Object> steps, Point2D to) {
    double r = rink.cornerRadius() * scale;
    steps.addAll(List.of("A", r, r, 0, 0, 0, to));
  }
}
