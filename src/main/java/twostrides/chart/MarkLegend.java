package twostrides.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import twostrides.findings.MarkOutcome;

/**
 * The five outcomes of a release map, each with its mark and its number.
 *
 * @param entries where each stands
 * @param bottom pixels from the card's upper edge to below the last line
 */
record MarkLegend(List<Entry> entries, double bottom) {

  /** Pixels from an entry's left side to its words. */
  private static final double WORDS = 28;

  private static final double LEADING = 18;
  private static final double STEP = 12;

  MarkLegend {
    entries = List.copyOf(entries);
  }

  /**
   * One outcome.
   *
   * @param x pixels, left side
   * @param baseline pixels, of its first line
   */
  private record Entry(MarkOutcome outcome, List<String> lines, double x, double baseline) {}

  /** One column. */
  static MarkLegend beside(Map<MarkOutcome, Integer> counts, double x, double top, double width) {
    List<Entry> entries = new ArrayList<>();
    double y = top;
    for (Map.Entry<MarkOutcome, Integer> e : counts.entrySet()) {
      List<String> lines = lines(e, width);
      entries.add(new Entry(e.getKey(), lines, x, y));
      y += lines.size() * LEADING + STEP;
    }
    return new MarkLegend(entries, y - LEADING - STEP);
  }

  /** Two columns, read along the lines. */
  static MarkLegend below(Map<MarkOutcome, Integer> counts, double x, double top, double width) {
    List<Entry> entries = new ArrayList<>();
    double y = top + STEP / 2;
    for (Map.Entry<MarkOutcome, Integer> e : counts.entrySet()) {
      boolean right = entries.size() % 2 == 1;
      entries.add(new Entry(e.getKey(), lines(e, width / 2), right ? x + width / 2 : x, y));
      y += right ? LEADING + STEP / 2 : 0;
    }
    return new MarkLegend(entries, y);
  }

  private static List<String> lines(Map.Entry<MarkOutcome, Integer> e, double width) {
    return Lettering.twoLines(label(e.getKey(), e.getValue()), font(e.getKey()), width - WORDS);
  }

  /** For example "iced (12)". */
  static String label(MarkOutcome outcome, int n) {
    return outcome.label() + " (" + n + ")";
  }

  private static Font font(MarkOutcome outcome) {
    return outcome == MarkOutcome.ICED ? Lettering.bold(15) : Lettering.plain(13);
  }

  void draw(Graphics2D g, Theme theme) {
    for (Entry entry : entries) {
      MarkLook.draw(g, entry.outcome, new Point2D.Double(entry.x + 10, entry.baseline - 5));
      g.setFont(font(entry.outcome));
      g.setColor(theme.ink());
      double y = entry.baseline;
      for (String line : entry.lines) {
        g.drawString(line, (float) (entry.x + WORDS), (float) y);
        y += LEADING;
      }
    }
  }
}
