package twostrides.book.chart;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import twostrides.stats.Interval;

/**
 * A habit over the season: a share for each stretch of games with what it could be. The scale is
 * always 0 to 100 %, so that sheets of different players can lie side by side.
 *
 * @param title whose and what; any text
 * @param stretches in order
 * @param words what the trend says, in a sentence
 */
public record Trend(String title, List<Stretch> stretches, String words) {

  private static final int HEIGHT = 230;

  /** Pixels from the middle of a dot to what is said of it. */
  private static final double CLEAR_OF_DOT = 10;

  /** Copies the stretches. */
  public Trend {
    stretches = List.copyOf(stretches);
  }

  /**
   * Some games.
   *
   * @param label which, short
   * @param dot the share
   * @param link to their rows
   */
  public record Stretch(String label, Dot dot, Link link) {}

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    String each =
        stretches.stream()
            .map(s -> s.label + ": " + Words.said(s.dot.count(), s.dot.interval()))
            .collect(Collectors.joining("; ", "", ". "));
    return ChartSvg.picture(
        new Caption(id, title, each + words),
        narrow -> chart(),
        HEIGHT,
        stretches.stream().map(Stretch::link).toList());
  }

  private JFreeChart chart() {
    Map<String, Color> colors = ChartSvg.colors();
    XYPlot plot =
        new XYPlot(
            data(),
            games(s -> Lettering.lines(s.label, Type.WORDS, 110, 1).get(0)),
            shares(),
            new XYErrorRenderer());
    plot.setDomainAxis(1, games(s -> Words.counted(s.dot.count())));
    plot.setDomainAxisLocation(1, AxisLocation.BOTTOM_OR_LEFT);
    JFreeChart chart = ChartLook.chart(plot, false);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlineStroke(ChartLook.pen(1));
    XYErrorRenderer marks = (XYErrorRenderer) plot.getRenderer();
    marks.setErrorPaint(colors.get("soft"));
    marks.setErrorStroke(ChartLook.pen(3));
    marks.setCapLength(0);
    marks.setDrawXError(false);
    for (int series = 0; series < 2; series++) {
      marks.setSeriesShape(series, new Ellipse2D.Double(-5, -5, 10, 10));
      marks.setSeriesPaint(series, colors.get("ink"));
      marks.setSeriesFillPaint(series, colors.get(series == 0 ? "ink" : "paper"));
    }
    marks.setUseFillPaint(true);
    marks.setDrawOutlines(true);
    labels(marks);
    return chart;
  }

  /** What is said is one series; what is too few to say is another, hollow and without interval. */
  private YIntervalSeriesCollection data() {
    YIntervalSeries said = new YIntervalSeries("said");
    YIntervalSeries few = new YIntervalSeries("few");
    for (int i = 0; i < stretches.size(); i++) {
      int at = i;
      Dot dot = stretches.get(i).dot;
      dot.share()
          .ifPresent(
              p -> {
                Interval shown = dot.shown().orElse(new Interval(p, p));
                YIntervalSeries series = dot.count().tooFew() ? few : said;
                series.add(at, p, shown.low(), shown.high());
              });
    }
    YIntervalSeriesCollection both = new YIntervalSeriesCollection();
    both.addSeries(said);
    both.addSeries(few);
    return both;
  }

  private void labels(XYLineAndShapeRenderer marks) {
    marks.setDefaultItemLabelGenerator(
        (data, series, item) -> stretches.get((int) data.getXValue(series, item)).dot.said());
    marks.setDefaultItemLabelFont(Type.STRONG.font());
    marks.setDefaultItemLabelsVisible(true);
    marks.setItemLabelInsets(new RectangleInsets(0, CLEAR_OF_DOT, 0, CLEAR_OF_DOT));
    marks.setDefaultPositiveItemLabelPosition(
        new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT));
  }

  private SymbolAxis games(Function<Stretch, String> words) {
    SymbolAxis axis = new SymbolAxis(null, stretches.stream().map(words).toArray(String[]::new));
    axis.setRange(-0.5, Math.max(1, stretches.size()) - 0.5);
    axis.setGridBandsVisible(false);
    axis.setTickMarksVisible(false);
    axis.setAxisLineVisible(false);
    return axis;
  }

  private static NumberAxis shares() {
    NumberAxis axis = new NumberAxis();
    axis.setRange(0, 1);
    axis.setTickUnit(
        new NumberTickUnit(
            0.25, new DecimalFormat("0 %", DecimalFormatSymbols.getInstance(Locale.ROOT))));
    axis.setTickMarksVisible(false);
    axis.setAxisLineVisible(false);
    return axis;
  }
}
