package twostrides.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import twostrides.book.Format;
import twostrides.findings.ComparedGroup.Apart;
import twostrides.findings.ComparedGroup.Measure;
import twostrides.findings.ComparedGroup.Tally;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;

/**
 * What the compare page has to say of two sides, worked out from the program's own counts and
 * differences instead of by the page's script.
 *
 * @param kind what is compared: of teams and stretches the games stand apart
 * @param a the first side
 * @param b the second side
 */
record SideBySide(Comparison.Kind kind, Stretch a, Stretch b) {

  /**
   * A group in some of its team's games.
   *
   * @param group the group
   * @param from number of the first game, from 1
   * @param to number of the last game, which counts too
   */
  record Stretch(ComparedGroup group, int from, int to) {

    /** A group in all of its team's games. */
    static Stretch whole(ComparedGroup group) {
      return new Stretch(group, 1, group.games().size());
    }

    /** The group's name, and the games unless they are all. */
    String words() {
      return from == 1 && to == group.games().size()
          ? group.label()
          : group.label() + (from == to ? ", game " + from : ", games " + from + " to " + to);
    }

    /** What is counted, game by game. */
    private List<Tally> tallies(Predicate<ComparedGroup.Cell> counted) {
      return group.games().subList(from - 1, to).stream()
          .map(
              g ->
                  g.entrySet().stream()
                      .filter(e -> counted.test(e.getKey()))
                      .map(e -> e.getValue())
                      .reduce(new Tally(0, 0), Tally::plus))
          .toList();
    }

    private Tally total(Predicate<ComparedGroup.Cell> counted) {
      return tallies(counted).stream().reduce(new Tally(0, 0), Tally::plus);
    }
  }

  /** A row: its words and what is counted. */
  record Row(String label, Predicate<ComparedGroup.Cell> counted) {

    Row(String label, Measure measure) {
      this(label, c -> c.measure() == measure);
    }

    Row at(Apart strength, String word) {
      return new Row(label + ", " + word, c -> counted.test(c) && c.strength() == strength);
    }
  }

  static final Row ICINGS = new Row("icing, of attempts", Measure.ICED_BY_WAY);

  static final List<Row> SUMMARY =
      List.of(
          ICINGS,
          new Row("sent before the red line, of carries and passes", Measure.RELEASED_SHORT),
          new Row("iced, of pucks sent before the red line", Measure.ICED_RELEASES),
          new Row("failed clears, of attempts", Measure.KEPT_IN));

  static final List<Row> WAYS =
      Stream.of(ShownWay.values())
          .map(w -> new Row(w.label(), c -> c.measure() == Measure.ICED_BY_WAY && c.way() == w))
          .toList();

  static final List<Row> AGAINST = List.of(new Row("exit attempts", Measure.AGAINST));

  /** How many of how many, over the games where they may hang together. */
  private Clustered count(Stretch side, Row row) {
    Stream<Count> games =
        side.tallies(row.counted()).stream().map(t -> new Count(t.hits(), t.cases()));
    return kind == Comparison.Kind.TEAMS || kind == Comparison.Kind.STRETCHES
        ? new Clustered(games.toList())
        : new Clustered(games.reduce(new Count(0, 0), Count::plus));
  }

  Difference difference(Row row) {
    return new Difference(count(a, row), count(b, row));
  }

  static String words(Difference.Verdict verdict) {
    return switch (verdict) {
      case FIRST_MORE -> "A more often";
      case SECOND_MORE -> "B more often";
      case CHANCE -> "no clear difference";
      case TOO_FEW -> Format.FEW;
    };
  }

  private boolean occurs(Row row) {
    return a.total(row.counted()).cases() + b.total(row.counted()).cases() > 0;
  }

  /** Rows in which either side has cases; strengths stand apart where each of them occurs. */
  List<Row> shown(List<Row> rows) {
    List<Row> shown = new ArrayList<>();
    for (Row row : rows) {
      List<Row> apart =
          List.of(row.at(Apart.EVEN, "even"), row.at(Apart.SHORTHANDED, "shorthanded"));
      if (occurs(row)) {
        shown.add(row);
      }
      if (apart.stream().allMatch(this::occurs)) {
        shown.addAll(apart);
      }
    }
    return shown;
  }

  private List<String> share(Row row) {
    Difference d = difference(row);
    return List.of(
        row.label(),
        Format.counts(d.first().total()),
        Format.share(d.first().total()),
        Format.counts(d.second().total()),
        Format.share(d.second().total()),
        Format.text(new Value.DifferenceOf(d.first(), d.second())),
        words(d.verdict()));
  }

  private List<String> against(Row row) {
    Tally first = a.total(row.counted());
    Tally second = b.total(row.counted());
    return List.of(row.label(), sum(first), mean(first), sum(second), mean(second));
  }

  private static String sum(Tally t) {
    return Format.text(new Value.SumIn(t.hits(), t.cases()));
  }

  private static String mean(Tally t) {
    return Format.text(new Value.Mean(t.hits(), t.cases(), 2, ""));
  }

  /** Cells of the rows of shares. */
  List<List<String>> shares() {
    return Stream.of(SUMMARY, WAYS).flatMap(r -> shown(r).stream()).map(this::share).toList();
  }

  private static void add(List<String> said, List<List<String>> lines) {
    lines.forEach(said::addAll);
    if (lines.isEmpty()) {
      said.add("No cases on either side.");
    }
  }

  /** Sentence and cells, in the order of the page. */
  List<String> said() {
    Difference d = difference(ICINGS);
    List<Difference.Verdict> verdicts =
        Stream.of(SUMMARY, WAYS)
            .flatMap(r -> shown(r).stream())
            .map(r -> difference(r).verdict())
            .filter(v -> v != Difference.Verdict.TOO_FEW)
            .toList();
    List<String> said =
        new ArrayList<>(
            List.of(
                a.words(),
                Format.counts(d.first().total()),
                Format.share(d.first().total()),
                b.words(),
                Format.counts(d.second().total()),
                Format.share(d.second().total()),
                words(d.verdict()),
                String.valueOf(verdicts.size()),
                String.valueOf(
                    verdicts.stream().filter(v -> v != Difference.Verdict.CHANCE).count())));
    add(said, shown(SUMMARY).stream().map(this::share).toList());
    add(said, shown(WAYS).stream().map(this::share).toList());
    add(said, shown(AGAINST).stream().map(this::against).toList());
    return said;
  }
}
