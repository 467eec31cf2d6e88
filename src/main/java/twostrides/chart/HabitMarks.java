package twostrides.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.AbstractCategoryItemRenderer;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.data.category.CategoryDataset;
import twostrides.book.Format;
import twostrides.findings.Habit;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/**
 * Draws one stretch of a season: a dot at the share, a bar over its interval, and beneath it the
 * games and the counts. Too few cases get the words instead of a dot.
 */
final class HabitMarks extends AbstractCategoryItemRenderer {

  private static final long serialVersionUID = 1L;

  /** Pixels below the axis for the games and the counts. */
  static final int LABELS = 38;

  private static final double DOT = 5;
  private static final double CAP = 7;
  private static final Font SHARE = Lettering.bold(13);
  private static final Font WORDS = Lettering.plain(12);

  private final transient List<Habit.Stretch> stretches;
  private final transient Theme theme;

  HabitMarks(List<Habit.Stretch> stretches, Theme theme) {
    this.stretches = List.copyOf(stretches);
    this.theme = theme;
  }

  @Override
  public void drawItem(
      Graphics2D g,
      CategoryItemRendererState state,
      Rectangle2D area,
      CategoryPlot plot,
      CategoryAxis domainAxis,
      ValueAxis rangeAxis,
      CategoryDataset dataset,
      int series,
      int at,
      int pass) {
    Count c = stretches.get(at).count();
    double x = area.getX() + (at + 0.5) * area.getWidth() / stretches.size();
    centered(g, WORDS, stretches.get(at).label(), x, area.getMaxY() + 16);
    centered(g, WORDS, c.successes() + " of " + c.trials(), x, area.getMaxY() + 32);
    if (c.tooFew()) {
      centered(g, WORDS, Format.share(c), x, area.getMaxY() - 8);
      return;
    }
    Interval interval = c.wilson().orElseThrow();
    double high = rangeAxis.valueToJava2D(interval.high(), area, plot.getRangeAxisEdge());
    double low = rangeAxis.valueToJava2D(interval.low(), area, plot.getRangeAxisEdge());
    double middle = rangeAxis.valueToJava2D(c.share().orElseThrow(), area, plot.getRangeAxisEdge());
    g.setColor(theme.ink());
    g.setStroke(Strokes.even(2));
    g.draw(new Line2D.Double(x, high, x, low));
    g.draw(new Line2D.Double(x - CAP, high, x + CAP, high));
    g.draw(new Line2D.Double(x - CAP, low, x + CAP, low));
    Ellipse2D dot = new Ellipse2D.Double(x - DOT, middle - DOT, 2 * DOT, 2 * DOT);
    g.setColor(theme.restart());
    g.fill(dot);
    g.setColor(theme.ink());
    g.setStroke(Strokes.even(1));
    g.draw(dot);
    g.setFont(SHARE);
    g.drawString(Format.share(c), (float) (x + DOT + 5), (float) middle + 5);
  }

  private void centered(Graphics2D g, Font font, String words, double x, double y) {
    g.setFont(font);
    g.setColor(theme.ink());
    g.drawString(words, (float) (x - Lettering.width(font, words) / 2), (float) y);
  }
}
