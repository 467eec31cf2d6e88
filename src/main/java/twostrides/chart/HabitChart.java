package twostrides.chart;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.DefaultCategoryDataset;
import twostrides.book.Format;
import twostrides.findings.Habit;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/**
 * The habit over the season: the share of carries and passes out that were released short of
 * center, by thirds of the team's games, with its 95 % interval and its counts. The scale is always
 * 0 to 100 %, so that sheets of different players can lie side by side.
 */
public final class HabitChart {

  /** Pixels of the view box; at 65 mm of a printed sheet 12 pixels are 6 points. */
  private static final int WIDTH = 380;

  private static final int PLOT_HEIGHT = 150;
  private static final int SCALE_WIDTH = 44;

  private HabitChart() {}

  /**
   * The chart in the book's colours.
   *
   * @param title whose habit, for those who do not see it; any text
   * @param habit the counts
   * @throws IllegalStateException when the machine has no font
   */
  public static Picture of(String title, Habit habit) {
    Theme theme = Theme.BOOK;
    String whose = Lettering.cleanOr(title, "A player");
    Headline headline = Headline.of("Released short of center", note(habit), WIDTH);
    int height = headline.height() + 10 + PLOT_HEIGHT + HabitMarks.LABELS;
    Rectangle2D area =
        new Rectangle2D.Double(
            Headline.MARGIN,
            headline.height() + 10.0,
            WIDTH - 2.0 * Headline.MARGIN,
            PLOT_HEIGHT + (double) HabitMarks.LABELS);
    return Easel.picture(
        new Easel.TextAlternative(whose + ": the habit over the season", description(habit)),
        new Easel.Size(WIDTH, height + Headline.MARGIN / 2),
        theme.grid(),
        g -> {
          headline.draw(g, theme);
          if (habit.stretches().isEmpty()) {
            empty(g, area, theme);
          } else {
            plot(habit.stretches(), theme).draw(g, area, new Point2D.Double(), null, null);
          }
        });
  }

  private static String note(Habit habit) {
    Count all = habit.all();
    return "Of pucks carried or passed out: "
        + all.successes()
        + " of "
        + all.trials()
        + (all.tooFew() ? "" : " (" + Format.share(all) + ")")
        + "; over the games "
        + habit.trend().direction().word()
        + ".";
  }

  private static String description(Habit habit) {
    return habit.stretches().stream()
        .map(s -> s.label() + ": " + counted(s.count()))
        .collect(Collectors.joining("; ", note(habit) + " ", "."));
  }

  private static String counted(Count c) {
    String counts = c.successes() + " of " + c.trials();
    return c.tooFew()
        ? counts + ", too few to say"
        : counts
            + " ("
            + Format.share(c)
            + ", 95 % interval "
            + Format.interval(new twostrides.stats.Clustered(c))
            + ")";
  }

  private static CategoryPlot plot(List<Habit.Stretch> stretches, Theme theme) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (int i = 0; i < stretches.size(); i++) {
      Count c = stretches.get(i).count();
      data.addValue(c.wilson().map(Interval::high).orElse(0.0), "share", Integer.valueOf(i));
    }
    CategoryAxis games = new CategoryAxis();
    games.setVisible(false);
    CategoryPlot plot =
        Plots.bare(data, games, scale(theme), new HabitMarks(stretches, theme), theme);
    plot.setFixedDomainAxisSpace(Plots.space(0, HabitMarks.LABELS));
    plot.setFixedRangeAxisSpace(Plots.space(SCALE_WIDTH, 0));
    return plot;
  }

  private static NumberAxis scale(Theme theme) {
    NumberAxis axis = new NumberAxis();
    axis.setRange(0, 1);
    axis.setTickUnit(
        new NumberTickUnit(
            0.25, new DecimalFormat("0 %", DecimalFormatSymbols.getInstance(Locale.ROOT))));
    axis.setTickLabelFont(Lettering.plain(12));
    axis.setTickLabelPaint(theme.quiet());
    axis.setAxisLinePaint(theme.quiet());
    axis.setTickMarksVisible(false);
    return axis;
  }

  private static void empty(Graphics2D g, Rectangle2D area, Theme theme) {
    g.setFont(Lettering.plain(12));
    g.setColor(theme.ink());
    g.drawString("No exit attempt of the team.", (float) area.getX(), (float) area.getCenterY());
  }
}
