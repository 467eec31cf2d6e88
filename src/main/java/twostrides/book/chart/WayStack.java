package twostrides.book.chart;

import java.awt.Color;
import java.text.NumberFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/**
 * Attempts by way out and strength as stacked bars: what a player does with the puck, and when.
 *
 * @param title whose; any text
 * @param ways from the upper to the lower
 */
public record WayStack(String title, List<Way> ways) {

  /** Shades of the strengths, from the first on, and of the words on them. */
  private static final List<String> SHADES = List.of("volume", "soft", "ink", "ground");

  private static final List<String> ON_SHADES = List.of("ink", "paper", "paper", "ink");

  /** A part shorter than this of the longest bar has no room for its number. */
  private static final double ROOM = 0.06;

  private static final int BAR = 46;

  /** Copies the ways. */
  public WayStack {
    ways = List.copyOf(ways);
  }

  /**
   * One way out.
   *
   * @param label any text, unlike that of the others
   * @param parts strengths in order, the same names for all ways; one that no way has is not shown
   * @param link to its rows
   */
  public record Way(String label, List<Part> parts, Link link) {
    /** Copies the parts. */
    public Way {
      parts = List.copyOf(parts);
    }

    private int attempts() {
      return parts.stream().mapToInt(Part::attempts).sum();
    }
  }

  /**
   * Attempts at one strength.
   *
   * @param strength its name
   * @param attempts how many
   */
  public record Part(String strength, int attempts) {}

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    String each =
        ways.stream()
            .map(
                w ->
                    w.parts.stream()
                        .filter(this::occurs)
                        .map(p -> Words.whole(p.attempts) + " " + p.strength)
                        .collect(Collectors.joining(", ", w.label + ": ", "")))
            .collect(Collectors.joining("; ", "", "."));
    return ChartSvg.picture(
        new Caption(id, title, each),
        this::chart,
        60 + BAR * Math.max(1, ways.size()),
        ways.stream().map(Way::link).toList());
  }

  private boolean occurs(Part part) {
    return ways.stream()
        .flatMap(w -> w.parts.stream())
        .anyMatch(p -> p.strength.equals(part.strength) && p.attempts > 0);
  }

  private JFreeChart chart(boolean narrow) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    Map<String, Integer> shades = new LinkedHashMap<>();
    for (Way way : ways) {
      for (int i = 0; i < way.parts.size(); i++) {
        Part part = way.parts.get(i);
        if (occurs(part)) {
          shades.put(part.strength, i % SHADES.size());
          data.addValue(part.attempts, part.strength, label(way, narrow));
        }
      }
    }
    CategoryPlot plot = new CategoryPlot(data, names(narrow), new NumberAxis(), bars(data));
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    JFreeChart chart = ChartLook.chart(plot, true);
    chart.getLegend().setPosition(RectangleEdge.TOP);
    chart.getLegend().setHorizontalAlignment(HorizontalAlignment.LEFT);
    chart.getLegend().setFrame(BlockBorder.NONE);
    chart.getLegend().setBackgroundPaint(null);
    plot.setRangeGridlineStroke(ChartLook.pen(1));
    NumberAxis attempts = (NumberAxis) plot.getRangeAxis();
    attempts.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
    attempts.setNumberFormatOverride(NumberFormat.getIntegerInstance(Locale.ROOT));
    attempts.setAxisLineVisible(false);
    attempts.setTickMarksVisible(false);
    Map<String, Color> colors = ChartSvg.colors();
    StackedBarRenderer bars = (StackedBarRenderer) plot.getRenderer();
    int series = 0;
    for (int shade : shades.values()) {
      bars.setSeriesPaint(series, colors.get(SHADES.get(shade)));
      bars.setSeriesItemLabelPaint(series++, colors.get(ON_SHADES.get(shade)));
    }
    return chart;
  }

  private static String label(Way way, boolean narrow) {
    String count = " (" + Words.whole(way.attempts()) + ")";
    double room = (narrow ? 145 : 210) - Type.WORDS.width(count);
    return String.join("\n", Lettering.lines(way.label, Type.WORDS, room, 3)) + count;
  }

  private static CategoryAxis names(boolean narrow) {
    CategoryAxis axis = new CategoryAxis();
    axis.setMaximumCategoryLabelLines(3);
    axis.setMaximumCategoryLabelWidthRatio(narrow ? 0.5f : 0.4f);
    axis.setAxisLineVisible(false);
    axis.setTickMarksVisible(false);
    return axis;
  }

  /** Bars with the number in each part that has room for it. */
  private StackedBarRenderer bars(CategoryDataset data) {
    double least = ROOM * ways.stream().mapToInt(Way::attempts).max().orElse(1);
    StackedBarRenderer bars =
        new StackedBarRenderer() {
          private static final long serialVersionUID = 1L;

          @Override
          public boolean isItemLabelVisible(int row, int column) {
            return data.getValue(row, column).doubleValue() > least;
          }
        };
    bars.setDefaultItemLabelGenerator(
        new StandardCategoryItemLabelGenerator(
            "{2}", NumberFormat.getIntegerInstance(Locale.ROOT)));
    bars.setDefaultItemLabelFont(Type.WORDS.font());
    return bars;
  }
}
