package twostrides.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import twostrides.stats.Clustered;

/**
 * A row of the compare page: what is counted, summed over slots of a tally.
 *
 * @param label its words
 * @param slots what is summed
 */
public record CompareRow(String label, List<Integer> slots) {

  /** Strengths shown apart, by their number in a tally. */
  public static final List<String> APART = List.of("even", "shorthanded");

  /** The icings of all ways out come first: the page's sentence is about them. */
  static final CompareRow ICINGS =
      new CompareRow(
          "icing, of attempts", IntStream.range(0, SideTally.WAYS.size()).boxed().toList());

  /** What a side is asked first. */
  public static final List<CompareRow> SUMMARY =
      List.of(
          ICINGS,
          new CompareRow(
              "released short, of carries and passes", List.of(SideTally.RELEASED_SHORT)),
          new CompareRow("iced, of releases short of center", List.of(SideTally.ICED)),
          new CompareRow("kept in, of attempts", List.of(SideTally.KEPT_IN)));

  /** Icings by way out. */
  public static final List<CompareRow> WAYS =
      IntStream.range(0, SideTally.WAYS.size())
          .mapToObj(w -> new CompareRow(SideTally.WAYS.get(w).label(), List.of(w)))
          .toList();

  /** Shot attempts against. */
  public static final List<CompareRow> AGAINST =
      List.of(new CompareRow("exit attempts", List.of(SideTally.AGAINST)));

  private static final List<Integer> ALL = IntStream.range(0, SideTally.STRENGTHS).boxed().toList();

  /** Copies the list. */
  public CompareRow {
    slots = List.copyOf(slots);
  }

  /**
   * A row as it is shown, at all strengths or one.
   *
   * @param label its words
   * @param row what is counted
   * @param strengths what is summed
   */
  record Shown(String label, CompareRow row, List<Integer> strengths) {

    Clustered count(Stretch s) {
      return s.count(row.slots(), strengths);
    }

    int hits(Stretch s) {
      return s.hits(row.slots(), strengths);
    }

    int cases(Stretch s) {
      return s.cases(row.slots(), strengths);
    }

    private boolean occurs(Stretch a, Stretch b) {
      return cases(a) + cases(b) > 0;
    }
  }

  static Shown atAllStrengths(CompareRow row) {
    return new Shown(row.label(), row, ALL);
  }

  /**
   * The rows for which either side has cases: at all strengths, and at those shown apart where each
   * of them occurs.
   */
  static List<Shown> shown(List<CompareRow> rows, Stretch a, Stretch b) {
    List<Shown> shown = new ArrayList<>();
    for (CompareRow r : rows) {
      Shown all = atAllStrengths(r);
      List<Shown> apart =
          IntStream.range(0, APART.size())
              .mapToObj(s -> new Shown(r.label() + ", " + APART.get(s), r, List.of(s)))
              .toList();
      if (all.occurs(a, b)) {
        shown.add(all);
      }
      if (apart.stream().allMatch(s -> s.occurs(a, b))) {
        shown.addAll(apart);
      }
    }
    return shown;
  }
}
