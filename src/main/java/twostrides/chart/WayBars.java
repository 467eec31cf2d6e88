package twostrides.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.AbstractCategoryItemRenderer;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.data.category.CategoryDataset;

/** Draws one flat bar a row, in up to three parts, with its count at the end. */
final class WayBars extends AbstractCategoryItemRenderer {

  private static final long serialVersionUID = 1L;

  /** Pixels: between two outlines a shorter part would lose its colour. */
  private static final double SHORTEST_ICED = 3.5;

  /** Part of a row's height that the bar takes. */
  private static final double THICKNESS = 0.68;

  /** Pixels between the bar's end and its label, and between the parts of a label. */
  static final double LABEL_GAP = 8;

  private final transient List<WayRows.Row> rows;
  private final transient Theme theme;

  WayBars(List<WayRows.Row> rows, Theme theme) {
    this.rows = List.copyOf(rows);
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
    WayRows.Row row = rows.get(at);
    double rowHeight = area.getHeight() / rows.size();
    double height = rowHeight * THICKNESS;
    double top = area.getY() + at * rowHeight + (rowHeight - height) / 2;
    double zero = at(rangeAxis, 0, area, plot);
    double icings = at(rangeAxis, row.iced().successes(), area, plot);
    if (row.iced().successes() > 0) {
      icings = Math.max(icings, zero + SHORTEST_ICED);
    }
    double known = Math.max(icings, at(rangeAxis, row.iced().trials(), area, plot));
    double end = Math.max(known, at(rangeAxis, row.attempts(), area, plot));
    BarFill.NOT_IN_SHEET.draw(g, part(known, end, top, height), theme);
    BarFill.NOT_ICED.draw(g, part(icings, known, top, height), theme);
    BarFill.ICED.draw(g, part(zero, icings, top, height), theme);
    label(g, row, end + LABEL_GAP, area.getY() + (at + 0.5) * rowHeight);
  }

  private static double at(ValueAxis axis, int attempts, Rectangle2D area, CategoryPlot plot) {
    return axis.valueToJava2D(attempts, area, plot.getRangeAxisEdge());
  }

  private static Rectangle2D part(double from, double to, double top, double height) {
    return new Rectangle2D.Double(from, top, to - from, height);
  }

  private void label(Graphics2D g, WayRows.Row row, double x, double middle) {
    Font font = font(row);
    g.setFont(font);
    g.setColor(row.attempts() == 0 ? theme.quiet() : theme.ink());
    float baseline = (float) (middle + font.getSize() * 0.36);
    g.drawString(row.share(), (float) x, baseline);
    if (!row.rest().isEmpty()) {
      g.setFont(lesser());
      g.setColor(theme.quiet());
      g.drawString(row.rest(), (float) (x + restStart(row)), baseline);
    }
  }

  /** Pixels that a row's whole label needs. */
  static double labelWidth(WayRows.Row row) {
    return row.rest().isEmpty()
        ? Lettering.width(font(row), row.share())
        : restStart(row) + Lettering.width(lesser(), row.rest());
  }

  private static double restStart(WayRows.Row row) {
    return Lettering.width(font(row), row.share()) + LABEL_GAP;
  }

  /** The counts are what a bar is looked at for: bold, unless there are too few. */
  private static Font font(WayRows.Row row) {
    return row.iced().tooFew() ? Lettering.plain(13) : Lettering.bold(13);
  }

  private static Font lesser() {
    return Lettering.plain(12);
  }
}
