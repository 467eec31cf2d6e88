package twostrides.book.chart;

import java.util.List;
import twostrides.stats.Interval;

/**
 * One line of a {@link DotLines} at its place.
 *
 * @param row what it shows
 * @param columns where its parts stand
 * @param top pixels
 * @param label its label in lines that fit
 * @param note its note in lines that fit; empty without one
 */
record DotRow(
    DotLines.Row row, DotColumns columns, double top, List<String> label, List<String> note) {

  /** Pixels from one dot to the next of the same line, and around a line. */
  private static final double DOT_LEADING = 18;

  private static final double AROUND = 7;

  static DotRow of(DotLines.Row row, DotColumns columns, double top) {
    List<String> note =
        row.note().isEmpty()
            ? List.of()
            : Lettering.lines(row.note(), Type.WORDS, columns.noteRoom(), 3);
    return new DotRow(
        row, columns, top, Lettering.lines(row.label(), Type.WORDS, columns.labels(), 2), note);
  }

  private double dots() {
    return row.dots().size() * DOT_LEADING;
  }

  private double words(List<String> lines) {
    return lines.size() * Type.WORDS.leading();
  }

  double height() {
    return AROUND
        + (columns.narrow()
            ? words(label) + dots() + words(note)
            : Math.max(dots(), Math.max(words(label), words(note))));
  }

  void draw(Sketch s) {
    s.linked(
        row.link(),
        () -> {
          s.rect("hit", 0, top, s.width(), height());
          double inside = height() - AROUND;
          double labelTop = columns.narrow() ? 0 : (inside - words(label)) / 2;
          double dotsTop = columns.narrow() ? words(label) : (inside - dots()) / 2;
          double noteTop = columns.narrow() ? words(label) + dots() : (inside - words(note)) / 2;
          double y = top + AROUND / 2;
          if (columns.narrow()) {
            s.rect("plate", 0, y, Type.WORDS.widest(label) + 4, words(label));
            s.rect("plate", 0, y + noteTop, Type.WORDS.widest(note) + 4, words(note));
          }
          s.lines(Type.WORDS, label, 0, y + labelTop + 12);
          s.lines(Type.WORDS, note, columns.notes(), y + noteTop + 12);
          for (int i = 0; i < row.dots().size(); i++) {
            double middle = y + dotsTop + (i + 0.5) * DOT_LEADING;
            boolean above = columns.narrow() && columns.labels() < s.width();
            dot(s, i, middle, above ? y + 12 : middle + 4.5);
          }
        });
  }

  private void dot(Sketch s, int at, double middle, double baseline) {
    Dot dot = row.dots().get(at);
    String css = dot.tone().css();
    Scale scale = columns.scale();
    Scale bars = columns.volumes();
    if (bars.right() > bars.left() && dot.count().trials() > 0) {
      double length = bars.at(dot.count().trials()) - bars.left();
      s.rect("volume", bars.left(), middle - 6, length, 12);
    }
    dot.raw().ifPresent(i -> whisker(s, "pale", i, middle));
    dot.shown().ifPresent(i -> whisker(s, css, i, middle));
    dot.share().stream()
        .filter(scale::holds)
        .forEach(p -> mark(s, dot.count().tooFew() ? "hollow" : "ink", at, scale.at(p), middle));
    s.end(Type.STRONG, dot.said(), columns.shares() - 2, baseline);
    s.text(Type.NOTE, Words.counted(dot.count()), columns.shares() + 4, baseline);
  }

  private void whisker(Sketch s, String css, Interval i, double middle) {
    double low = columns.scale().at(i.low());
    s.line("whisker " + css, low, middle, columns.scale().at(i.high()), middle);
  }

  /** The first dot of a line is round, the second square. */
  static void mark(Sketch s, String css, int at, double x, double middle) {
    if (at == 0) {
      s.circle(css, x, middle, 5);
    } else {
      s.rect(css, x - 4.5, middle - 4.5, 9, 9);
    }
  }
}
