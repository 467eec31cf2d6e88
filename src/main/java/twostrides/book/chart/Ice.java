package twostrides.book.chart;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * A rink drawn from its lengths, from the own end boards to some place past center. The rink keeps
 * its proportions; all of it is pale, so that what is drawn on it dominates. Shapes are given in
 * metres, in the acting team's frame.
 *
 * @param rink its lengths
 * @param farX metres past center at which the drawing ends; the rink's half length for all of it
 * @param toPage from metres to pixels
 */
record Ice(Rink rink, double farX, AffineTransform toPage) {

  /** Radius of a face-off spot, metres: 1 foot; for drawing only, assumed. */
  private static final double SPOT_RADIUS = 0.3048;

  /** Depth of the goal frame, metres; for drawing only, assumed. */
  private static final double GOAL_DEPTH = 1.1;

  /**
   * Places a rink on the page.
   *
   * @param rink its lengths
   * @param farX metres past center at which the drawing ends
   * @param left pixels, outer side of the boards
   * @param top pixels, outer side of the boards
   * @param width pixels from its left to its right side
   * @param up whether the attack goes up the page; else it goes to the right
   */
  static Ice of(Rink rink, double farX, double left, double top, double width, boolean up) {
    double along = rink.length() / 2 + farX;
    double scale = width / (up ? rink.width() : along);
    AffineTransform toPage = AffineTransform.getTranslateInstance(left, top);
    toPage.scale(scale, scale);
    if (up) {
      toPage.concatenate(new AffineTransform(0, -1, -1, 0, rink.width() / 2, farX));
    } else {
      toPage.concatenate(new AffineTransform(1, 0, 0, -1, rink.length() / 2, rink.width() / 2));
    }
    return new Ice(rink, farX, toPage);
  }

  /** Pixels that it takes. */
  Rectangle2D bounds() {
    return onPage(inside()).getBounds2D();
  }

  /** Where a place of the ice lies; a place outside the drawing is moved to its edge. */
  Point2D at(Place p) {
    double x = Math.max(-rink.length() / 2, Math.min(farX, p.x()));
    double y = Math.max(-rink.width() / 2, Math.min(rink.width() / 2, p.y()));
    return toPage.transform(new Point2D.Double(x, y), null);
  }

  /** A shape of the ice in pixels. */
  Shape onPage(Shape metres) {
    return toPage.createTransformedShape(metres);
  }

  void draw(Sketch s, String css, Shape metres) {
    s.shape(css, onPage(metres));
  }

  /** Draws what of a shape lies inside the boards. */
  void fill(Sketch s, String css, Shape metres) {
    Area area = inside();
    area.intersect(new Area(metres));
    draw(s, css, area);
  }

  void ground(Sketch s) {
    draw(s, "ice", inside());
  }

  /** Boards, lines, circles and goals, on the ground or on what was drawn on it. */
  void lines(Sketch s) {
    crossLine(s, "red-line", -rink.redLineHalfWidth(), 2 * rink.redLineHalfWidth());
    double r = rink.circleRadius();
    double cut = Math.toDegrees(Math.acos(Math.min(1, farX / r)));
    draw(s, "thin-blue", new Arc2D.Double(-r, -r, 2 * r, 2 * r, cut, 360 - 2 * cut, Arc2D.OPEN));
    end(s, -1);
    if (farX > rink.goalLine()) {
      end(s, 1);
    }
    draw(s, "boards", boards());
  }

  /** Everything of one end; {@code side} is -1 for the own end, 1 for the other. */
  private void end(Sketch s, int side) {
    double goal = side * rink.goalLine();
    double mouth = rink.goalWidth();
    double blue = side * (rink.blueLineNeutralEdge() + rink.blueLineWidth() / 2);
    crossLine(s, "red-line", goal - rink.goalLineWidth() / 2, rink.goalLineWidth());
    crossLine(s, "blue-line", blue - rink.blueLineWidth() / 2, rink.blueLineWidth());
    Rectangle2D crease = new Rectangle2D.Double(goal - mouth, -mouth, 2 * mouth, 2 * mouth);
    draw(s, "thin-blue", new Arc2D.Double(crease, side < 0 ? -90 : 90, 180, Arc2D.OPEN));
    double net = side < 0 ? goal - GOAL_DEPTH : goal;
    draw(s, "net", new Rectangle2D.Double(net, -mouth / 2, GOAL_DEPTH, mouth));
    for (int hand : new int[] {-1, 1}) {
      double y = hand * rink.endSpotY();
      disc(s, "thin-red", side * rink.endSpotX(), y, rink.circleRadius());
      disc(s, "spot", side * rink.endSpotX(), y, SPOT_RADIUS);
      disc(s, "spot", side * rink.neutralSpotX(), y, SPOT_RADIUS);
    }
  }

  private void crossLine(Sketch s, String css, double x, double width) {
    fill(s, css, new Rectangle2D.Double(x, -rink.width() / 2, width, rink.width()));
  }

  private void disc(Sketch s, String css, double x, double y, double radius) {
    Point2D at = at(new Place(x, y));
    s.circle(css, at.getX(), at.getY(), radius * Math.sqrt(Math.abs(toPage.getDeterminant())));
  }

  private Area inside() {
    return new Area(boards());
  }

  /** The boards; open where the drawing ends before the other end. */
  private Shape boards() {
    double end = rink.length() / 2;
    double half = rink.width() / 2;
    double d = 2 * rink.cornerRadius();
    if (farX >= end) {
      return new RoundRectangle2D.Double(-end, -half, 2 * end, 2 * half, d, d);
    }
    Path2D boards = new Path2D.Double();
    boards.moveTo(farX, -half);
    boards.append(new Arc2D.Double(-end, -half, d, d, 90, 90, Arc2D.OPEN), true);
    boards.append(new Arc2D.Double(-end, half - d, d, d, 180, 90, Arc2D.OPEN), true);
    boards.lineTo(farX, half);
    return boards;
  }
}
