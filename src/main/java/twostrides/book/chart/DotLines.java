package twostrides.book.chart;

import java.util.ArrayList;
import java.util.Collection;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One line for each player, way out or situation: a dot at the share, a bar over what it could be,
 * the count in words. All lines have one scale, chosen from what is shown, and stand in the order
 * given.
 *
 * @param title what is shown; any text
 * @param groups lines under a heading; one group with an empty heading has none
 * @param reference what all are compared with, a share 0 to 1
 * @param series names of the dots of a line where a line has two; else empty
 * @param volumes whether a bar at the left shows how many trials a line has
 */
public record DotLines(
    String title,
    List<Group> groups,
    Optional<Reference> reference,
    List<String> series,
    boolean volumes) {

  /**
   * Lines under no heading, each with one dot.
   *
   * @param title what is shown; any text
   * @param rows in the order shown
   * @param reference what all are compared with
   */
  public static DotLines of(String title, List<Row> rows, Optional<Reference> reference) {
    return new DotLines(title, List.of(new Group("", rows)), reference, List.of(), false);
  }

  /** Copies the lists. */
  public DotLines {
    groups = List.copyOf(groups);
    series = List.copyOf(series);
  }

  /**
   * Lines that belong together.
   *
   * @param heading any text; may be empty
   * @param rows in the order shown
   */
  public record Group(String heading, List<Row> rows) {
    /** Copies the rows. */
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One line.
   *
   * @param label who or what; any text
   * @param dots one, or two to be compared
   * @param note words at the end of the line, such as the difference; may be empty
   * @param link of the whole line
   */
  public record Row(String label, List<Dot> dots, String note, Link link) {
    /** Copies the dots. */
    public Row {
      dots = List.copyOf(dots);
    }

    private String said() {
      Stream<String> each = dots.stream().map(Dot::words);
      return each.collect(Collectors.joining(" and ")) + (note.isEmpty() ? "" : ", " + note);
    }
  }

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    return Picture.of(new Caption(id, title, description()), this::draw);
  }

  private Stream<Row> rows() {
    return groups.stream().map(Group::rows).flatMap(Collection::stream);
  }

  private List<Dot> dots() {
    return rows().flatMap(r -> r.dots().stream()).toList();
  }

  private String description() {
    List<String> each = new ArrayList<>();
    reference.ifPresent(r -> each.add(r.said(Words.percent(r.value()))));
    rows().forEach(r -> each.add(r.label + ": " + r.said()));
    return String.join("; ", each) + ".";
  }

  private double draw(Sketch s) {
    DotColumns columns = DotColumns.of(this, s);
    double top = names(s);
    top += reference.isPresent() ? 20 : 4;
    List<Runnable> marks = new ArrayList<>();
    double y = top;
    for (Group group : groups) {
      if (!group.heading.isEmpty()) {
        double beneath = y;
        List<String> lines = Lettering.lines(group.heading, Type.HEAD, s.width(), 2);
        marks.add(
            () -> {
              // The line of the reference passes beneath.
              s.rect("plate", 0, beneath, Type.HEAD.widest(lines) + 4, lines.size() * 20);
              s.lines(Type.HEAD, lines, 0, beneath + 16);
            });
        y += lines.size() * Type.HEAD.leading() + 8;
      }
      for (Row row : group.rows) {
        DotRow drawn = DotRow.of(row, columns, y);
        marks.add(() -> drawn.draw(s));
        y += drawn.height();
      }
    }
    double bottom = y + 2;
    columns.scale().percents(s, top, bottom);
    columns.volumeName(s, bottom + 16);
    double above = top;
    reference.ifPresent(
        r -> {
          String words = r.said(Words.percent(r.value()));
          columns.scale().reference(s, words, r.value(), s.width(), above, bottom);
        });
    marks.forEach(Runnable::run);
    return bottom + 24;
  }

  /** What the marks are, where a line has more than a dot and its interval. */
  private double names(Sketch s) {
    Legend legend = new Legend(s, 0, 26);
    for (int i = 0; i < series.size(); i++) {
      int at = i;
      String name = Lettering.lines(series.get(i), Type.WORDS, s.width() / 2 - 40, 1).get(0);
      legend.entry(name, (x, middle) -> DotRow.mark(s, "ink", at, x + 10, middle));
    }
    if (dots().stream().anyMatch(d -> d.raw().isPresent())) {
      String tone = dots().get(0).tone().css();
      legend.entry(
          "percentage, adjusted toward the group",
          (x, middle) -> s.line("whisker " + tone, x, middle, x + 20, middle));
      legend.entry(
          "own count, as written",
          (x, middle) -> s.line("whisker pale", x, middle, x + 20, middle));
    }
    return legend.bottom();
  }

  /** The scale of all lines; what is too few to say does not stretch it. */
  Scale scale(double left, double right) {
    DoubleSummaryStatistics values = new DoubleSummaryStatistics();
    reference.ifPresent(r -> values.accept(r.value()));
    for (Dot dot : dots()) {
      Stream.concat(dot.shown().stream(), dot.raw().stream())
          .forEach(
              i -> {
                values.accept(i.low());
                values.accept(i.high());
              });
    }
    if (values.getCount() == 0) {
      return Scale.ofShares(0, 1, left, right);
    }
    return Scale.ofShares(values.getMin(), values.getMax(), left, right);
  }

  /** Trials of the fullest line, at least 1. */
  int mostTrials() {
    return dots().stream().mapToInt(d -> d.count().trials()).max().orElse(1);
  }

  /** Pixels of the widest words of the lines. */
  double widest(Function<Row, String> of) {
    return Type.WORDS.widest(rows().map(of).map(Lettering::clean).toList());
  }

  /** What is said of the dots. */
  List<String> words(Function<Dot, String> of) {
    return dots().stream().map(of).toList();
  }
}
