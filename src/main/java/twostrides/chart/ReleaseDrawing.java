package twostrides.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import twostrides.rink.Rink;

/**
 * One release on a whole rink with the spread of where the puck would go: the gap to the red line,
 * the skaters, a band of 10 to 90 % of the draws and a bracket for how far they get. Every part has
 * a shape of its own, so the drawing holds in black and white.
 */
public final class ReleaseDrawing {

  private static final int WIDTH = 620;
  private static final double NAMES = 20;
  private static final double BELOW = 78;
  private static final double LEADING = 16;

  /** Half the size of the release's and of a skater's mark, pixels. */
  private static final double DOT = 6;

  private static final double SKATER = 5;

  /** Seconds of a skater's way that his line shows. Assumed. */
  private static final double AHEAD = 0.5;

  private static final Color GAP = new Color(0xD55E00);

  /** The lines of the rink show through. */
  private static final Color BAND = new Color(0x55, 0x61, 0x6B, 60);

  private static final BasicStroke DASHED =
      new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {7, 5}, 0);

  private ReleaseDrawing() {}

  /**
   * The drawing of a release.
   *
   * @param sketch what it shows
   * @param rink the rink
   * @throws IllegalStateException when the machine has no font
   */
  public static Picture of(ReleaseSketch sketch, Rink rink) {
    double scale = (WIDTH - 2.0 * Headline.MARGIN) / rink.length();
    RinkDrawing ice =
        new RinkDrawing(rink, Headline.MARGIN, Headline.MARGIN + NAMES, scale, rink.length() / 2);
    int height = (int) Math.ceil(Headline.MARGIN + NAMES + ice.height() + BELOW);
    return Easel.picture(
        new Easel.TextAlternative(
            "Release and where the puck would go", sketch.gap() + ". " + sketch.spread()),
        new Easel.Size(WIDTH, height),
        Theme.BOOK.grid(),
        g -> {
          ice.draw(g);
          band(g, ice, sketch.band());
          reach(g, ice, sketch);
          gap(g, ice, rink, sketch);
          sketch.skaters().forEach(s -> skater(g, ice, s));
          words(g, ice, rink, sketch);
        });
  }

  private static void band(Graphics2D g, RinkDrawing ice, List<ReleaseSketch.Row> band) {
    if (band.size() < 2) {
      return;
    }
    Path2D edge = new Path2D.Double();
    Path2D middle = new Path2D.Double();
    for (int i = 0; i < band.size(); i++) {
      to(edge, ice.at(band.get(i).x(), band.get(i).high()), i == 0);
      to(middle, ice.at(band.get(i).x(), band.get(i).middle()), i == 0);
    }
    for (int i = band.size() - 1; i >= 0; i--) {
      to(edge, ice.at(band.get(i).x(), band.get(i).low()), false);
    }
    edge.closePath();
    g.setColor(BAND);
    g.fill(edge);
    g.setColor(Theme.BOOK.quiet());
    g.setStroke(Strokes.even(0.8));
    g.draw(edge);
    g.setColor(Theme.BOOK.ink());
    g.setStroke(DASHED);
    g.draw(middle);
  }

  private static void to(Path2D path, Point2D p, boolean first) {
    if (first) {
      path.moveTo(p.getX(), p.getY());
    } else {
      path.lineTo(p.getX(), p.getY());
    }
  }

  /** A bracket under the rink from where the shortest tenth ends to where all but a tenth do. */
  private static void reach(Graphics2D g, RinkDrawing ice, ReleaseSketch sketch) {
    double y = Headline.MARGIN + NAMES + ice.height() + 8;
    double low = ice.px(sketch.reach().low());
    double high = ice.px(sketch.reach().high());
    if (low >= high) {
      return;
    }
    g.setColor(Theme.BOOK.ink());
    g.setStroke(Strokes.even(2));
    g.draw(new Line2D.Double(low, y, high, y));
    g.draw(new Line2D.Double(low, y - 5, low, y + 5));
    g.draw(new Line2D.Double(high, y - 5, high, y + 5));
  }

  private static void gap(Graphics2D g, RinkDrawing ice, Rink rink, ReleaseSketch sketch) {
    Point2D from = ice.at(sketch.x(), sketch.y());
    if (rink.shortOfCenter(sketch.x()) > 0) {
      Point2D line = ice.at(-rink.redLineHalfWidth(), sketch.y());
      g.setColor(GAP);
      g.setStroke(Strokes.even(4));
      g.draw(new Line2D.Double(from, line));
      g.setStroke(Strokes.even(2));
      g.draw(new Line2D.Double(line.getX(), line.getY() - 9, line.getX(), line.getY() + 9));
    }
    g.setColor(Theme.BOOK.ink());
    g.fill(new Ellipse2D.Double(from.getX() - DOT, from.getY() - DOT, 2 * DOT, 2 * DOT));
  }

  /** Own skaters are rings, opponents crosses; a line shows where half a second takes them. */
  private static void skater(Graphics2D g, RinkDrawing ice, ReleaseSketch.SketchedSkater s) {
    Point2D at = ice.at(s.x(), s.y());
    double x = at.getX();
    double y = at.getY();
    g.setColor(Theme.BOOK.ink());
    g.setStroke(Strokes.even(1.2));
    g.draw(new Line2D.Double(at, ice.at(s.x() + AHEAD * s.vx(), s.y() + AHEAD * s.vy())));
    g.setStroke(Strokes.even(2.2));
    if (s.own()) {
      Ellipse2D ring = new Ellipse2D.Double(x - SKATER, y - SKATER, 2 * SKATER, 2 * SKATER);
      g.setColor(Color.WHITE);
      g.fill(ring);
      g.setColor(Theme.BOOK.ink());
      g.draw(ring);
    } else {
      g.draw(new Line2D.Double(x - SKATER, y - SKATER, x + SKATER, y + SKATER));
      g.draw(new Line2D.Double(x - SKATER, y + SKATER, x + SKATER, y - SKATER));
    }
  }

  private static void words(Graphics2D g, RinkDrawing ice, Rink rink, ReleaseSketch sketch) {
    g.setFont(Lettering.plain(11));
    g.setColor(Theme.BOOK.quiet());
    name(g, "own goal", ice.px(-rink.goalLine()));
    name(g, "red line", ice.px(0));
    name(g, "their goal line", ice.px(rink.goalLine()));
    double y = Headline.MARGIN + NAMES + ice.height() + 30;
    String marks = sketch.skaters().isEmpty() ? "" : " Rings: own skaters; crosses: opponents.";
    for (String line :
        Lettering.twoLines(
            sketch.spread() + marks, Lettering.plain(11), WIDTH - 2.0 * Headline.MARGIN)) {
      g.drawString(line, Headline.MARGIN, (float) y);
      y += LEADING;
    }
    g.setFont(Lettering.bold(14));
    g.setColor(Theme.BOOK.ink());
    g.drawString(sketch.gap(), Headline.MARGIN, (float) y + 6);
  }

  private static void name(Graphics2D g, String text, double x) {
    float left = (float) (x - Lettering.width(g.getFont(), text) / 2);
    g.drawString(text, Math.max(Headline.MARGIN, left), (float) (Headline.MARGIN + NAMES - 6));
  }
}
