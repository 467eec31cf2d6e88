package twostrides.chart;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.data.category.DefaultCategoryDataset;
import twostrides.findings.Profile;
import twostrides.game.Strength;
import twostrides.stats.Count;

/**
 * Exit attempts by way out and strength, one flat bar each. The striped part at the left was iced;
 * the count stands at the bar's end. The bar is as long as all attempts; the share is of those
 * whose ending the sheet tells.
 */
public final class WayOutChart {

  /** Pixels of the view box; A4 width then sets 13 pixels at about 9 points. */
  private static final int WIDTH = 800;

  private static final int ROW_HEIGHT = 25;
  private static final int LEGEND_HEIGHT = 30;
  private static final int AXIS_HEIGHT = 46;

  /** The scale never shows fewer attempts, so that one attempt stays a short bar. Assumed. */
  private static final int SHORTEST_SCALE = 12;

  /** Most steps on the axis. */
  private static final int MOST_TICKS = 6;

  private WayOutChart() {}

  /**
   * The chart in the book's colours.
   *
   * @param title what is shown, for example a player's name; any text
   * @param profile the counts
   * @throws IllegalStateException when the machine has no font
   */
  public static Picture of(String title, Profile profile) {
    return of(title, profile, Theme.BOOK);
  }

  /**
   * The chart in other colours.
   *
   * @param title what is shown, for example a player's name; any text
   * @param profile the counts
   * @param theme the colours
   * @throws IllegalStateException when the machine has no font
   */
  public static Picture of(String title, Profile profile, Theme theme) {
    List<WayRows.Row> rows = WayRows.of(profile);
    String shown = Lettering.cleanOr(title, "Exit attempts");
    Headline headline = Headline.of(shown, summary(profile), WIDTH);
    int plotHeight = rows.size() * ROW_HEIGHT + AXIS_HEIGHT;
    int top = headline.height() + LEGEND_HEIGHT;
    Easel.Size size = new Easel.Size(WIDTH, top + plotHeight + Headline.MARGIN / 2);
    Rectangle2D area =
        new Rectangle2D.Double(Headline.MARGIN, top, WIDTH - 2.0 * Headline.MARGIN, plotHeight);
    return Easel.picture(
        new Easel.TextAlternative(
            shown + ": exit attempts by way out and strength", description(profile, rows)),
        size,
        theme.grid(),
        g -> {
          headline.draw(g, theme);
          legend(g, headline.height(), rows, theme);
          plot(rows, theme, area.getWidth()).draw(g, area, new Point2D.Double(), null, null);
        });
  }

  private static String summary(Profile profile) {
    int attempts = profile.attempts();
    if (attempts == 0) {
      return "No exit attempts in these sheets.";
    }
    Count iced = profile.iced();
    String all = attempts + (attempts == 1 ? " exit attempt" : " exit attempts");
    return iced.trials() == 0
        ? all + "; how they ended is not in these sheets."
        : all + "; all ways together: " + WayRows.said(iced) + ".";
  }

  private static String description(Profile profile, List<WayRows.Row> rows) {
    return rows.stream()
        .map(r -> r.way().label() + strength(r) + ": " + (r.share() + " " + r.rest()).strip())
        .collect(Collectors.joining("; ", summary(profile) + " ", "."));
  }

  private static String strength(WayRows.Row row) {
    return row.strength()
        .map(s -> s == Strength.UNKNOWN ? ", strength not known" : ", " + s.label())
        .orElse("");
  }

  private static void legend(Graphics2D g, double top, List<WayRows.Row> rows, Theme theme) {
    boolean gaps = rows.stream().anyMatch(r -> r.unknownEndings() > 0);
    double x = Headline.MARGIN;
    for (BarFill fill : BarFill.values()) {
      if (fill == BarFill.NOT_IN_SHEET && !gaps) {
        continue;
      }
      fill.draw(g, new Rectangle2D.Double(x, top + 5, 26, 13), theme);
      g.setFont(Lettering.plain(12));
      g.setColor(theme.ink());
      g.drawString(fill.label(), (float) x + 34, (float) top + 16);
      x += 34 + Lettering.width(Lettering.plain(12), fill.label()) + 26;
    }
  }

  private static CategoryPlot plot(List<WayRows.Row> rows, Theme theme, double width) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (int i = 0; i < rows.size(); i++) {
      data.addValue(rows.get(i).attempts(), "attempts", Integer.valueOf(i));
    }
    WayAxis names = new WayAxis(rows, theme);
    CategoryPlot plot =
        Plots.bare(
            data,
            names,
            scale(rows, theme, width - names.width()),
            new WayBars(rows, theme),
            theme);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setFixedDomainAxisSpace(Plots.space(names.width(), 0));
    plot.setFixedRangeAxisSpace(Plots.space(0, AXIS_HEIGHT));
    return plot;
  }

  /** A scale of whole attempts, long enough that every bar's label fits beside the bar. */
  private static NumberAxis scale(List<WayRows.Row> rows, Theme theme, double width) {
    double longest = SHORTEST_SCALE;
    for (WayRows.Row row : rows) {
      double label = WayBars.labelWidth(row) + 2 * WayBars.LABEL_GAP;
      longest = Math.max(longest, row.attempts() * width / Math.max(width - label, width / 8));
    }
    NumberAxis axis = new NumberAxis("exit attempts");
    axis.setRange(0, longest);
    axis.setTickUnit(
        new NumberTickUnit(
            step(longest), new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT))));
    axis.setLabelFont(Lettering.plain(12));
    axis.setLabelPaint(theme.ink());
    axis.setTickLabelFont(Lettering.plain(12));
    axis.setTickLabelPaint(theme.quiet());
    axis.setAxisLinePaint(theme.quiet());
    axis.setTickMarksVisible(false);
    return axis;
  }

  /** 1, 2 or 5 times a power of ten. */
  private static int step(double longest) {
    for (int decade = 1; ; decade *= 10) {
      for (int step : new int[] {decade, 2 * decade, 5 * decade}) {
        if (longest / step <= MOST_TICKS) {
          return step;
        }
      }
    }
  }
}
