package twostrides.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import twostrides.findings.MarkOutcome;

/**
 * How a release looks on a map: shape and colour both tell the outcome, so that either will do.
 * Fills let through what lies under them; outlines do not.
 *
 * <p>Colours: Okabe and Ito, "Color Universal Design" (2002, revised 2008): vermillion, orange,
 * blue, bluish green, and a grey of our own.
 */
final class MarkLook {

  /** Half the size of a mark in pixels. Assumed: seen from two metres on a printed page. */
  private static final double REACH = 6.5;

  /** Of 255: what lies under a mark shows through. */
  private static final int FILL_ALPHA = 135;

  /** Of 255: iced ones are what the map is for, and the darkest in black and white. */
  private static final int ICED_ALPHA = 230;

  private static final Color INK = new Color(0x1F2A33);
  private static final BasicStroke OUTLINE =
      new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  /** Of the full size: what led to no restart, where many releases share one map. Assumed. */
  private static final double SMALL = 0.5;

  private static final BasicStroke FINE_OUTLINE =
      new BasicStroke(0.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  private MarkLook() {}

  /** Draws a mark around a point of the canvas. */
  static void draw(Graphics2D g, MarkOutcome outcome, Point2D at) {
    draw(g, outcome, at, REACH, OUTLINE);
  }

  /**
   * Draws a mark on a map of very many: releases that led to no restart step back, so that the
   * others are seen.
   */
  static void drawAmongMany(Graphics2D g, MarkOutcome outcome, Point2D at) {
    switch (outcome) {
      case ICED, OTHER_RESTART -> draw(g, outcome, at, REACH, OUTLINE);
      case OPPONENT_NEXT, OWN_NEXT, STOPPED -> draw(g, outcome, at, SMALL * REACH, FINE_OUTLINE);
    }
  }

  private static void draw(
      Graphics2D g, MarkOutcome outcome, Point2D at, double reach, BasicStroke outline) {
    Shape shape = shape(outcome, at.getX(), at.getY(), reach);
    Color c = color(outcome);
    g.setColor(
        new Color(
            c.getRed(),
            c.getGreen(),
            c.getBlue(),
            outcome == MarkOutcome.ICED ? ICED_ALPHA : FILL_ALPHA));
    g.fill(shape);
    g.setColor(INK);
    g.setStroke(outline);
    g.draw(shape);
  }

  private static Color color(MarkOutcome outcome) {
    return switch (outcome) {
      case ICED -> new Color(0xD55E00);
      case OTHER_RESTART -> new Color(0xE69F00);
      case OPPONENT_NEXT -> new Color(0x0072B2);
      case OWN_NEXT -> new Color(0x009E73);
      case STOPPED -> new Color(0xB4BBC0);
    };
  }

  private static Shape shape(MarkOutcome outcome, double x, double y, double r) {
    return switch (outcome) {
      case ICED -> star(x, y, 1.5 * r);
      case OTHER_RESTART ->
          corners(x, y - 1.25 * r, x + 1.2 * r, y + 0.9 * r, x - 1.2 * r, y + 0.9 * r);
      case OPPONENT_NEXT -> new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
      case OWN_NEXT -> new Rectangle2D.Double(x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
      case STOPPED -> corners(x, y - r, x + 0.7 * r, y, x, y + r, x - 0.7 * r, y);
    };
  }

  /** A star of four points: nothing else on the map has its outline. */
  private static Shape star(double x, double y, double reach) {
    double in = 0.32 * reach;
    return corners(
        x, y - reach, x + in, y - in, x + reach, y, x + in, y + in, x, y + reach, x - in, y + in,
        x - reach, y, x - in, y - in);
  }

  private static Shape corners(double... xy) {
    Path2D path = new Path2D.Double();
    path.moveTo(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.lineTo(xy[i], xy[i + 1]);
    }
    path.closePath();
    return path;
  }
}
