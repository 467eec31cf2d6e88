package twostrides.chart;

import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.CategoryItemRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.category.CategoryDataset;

/** What the book's charts have in common. */
final class Plots {

  private Plots() {}

  /** A plot that fills its area, with nothing behind it but the lines of the scale. */
  static CategoryPlot bare(
      CategoryDataset data,
      CategoryAxis names,
      ValueAxis scale,
      CategoryItemRenderer marks,
      Theme theme) {
    CategoryPlot plot = new CategoryPlot(data, names, scale, marks);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setOutlineVisible(false);
    plot.setBackgroundPaint(null);
    plot.setRangeGridlinePaint(theme.grid());
    plot.setRangeGridlineStroke(Strokes.even(1));
    return plot;
  }

  /** Room kept for the names at the left or below, pixels. */
  static AxisSpace space(double left, double bottom) {
    AxisSpace space = new AxisSpace();
    space.setLeft(left);
    space.setBottom(bottom);
    return space;
  }
}
