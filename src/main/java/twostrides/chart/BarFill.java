package twostrides.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The three parts of a bar, told apart by colour and by texture. */
enum BarFill {
  /** Iced: vermillion with dark stripes. */
  ICED("iced"),
  /** Did not: plain and light. */
  NOT_ICED("not iced"),
  /** The sheet does not say: white. */
  NOT_IN_SHEET("ending not in the sheet");

  /** Pixels between two stripes, along the bar. */
  private static final double STRIPE_STEP = 6;

  /** Pixels; stripes would blacken a narrower part. */
  private static final double NARROWEST_STRIPED = 4;

  private static final BasicStroke STRIPE = Strokes.even(1.6);
  private static final BasicStroke OUTLINE = Strokes.even(1);

  private final String label;

  BarFill(String label) {
    this.label = label;
  }

  /** The words of the legend. */
  String label() {
    return label;
  }

  /** Draws a part; nothing for a part of no length. */
  void draw(Graphics2D g, Rectangle2D part, Theme theme) {
    if (part.getWidth() <= 0) {
      return;
    }
    g.setColor(
        switch (this) {
          case ICED -> theme.restart();
          case NOT_ICED -> theme.bar();
          case NOT_IN_SHEET -> Color.WHITE;
        });
    g.fill(part);
    if (this == ICED && part.getWidth() >= NARROWEST_STRIPED) {
      g.setColor(theme.ink());
      g.setStroke(STRIPE);
      g.draw(stripes(part));
    }
    g.setColor(theme.ink());
    g.setStroke(OUTLINE);
    g.draw(part);
  }

  /**
   * Stripes at 45 degrees that end at the part's edges: cut by reckoning, because a clip would put
   * an id into the SVG.
   */
  private static Path2D stripes(Rectangle2D part) {
    double h = part.getHeight();
    Path2D path = new Path2D.Double();
    for (double foot = part.getX() - h + STRIPE_STEP / 2;
        foot < part.getMaxX();
        foot += STRIPE_STEP) {
      double fromX = Math.max(foot, part.getX());
      double toX = Math.min(foot + h, part.getMaxX());
      if (toX > fromX) {
        path.moveTo(fromX, part.getMaxY() - (fromX - foot));
        path.lineTo(toX, part.getMaxY() - (toX - foot));
      }
    }
    return path;
  }
}
