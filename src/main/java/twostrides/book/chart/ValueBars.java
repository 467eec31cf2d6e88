package twostrides.book.chart;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import twostrides.rates.Clustered;
import twostrides.rates.Count;

/**
 * Two or four values side by side as bars from zero, each with what it could be: what an icing
 * costs, and what a matched exit does. The numbers stand at the bars; there is no scale to read.
 *
 * @param title what is shown; any text
 * @param bars from the upper to the lower
 */
public record ValueBars(String title, List<Bar> bars) {

  /** Copies the bars. */
  public ValueBars {
    bars = List.copyOf(bars);
  }

  /**
   * One bar.
   *
   * @param label what it is of; any text
   * @param value 0 or more, in one unit for all bars
   * @param interval what it could be; empty where there are too few to say, and then the bar is
   *     hollow
   * @param said the value in words
   * @param counted what it was counted from, in words, such as "31 in 66"
   * @param tone what it means
   * @param link to its rows
   */
  public record Bar(
      String label,
      double value,
      Optional<Span> interval,
      String said,
      String counted,
      Tone tone,
      Link link) {

    /**
     * A mean, said with two decimals.
     *
     * @param label what it is of; any text
     * @param value in the picture's unit
     * @param interval empty where there are too few to say
     * @param counted what it was counted from, in words
     * @param tone what it means
     * @param link to its rows
     */
    public static Bar mean(
        String label, double value, Optional<Span> interval, String counted, Tone tone, Link link) {
      String said = interval.isEmpty() ? "few" : String.format(Locale.ROOT, "%.2f", value);
      return new Bar(label, value, interval, said, counted, tone, link);
    }

    /**
     * A share.
     *
     * @param label what it is of; any text
     * @param games a count for each game
     * @param tone what it means
     * @param link to its rows
     */
    public static Bar share(String label, Clustered games, Tone tone, Link link) {
      Count all = games.total();
      Optional<Span> interval =
          games.interval().filter(i -> !all.tooFew()).map(i -> new Span(i.low(), i.high()));
      String counted = Words.counted(all);
      double share = all.share().orElse(0);
      return new Bar(label, share, interval, Words.share(all), counted, tone, link);
    }

    private double end() {
      return Math.max(value, interval.map(Span::high).orElse(value));
    }
  }

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    String each =
        bars.stream()
            .map(b -> b.label + ": " + b.said + " (" + b.counted + ")")
            .collect(Collectors.joining("; ", "", "."));
    return Picture.of(new Caption(id, title, each), this::draw);
  }

  private double draw(Sketch s) {
    double longest = bars.stream().mapToDouble(Bar::end).max().orElse(1);
    double words = Type.NOTE.widest(bars.stream().map(Bar::counted).toList());
    double numbers = Type.NUMBER.widest(bars.stream().map(Bar::said).toList());
    double labels =
        Math.min(
            s.either(230, s.width()),
            Type.WORDS.widest(bars.stream().map(b -> Lettering.clean(b.label)).toList()) + 1);
    double left = s.either(labels + 14, 1);
    double right = s.width() - s.either(words + 10, 0) - numbers - 12;
    Scale scale = new Scale(0, longest > 0 ? longest : 1, left, right);
    double y = 4;
    double top = y;
    for (Bar bar : bars) {
      List<String> label = Lettering.lines(bar.label, Type.WORDS, labels, 2);
      double from = y;
      s.linked(bar.link, () -> bar(s, bar, label, scale, from));
      y += s.either(44, 52 + label.size() * Type.WORDS.leading());
    }
    s.line("axis", left, top, left, y - s.either(8, 14));
    return y;
  }

  private static void bar(Sketch s, Bar bar, List<String> label, Scale scale, double top) {
    double above = s.narrow() ? label.size() * Type.WORDS.leading() + 2 : 0;
    double middle = top + above + 16;
    double end = scale.at(bar.value);
    boolean few = bar.interval.isEmpty();
    double first = s.narrow() ? top + 12 : middle + 4 - (label.size() - 1) * 7.5;
    s.rect("hit", 0, top, s.width(), above + 32);
    s.lines(Type.WORDS, label, 0, first);
    s.rect(
        few ? "hollow" : bar.tone.css() + " bar",
        scale.left(),
        top + above + 2,
        end - scale.left(),
        28);
    bar.interval.ifPresent(
        i -> {
          double low = scale.at(i.low());
          double high = scale.at(i.high());
          s.line("error", low, middle, high, middle);
          s.line("error", low, middle - 5, low, middle + 5);
          s.line("error", high, middle - 5, high, middle + 5);
        });
    double number = Math.max(end, scale.at(bar.end())) + 10;
    s.text(Type.NUMBER, bar.said, number, middle + 6);
    if (s.narrow()) {
      s.text(Type.NOTE, bar.counted, 1, top + above + 44);
    } else {
      s.text(Type.NOTE, Sketch.Anchor.END, bar.counted, s.width(), middle + 5);
    }
  }
}
