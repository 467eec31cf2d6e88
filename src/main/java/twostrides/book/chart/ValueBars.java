package twostrides.book.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Two or four values side by side as bars from zero, each with what it could be: what an icing
 * costs, and what a matched exit does. The numbers stand at the bars; there is no scale to read.
 *
 * @param title what is shown; any text
 * @param bars from the upper to the lower
 */
public record ValueBars(String title, List<Bar> bars) {

  private static final double THICK = 28;

  /** Copies the bars. */
  public ValueBars {
    bars = List.copyOf(bars);
  }

  /**
   * One bar, its value said with two decimals.
   *
   * @param label what it is of; any text
   * @param value 0 or more, in one unit for all bars
   * @param interval what it could be; empty where there are too few to say, and then the bar is
   *     hollow
   * @param counted what it was counted from, in words, such as "31 in 66"
   * @param tone what it means
   * @param link to its rows
   */
  public record Bar(
      String label, double value, Optional<Span> interval, String counted, Tone tone, Link link) {

    private double end() {
      return Math.max(value, interval.map(Span::high).orElse(value));
    }

    private String said() {
      return interval.isEmpty() ? "few" : decimals(value);
    }

    private String could() {
      String range = interval.map(i -> decimals(i.low()) + " to " + decimals(i.high())).orElse("");
      return range.isEmpty() ? counted : counted + ", could be " + range;
    }

    private static String decimals(double v) {
      return String.format(Locale.ROOT, "%.2f", v);
    }
  }

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    List<String> each = new ArrayList<>();
    bars.forEach(b -> each.add(b.label + ": " + b.said() + " (" + b.could() + ")"));
    return Picture.of(new Caption(id, title, String.join("; ", each) + "."), this::draw);
  }

  private double draw(Sketch s) {
    double longest = bars.stream().mapToDouble(Bar::end).max().orElse(1);
    double numbers = Type.NUMBER.widest(bars.stream().map(Bar::said).toList());
    double right = s.width() - numbers - 12;
    Scale scale = new Scale(0, Math.max(longest, 1e-9), 1, right);
    double y = 0;
    for (Bar bar : bars) {
      List<String> label = Lettering.lines(bar.label, Type.STRONG, s.width(), 2);
      List<String> note = Lettering.lines(bar.could(), Type.NOTE, s.width(), 2);
      double top = y;
      double height = label.size() * 15 + THICK + note.size() * 15 + 6;
      s.linked(
          bar.link,
          () -> {
            s.rect("hit", 0, top, s.width(), height);
            double next = s.lines(Type.STRONG, label, 1, top + 12) - 8;
            bar(s, bar, scale, next);
            s.lines(Type.NOTE, note, 1, next + THICK + 14);
          });
      y += height + 8;
    }
    return y;
  }

  private static void bar(Sketch s, Bar bar, Scale scale, double top) {
    double middle = top + THICK / 2;
    String css = bar.interval.isEmpty() ? "doubtful" : bar.tone.css() + " bar";
    s.rect(css, scale.left(), top, scale.at(bar.value) - scale.left(), THICK);
    bar.interval.ifPresent(
        i -> {
          double low = scale.at(i.low());
          String ends = "m0 -5v10m0 -5h" + Sketch.number(scale.at(i.high()) - low) + "m0 -5v10";
          s.mark("halo", low, middle, ends);
          s.mark("error", low, middle, ends);
        });
    s.text(Type.NUMBER, bar.said(), scale.at(bar.end()) + 10, middle + 6);
  }
}
