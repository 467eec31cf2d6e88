package twostrides.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import twostrides.rink.Rink;

/**
 * A rink drawn from its lengths, from the own end boards (left) to some place past center (right).
 * The rink keeps its proportions; all of it is pale, so that what is drawn on it dominates.
 */
final class RinkDrawing {

  /** Pale tints of the lines' usual red and blue, lighter than any mark's colour. Assumed. */
  private static final Color RED = new Color(0xE9BFC0);

  private static final Color BLUE = new Color(0xBCCBE2);
  private static final Color BOARDS = new Color(0x9AA5AE);
  private static final Color ICE = new Color(0xFAFCFD);
  private static final BasicStroke THIN = Strokes.even(1.2);
  private static final BasicStroke THICK = Strokes.even(2.4);

  /** Radius of a face-off spot, metres: 1 foot; for drawing only, assumed. */
  private static final double SPOT_RADIUS = 0.3048;

  /** Depth of the goal frame, metres; for drawing only, assumed. */
  private static final double GOAL_DEPTH = 1.1;

  private final Rink rink;
  private final double left;
  private final double top;
  private final double scale;
  private final double farX;

  /**
   * Places a rink on the canvas.
   *
   * @param rink its lengths
   * @param left pixels, outer side of the own end boards
   * @param top pixels, outer side of the boards at the attack's left hand
   * @param scale pixels a metre
   * @param farX metres past center at which the drawing ends; the rink's half length for all of it
   */
  RinkDrawing(Rink rink, double left, double top, double scale, double farX) {
    this.rink = rink;
    this.left = left;
    this.top = top;
    this.scale = scale;
    this.farX = farX;
  }

  /** Pixels across the drawing. */
  double width() {
    return (rink.length() / 2 + farX) * scale;
  }

  /** Pixels from side boards to side boards. */
  double height() {
    return rink.width() * scale;
  }

  /**
   * Where a place of the ice lies on the canvas; a place outside the drawing is moved to its edge.
   *
   * @param x metres, acting team's frame
   * @param y metres, acting team's frame
   */
  Point2D at(double x, double y) {
    double insideX = Math.max(-rink.length() / 2, Math.min(farX, x));
    double insideY = Math.max(-rink.width() / 2, Math.min(rink.width() / 2, y));
    return new Point2D.Double(px(insideX), py(insideY));
  }

  /** Pixels of a length along the rink, seen from center. */
  double px(double x) {
    return left + (x + rink.length() / 2) * scale;
  }

  private double py(double y) {
    return top + (rink.width() / 2 - y) * scale;
  }

  void draw(Graphics2D g) {
    boolean whole = farX >= rink.length() / 2;
    Path2D boards = boards(whole);
    g.setColor(ICE);
    g.fill(boards);
    end(g, -1);
    crossLine(g, RED, -rink.redLineHalfWidth(), rink.redLineHalfWidth());
    centerCircle(g);
    if (whole) {
      end(g, 1);
    }
    g.setColor(BOARDS);
    g.setStroke(THICK);
    g.draw(boards);
  }

  /** Everything of one end; {@code side} is -1 for the own end, 1 for the other. */
  private void end(Graphics2D g, int side) {
    double goal = side * rink.goalLine();
    double half = boardsAt(rink.goalLine());
    double outer = side * (rink.blueLineNeutralEdge() + rink.blueLineWidth());
    double inner = side * rink.blueLineNeutralEdge();
    g.setColor(RED);
    g.setStroke(Strokes.even(Math.max(1.2, rink.goalLineWidth() * scale)));
    g.draw(new Line2D.Double(px(goal), py(-half), px(goal), py(half)));
    crossLine(g, BLUE, Math.min(outer, inner), Math.max(outer, inner));
    goal(g, side);
    g.setColor(RED);
    g.setStroke(THIN);
    for (int hand : new int[] {-1, 1}) {
      double y = hand * rink.endSpotY();
      g.draw(disc(side * rink.endSpotX(), y, rink.circleRadius()));
      g.fill(disc(side * rink.endSpotX(), y, SPOT_RADIUS));
      g.fill(disc(side * rink.neutralSpotX(), y, SPOT_RADIUS));
    }
  }

  private void goal(Graphics2D g, int side) {
    double line = px(side * rink.goalLine());
    double depth = GOAL_DEPTH * scale;
    double crease = rink.goalWidth() * scale;
    g.setStroke(THIN);
    g.setColor(BLUE);
    g.draw(
        new Arc2D.Double(
            line - crease,
            py(0) - crease,
            2 * crease,
            2 * crease,
            side < 0 ? -90 : 90,
            180,
            Arc2D.OPEN));
    g.setColor(BOARDS);
    g.draw(
        new Rectangle2D.Double(
            side < 0 ? line - depth : line,
            py(rink.goalWidth() / 2),
            depth,
            rink.goalWidth() * scale));
  }

  /** Drawn as wide as a circle at the ends, and cut where the drawing ends. */
  private void centerCircle(Graphics2D g) {
    double r = rink.circleRadius();
    g.setColor(BLUE);
    g.setStroke(THIN);
    if (farX >= r) {
      g.draw(disc(0, 0, r));
    } else {
      double cut = Math.toDegrees(Math.acos(farX / r));
      Shape arc =
          new Arc2D.Double(
              px(-r), py(r), 2 * r * scale, 2 * r * scale, cut, 360 - 2 * cut, Arc2D.OPEN);
      g.draw(arc);
    }
    g.fill(disc(0, 0, SPOT_RADIUS));
  }

  private void crossLine(Graphics2D g, Color color, double from, double to) {
    g.setColor(color);
    g.fill(new Rectangle2D.Double(px(from), top, (to - from) * scale, height()));
  }

  private Shape disc(double x, double y, double radius) {
    double r = radius * scale;
    return new Ellipse2D.Double(px(x) - r, py(y) - r, 2 * r, 2 * r);
  }

  /** Half the width of the ice at a distance from center: less where the corners are round. */
  private double boardsAt(double distance) {
    double r = rink.cornerRadius();
    double into = distance - (rink.length() / 2 - r);
    return into <= 0 ? rink.width() / 2 : rink.width() / 2 - r + Math.sqrt(r * r - into * into);
  }

  private Path2D boards(boolean whole) {
    double d = 2 * rink.cornerRadius() * scale;
    double bottom = top + height();
    double right = left + width();
    Path2D path = new Path2D.Double();
    if (whole) {
      path.append(new Arc2D.Double(right - d, bottom - d, d, d, 270, 90, Arc2D.OPEN), false);
      path.append(new Arc2D.Double(right - d, top, d, d, 0, 90, Arc2D.OPEN), true);
    } else {
      path.moveTo(right, top);
    }
    path.append(new Arc2D.Double(left, top, d, d, 90, 90, Arc2D.OPEN), true);
    path.append(new Arc2D.Double(left, bottom - d, d, d, 180, 90, Arc2D.OPEN), true);
    if (whole) {
      path.closePath();
    } else {
      path.lineTo(right, bottom);
    }
    return path;
  }
}
