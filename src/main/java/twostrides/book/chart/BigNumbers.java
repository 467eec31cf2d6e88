package twostrides.book.chart;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import twostrides.rates.Clustered;
import twostrides.rates.Count;

/**
 * The numbers to be seen first, each with a small axis: where it stands, what it could be, and what
 * it is compared with.
 *
 * @param title what is shown; any text
 * @param values two to four
 */
public record BigNumbers(String title, List<Value> values) {

  private static final double GAP = 28;

  /** Copies the values. */
  public BigNumbers {
    values = List.copyOf(values);
  }

  /**
   * One number.
   *
   * @param said the number without its unit
   * @param unit behind the number; may be empty
   * @param words what it is; any text
   * @param at where it stands on its axis; empty where there is nothing to count
   * @param interval what it could be, in the unit of the axis; empty where there are too few to say
   * @param axis both ends of the axis
   * @param reference what it is compared with, with its value in the label
   * @param link to its rows
   */
  public record Value(
      String said,
      String unit,
      String words,
      Optional<Double> at,
      Optional<Span> interval,
      Span axis,
      Optional<Reference> reference,
      Link link) {

    /**
     * A share, in percent.
     *
     * @param words what it is; any text
     * @param games a count for each game
     * @param axis both ends of the axis, shares 0 to 1
     * @param reference a share 0 to 1
     * @param link to its rows
     */
    public static Value share(
        String words, Clustered games, Span axis, Optional<Reference> reference, Link link) {
      Count all = games.total();
      String said = Words.share(all);
      boolean percent = said.endsWith(" %");
      return new Value(
          percent ? said.substring(0, said.length() - 2) : said,
          percent ? "%" : "",
          words + ": " + Words.counted(all),
          all.share().stream().map(p -> 100 * p).boxed().findFirst(),
          games
              .interval()
              .filter(i -> !all.tooFew())
              .map(i -> new Span(100 * i.low(), 100 * i.high())),
          new Span(100 * axis.low(), 100 * axis.high()),
          reference.map(
              r -> new Reference(r.label() + " " + Words.percent(r.value()), 100 * r.value())),
          link);
    }

    /**
     * A number in a unit, said without decimals.
     *
     * @param words what it is and what it was counted from; any text
     * @param unit such as "s"
     * @param value in the unit
     * @param interval in the unit; empty where there are too few to say
     * @param axis in the unit
     * @param reference in the unit
     * @param link to its rows
     */
    public static Value measured(
        String words,
        String unit,
        double value,
        Optional<Span> interval,
        Span axis,
        Optional<Reference> reference,
        Link link) {
      boolean few = interval.isEmpty();
      return new Value(
          few ? "few" : whole(value),
          few ? "" : unit,
          words,
          Optional.of(value),
          interval,
          axis,
          reference.map(
              r -> new Reference(r.label() + " " + whole(r.value()) + " " + unit, r.value())),
          link);
    }

    private static String whole(double value) {
      return String.format(Locale.ROOT, "%,d", Math.round(value));
    }

    private String could() {
      return interval
          .map(i -> "could be " + whole(i.low()) + " to " + whole(i.high()) + " " + unit)
          .orElse("too few to say more");
    }
  }

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    String each =
        values.stream()
            .map(
                v ->
                    (v.said + " " + v.unit).strip()
                        + " "
                        + v.words
                        + ", "
                        + v.could()
                        + v.reference.map(r -> ", " + r.label()).orElse(""))
            .collect(Collectors.joining("; ", "", "."));
    return Picture.of(new Caption(id, title, each), this::draw);
  }

  private double draw(Sketch s) {
    int columns = s.narrow() ? 1 : Math.max(1, values.size());
    double width = (s.width() - (columns - 1) * GAP) / columns;
    double bottom = 0;
    for (int i = 0; i < values.size(); i++) {
      Value value = values.get(i);
      double left = s.narrow() ? 0 : i * (width + GAP);
      double top = s.narrow() && i > 0 ? bottom + 18 : 0;
      double end = one(s, value, left, top, width);
      bottom = Math.max(bottom, end);
    }
    return bottom;
  }

  private static double one(Sketch s, Value value, double left, double top, double width) {
    List<String> words = Lettering.lines(value.words, Type.WORDS, width, 3);
    double room = s.narrow() ? words.size() : 3;
    double baseline = top + 54 + room * Type.WORDS.leading();
    double axis = baseline + 16;
    Scale scale = new Scale(value.axis.low(), value.axis.high(), left + 1, left + width - 1);
    s.linked(
        value.link,
        () -> {
          s.rect("hit", left, top, width, axis + 28 - top);
          s.text(Type.BIG, value.said, left, top + 34);
          double after = left + Type.BIG.width(value.said) + 6;
          s.text(Type.NUMBER, value.unit, after, top + 34);
          s.lines(Type.WORDS, words, left, top + 54);
          s.text(Type.NOTE, value.could(), left, top + 54 + words.size() * Type.WORDS.leading());
          axis(s, value, scale, axis, left, width);
        });
    return axis + (value.reference.isPresent() ? 28 : 10);
  }

  private static void axis(
      Sketch s, Value value, Scale scale, double y, double left, double width) {
    s.rect("volume", left, y - 3, width, 6);
    value.interval.ifPresent(
        i -> s.line("whisker bought", scale.at(i.low()), y, scale.at(i.high()), y));
    value.reference.ifPresent(
        r -> {
          String label = Lettering.lines(r.label(), Type.NOTE, width - 4, 1).get(0);
          double half = Type.NOTE.width(label) / 2 + 1;
          double at = scale.at(r.value());
          double middle = Math.max(left + half, Math.min(left + width - half, at));
          s.line("reference", at, y - 8, at, y + 10);
          s.text(Type.NOTE, Sketch.Anchor.MIDDLE, label, middle, y + 23);
        });
    value.at.ifPresent(
        v -> s.circle(value.interval.isEmpty() ? "hollow" : "ink", scale.at(v), y, 6));
  }
}
