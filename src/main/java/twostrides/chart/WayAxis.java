package twostrides.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Names the rows of a way-out chart: the way out once, in bold, and beside it the strength of each
 * row. A line parts one way out from the next.
 */
final class WayAxis extends CategoryAxis {

  private static final long serialVersionUID = 1L;
  private static final Font WAY = Lettering.bold(13);
  private static final Font STRENGTH = Lettering.plain(12);

  /** Pixels between the names and between the strength and its bar. */
  private static final double GAP = 10;

  private final transient List<WayRows.Row> rows;
  private final transient Theme theme;

  WayAxis(List<WayRows.Row> rows, Theme theme) {
    this.rows = List.copyOf(rows);
    this.theme = theme;
    setLowerMargin(0);
    setUpperMargin(0);
    setCategoryMargin(0);
  }

  /** Pixels that the widest names need. */
  double width() {
    return wayWidth() + GAP + strengthWidth() + GAP;
  }

  private double wayWidth() {
    return rows.stream().mapToDouble(r -> Lettering.width(WAY, r.way().label())).max().orElse(0);
  }

  private double strengthWidth() {
    return rows.stream()
        .mapToDouble(r -> Lettering.width(STRENGTH, r.strengthName()))
        .max()
        .orElse(0);
  }

  @Override
  public AxisState draw(
      Graphics2D g,
      double cursor,
      Rectangle2D plotArea,
      Rectangle2D dataArea,
      RectangleEdge edge,
      PlotRenderingInfo plotState) {
    double rowHeight = dataArea.getHeight() / rows.size();
    for (int i = 0; i < rows.size(); i++) {
      WayRows.Row row = rows.get(i);
      double top = dataArea.getY() + i * rowHeight;
      float baseline = (float) (top + rowHeight / 2 + STRENGTH.getSize() * 0.36);
      if (row.first()) {
        g.setFont(WAY);
        g.setColor(theme.ink());
        g.drawString(row.way().label(), (float) plotArea.getX(), baseline);
      }
      String strength = row.strengthName();
      if (!strength.isEmpty()) {
        double right = dataArea.getX() - GAP;
        g.setFont(STRENGTH);
        g.setColor(theme.ink());
        g.drawString(strength, (float) (right - Lettering.width(STRENGTH, strength)), baseline);
      }
      if (row.first() && i > 0) {
        g.setColor(theme.grid());
        g.setStroke(Strokes.even(1));
        g.draw(new Line2D.Double(plotArea.getX(), top, plotArea.getMaxX(), top));
      }
    }
    return new AxisState(cursor);
  }
}
