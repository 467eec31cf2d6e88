package twostrides.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Locale;
import twostrides.review.FlagLine;
import twostrides.rink.Rink;

/**
 * One release on a whole rink: where it was let go, how short of the red line, and the way up ice
 * that the puck took. Every part has a shape of its own, so the drawing holds in black and white.
 */
public final class FlagDrawing {

  private static final int WIDTH = 620;
  private static final double NAMES = 20;
  private static final double BELOW = 34;
  private static final double DOT = 6;
  private static final Color GAP = new Color(0xD55E00);
  private static final BasicStroke DASHED =
      new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {7, 5}, 0);

  private FlagDrawing() {}

  /**
   * The drawing of a release.
   *
   * @param flag the release
   * @param rink the rink
   * @throws IllegalStateException when the machine has no font
   */
  public static Picture of(FlagLine flag, Rink rink) {
    double scale = (WIDTH - 2.0 * Headline.MARGIN) / rink.length();
    RinkDrawing ice =
        new RinkDrawing(rink, Headline.MARGIN, Headline.MARGIN + NAMES, scale, rink.length() / 2);
    int height = (int) Math.ceil(Headline.MARGIN + NAMES + ice.height() + BELOW);
    String gap = gap(flag);
    String words =
        gap
            + ". The dashed line is the straight way up ice; the sheet does not say which way the puck"
            + " went.";
    return Easel.picture(
        new Easel.TextAlternative("Release short of center", words),
        new Easel.Size(WIDTH, height),
        Theme.BOOK.grid(),
        g -> {
          ice.draw(g);
          draw(g, ice, rink, flag, gap, height);
        });
  }

  private static String gap(FlagLine flag) {
    return String.format(
        Locale.ROOT,
        "%.1f m (%.0f ft) short of the red line, %.1f s away",
        flag.shortOfCenter(),
        flag.shortOfCenter() / 0.3048,
        flag.seconds());
  }

  private static void draw(
      Graphics2D g, RinkDrawing ice, Rink rink, FlagLine flag, String gap, int height) {
    double y = flag.y().orElse(0);
    Point2D from = ice.at(flag.x(), y);
    Point2D line = ice.at(-rink.redLineHalfWidth(), y);
    Point2D end = ice.at(rink.goalLine(), y);
    g.setColor(Theme.BOOK.quiet());
    g.setStroke(DASHED);
    g.draw(new Line2D.Double(line, end));
    g.fill(arrow(end));
    g.setColor(GAP);
    g.setStroke(new BasicStroke(4));
    g.draw(new Line2D.Double(from, line));
    g.setStroke(new BasicStroke(2));
    g.draw(new Line2D.Double(line.getX(), line.getY() - 9, line.getX(), line.getY() + 9));
    g.setColor(Theme.BOOK.ink());
    g.fill(new Ellipse2D.Double(from.getX() - DOT, from.getY() - DOT, 2 * DOT, 2 * DOT));
    g.setFont(Lettering.plain(11));
    g.setColor(Theme.BOOK.quiet());
    name(g, "own goal", ice.px(-rink.goalLine()));
    name(g, "red line", ice.px(0));
    name(g, "their goal line", ice.px(rink.goalLine()));
    Font font = Lettering.bold(14);
    g.setFont(font);
    g.setColor(Theme.BOOK.ink());
    g.drawString(gap, Headline.MARGIN, height - 12);
  }

  private static Path2D arrow(Point2D tip) {
    Path2D head = new Path2D.Double();
    head.moveTo(tip.getX(), tip.getY());
    head.lineTo(tip.getX() - 11, tip.getY() - 5);
    head.lineTo(tip.getX() - 11, tip.getY() + 5);
    head.closePath();
    return head;
  }

  private static void name(Graphics2D g, String text, double x) {
    float left = (float) (x - Lettering.width(g.getFont(), text) / 2);
    g.drawString(text, Math.max(Headline.MARGIN, left), (float) (Headline.MARGIN + NAMES - 6));
  }
}
