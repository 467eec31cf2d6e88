package twostrides.book.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Map;
import org.jfree.chart.ChartTheme;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.StandardChartTheme;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.RectangleInsets;

/** The look that the charts of JFreeChart share: the colours and the type of the diagrams. */
final class ChartLook {

  private ChartLook() {}

  /** A chart without title, frame and ground, in the book's theme. */
  static JFreeChart chart(Plot plot, boolean legend) {
    JFreeChart chart = new JFreeChart(null, Type.TITLE.font(), plot, legend);
    theme().apply(chart);
    chart.setBackgroundPaint(null);
    chart.setPadding(new RectangleInsets(6, 2, 2, 8));
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    return chart;
  }

  private static ChartTheme theme() {
    Map<String, Color> colors = ChartSvg.colors();
    StandardChartTheme theme = new StandardChartTheme("book", false);
    theme.setExtraLargeFont(Type.TITLE.font());
    theme.setLargeFont(Type.WORDS.font());
    theme.setRegularFont(Type.WORDS.font());
    theme.setSmallFont(Type.WORDS.font());
    theme.setTickLabelPaint(colors.get("soft"));
    theme.setItemLabelPaint(colors.get("ink"));
    theme.setLegendItemPaint(colors.get("ink"));
    theme.setDomainGridlinePaint(colors.get("grid"));
    theme.setRangeGridlinePaint(colors.get("grid"));
    theme.setAxisOffset(RectangleInsets.ZERO_INSETS);
    theme.setBarPainter(new StandardBarPainter());
    theme.setShadowVisible(false);
    return theme;
  }

  /** A pen without a pattern, pixels wide. */
  static BasicStroke pen(float width) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4);
  }
}
