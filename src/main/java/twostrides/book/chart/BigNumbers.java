package twostrides.book.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import twostrides.stats.Clustered;

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
   * One number, said without decimals.
   *
   * @param words what it is and what it was counted from; any text
   * @param unit behind the number, such as "s"
   * @param value in the unit; not a number where there is none
   * @param interval what it could be, in the unit; empty where there are too few to say
   * @param axis both ends of the axis, in the unit
   * @param reference what it is compared with, in the unit
   * @param link to its rows
   */
  public record Value(
      String words,
      String unit,
      double value,
      Optional<Span> interval,
      Span axis,
      Optional<Reference> reference,
      Link link) {

    /**
     * A share, in percent.
     *
     * @param words what it is; any text
     * @param games a count for each game
     * @param axis both ends of the axis, percent
     * @param reference in percent
     * @param link to its rows
     */
    public static Value share(
        String words, Clustered games, Span axis, Optional<Reference> reference, Link link) {
      Dot dot = Dot.of(games, Tone.PLAIN);
      String counted = words + ": " + Words.counted(dot.count());
      Optional<Span> interval = dot.shown().map(i -> new Span(100 * i.low(), 100 * i.high()));
      double percent = 100 * dot.share().orElse(Double.NaN);
      return new Value(counted, "%", percent, interval, axis, reference, link);
    }

    private boolean none() {
      return Double.isNaN(value);
    }

    private String said() {
      return none() ? "–" : interval.isEmpty() ? "few" : Words.whole(Math.round(value));
    }

    /** The lines under the number. */
    private List<String> lines(double width) {
      return Lettering.lines(words, Type.WORDS, width, 3);
    }

    private String could() {
      return interval
          .map(i -> Words.whole(Math.round(i.low())) + " to " + Words.whole(Math.round(i.high())))
          .map(range -> "could be " + range + " " + unit)
          .orElse("too few to say more");
    }

    private String said(Reference r) {
      return r.said(Words.whole(Math.round(r.value())) + " " + unit);
    }
  }

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    List<String> each = new ArrayList<>();
    for (Value v : values) {
      String compared = v.reference.map(r -> ", " + v.said(r)).orElse("");
      String unit = v.interval.isEmpty() ? "" : " " + v.unit;
      each.add(v.said() + unit + " " + v.words + ", " + v.could() + compared);
    }
    return Picture.of(new Caption(id, title, String.join("; ", each) + "."), this::draw);
  }

  private double draw(Sketch s) {
    int columns = s.narrow() ? 1 : Math.max(1, values.size());
    double width = (s.width() - (columns - 1) * GAP) / columns;
    int most = values.stream().mapToInt(v -> v.lines(width).size()).max().orElse(1);
    double bottom = 0;
    for (int i = 0; i < values.size(); i++) {
      double left = i % columns * (width + GAP);
      double top = s.narrow() && i > 0 ? bottom + 18 : 0;
      Value value = values.get(i);
      int lines = s.narrow() ? value.lines(width).size() : most;
      Scale scale = new Scale(value.axis.low(), value.axis.high(), left, left + width);
      s.linked(value.link, () -> number(s, value, scale, top, lines));
      bottom = top + 98 + lines * Type.WORDS.leading();
    }
    return bottom;
  }

  private static void number(Sketch s, Value value, Scale scale, double top, int lines) {
    double left = scale.left();
    double width = scale.right() - left;
    double y = top + 70 + lines * Type.WORDS.leading();
    s.rect("hit", left, top, width, y + 28 - top);
    s.text(Type.BIG, value.said(), left, top + 34);
    String unit = value.interval.isEmpty() ? "" : value.unit;
    s.text(Type.NUMBER, unit, left + Type.BIG.width(value.said()) + 6, top + 34);
    double next = s.lines(Type.WORDS, value.lines(width), left, top + 54);
    s.text(Type.NOTE, value.could(), left, next);
    s.rect("volume", left, y - 3, width, 6);
    value.interval.ifPresent(
        i -> s.line("whisker bought", scale.at(i.low()), y, scale.at(i.high()), y));
    value.reference.ifPresent(
        r -> {
          String label = Lettering.lines(value.said(r), Type.NOTE, width - 4, 1).get(0);
          double at = scale.at(r.value());
          s.line("reference", at, y - 8, at, y + 10);
          s.inside(Type.NOTE, label, at, y + 23, left, scale.right());
        });
    if (!value.none()) {
      s.circle(value.interval.isEmpty() ? "hollow" : "ink", scale.at(value.value), y, 6);
    }
  }
}
