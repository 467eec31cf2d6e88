package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the chart of ways out and the map of releases say in words and at their bars. */
final class Drawings {

  /** Ways out that a chart leaves out where they do not occur. */
  private static final List<String> SELDOM = List.of("carry, other end", "moved, means unknown");

  private Drawings() {}

  /** The words of the chart of ways out. */
  static Want ways(List<BookData.Row> exits) {
    List<String> parts = new ArrayList<>();
    for (String way : TeamFigures.WAYS) {
      Map<TeamFigures.Kind, List<BookData.Row>> kinds =
          TeamFigures.byKind(BookData.rows(exits, r -> TeamFigures.way(r).equals(way)));
      if (kinds.isEmpty() && !SELDOM.contains(way)) {
        parts.add(way + ": none");
      }
      kinds.forEach(
          (kind, rows) -> {
            String strength =
                kind.strength().equals("unknown") ? "strength not known" : kind.strength();
            parts.add(way + ", " + strength + ": " + String.join(" ", bar(rows)));
          });
    }
    Formulas.Share all = BookData.icedAfter(exits);
    String first =
        exits.isEmpty()
            ? "No exit attempts in these sheets."
            : SentenceFigures.count(exits.size(), "exit attempt")
                + (all.n() == 0
                    ? "; how they ended is not in these sheets."
                    : "; all ways together: " + iced(all) + ".");
    return Want.text(first + " " + String.join("; ", parts) + ".");
  }

  /** What stands at a bar: the share, and how many endings the sheet does not say. */
  private static List<String> bar(List<BookData.Row> rows) {
    Formulas.Share s = BookData.icedAfter(rows);
    if (s.n() == 0) {
      return List.of("" + rows.size(), "ending not in the sheet");
    }
    int unknown = rows.size() - s.n();
    return unknown == 0 ? List.of(iced(s)) : List.of(iced(s), "+" + unknown + " unknown");
  }

  /** The counts at the bars, from above. */
  static List<String> bars(List<BookData.Row> exits) {
    return TeamFigures.byKind(exits).values().stream()
        .map(Drawings::bar)
        .flatMap(List::stream)
        .filter(words -> words.contains(" of ") || words.startsWith("+"))
        .toList();
  }

  /** On charts a share is never 0 % for some, nor 100 % for not all. */
  private static String iced(Formulas.Share s) {
    String counts = s.k() + " of " + s.n();
    if (s.few()) {
      return counts + ", too few to say";
    }
    String percent =
        s.percent() == 0 && s.k() > 0
            ? "under 1"
            : s.percent() == 100 && s.k() < s.n() ? "over 99" : "" + s.percent();
    return counts + " iced (" + percent + " %)";
  }

  /** The words of the map of releases. */
  static Want map(List<BookData.Row> releases) {
    List<String> outcomes = releases.stream().map(ListFigures::outcome).toList();
    List<String> parts = new ArrayList<>();
    for (String o : ListFigures.OUTCOMES) {
      parts.add(o + " (" + outcomes.stream().filter(o::equals).count() + ")");
    }
    return Want.text(
        "n = "
            + releases.size()
            + " release"
            + (releases.size() == 1 ? "" : "s")
            + " short of center; red line at the right. "
            + String.join("; ", parts)
            + ".");
  }
}
