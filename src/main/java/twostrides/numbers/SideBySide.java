package twostrides.numbers;

import java.util.List;
import java.util.stream.Stream;
import twostrides.stats.Difference;

/**
 * Two sides beside each other: what the compare page shows of them.
 *
 * @param a the first side
 * @param b the second side
 * @param window the window in words, "20 s"
 */
public record SideBySide(Stretch a, Stretch b, String window) {

  /** The verdict in words. */
  public static String words(Difference.Verdict verdict) {
    return switch (verdict) {
      case FIRST_MORE -> "A more often";
      case SECOND_MORE -> "B more often";
      case CHANCE -> "no clear difference";
      case TOO_FEW -> Cell.FEW;
    };
  }

  /** Icings of all attempts, which the page's sentence is about. */
  public Difference icings() {
    return difference(CompareRow.atAllStrengths(CompareRow.ICINGS));
  }

  private Difference difference(CompareRow.Shown row) {
    return new Difference(row.count(a), row.count(b));
  }

  private List<CompareRow.Shown> shown(List<CompareRow> rows) {
    return CompareRow.shown(rows, a, b);
  }

  /** Rows of shares with ten cases or more on both sides. */
  public long told() {
    return verdicts().filter(v -> v != Difference.Verdict.TOO_FEW).count();
  }

  /** Rows of shares that differ beyond chance. */
  public long differing() {
    return verdicts()
        .filter(v -> v == Difference.Verdict.FIRST_MORE || v == Difference.Verdict.SECOND_MORE)
        .count();
  }

  private Stream<Difference.Verdict> verdicts() {
    return Stream.of(CompareRow.SUMMARY, CompareRow.WAYS)
        .flatMap(rows -> shown(rows).stream())
        .map(row -> difference(row).verdict());
  }

  /** The tables. */
  public List<Grid> grids() {
    return List.of(
        shares(
            "summary",
            "Side by side",
            "A less B: points of a hundred, with a 95 % interval. Even and shorthanded stand apart where both occur.",
            "What is compared",
            "what-is-compared",
            CompareRow.SUMMARY),
        shares(
            "ways",
            "Icings by way out",
            "Attempts that icing followed, of those whose ending the sheet tells.",
            "Way out",
            "way-out",
            CompareRow.WAYS),
        against());
  }

  private Grid shares(
      String id, String title, String caption, String what, String term, List<CompareRow> rows) {
    return new Grid(
        id,
        title,
        caption,
        List.of(
            Head.words(what, term),
            Head.number("A", "side"),
            Head.number("Share", "share"),
            Head.number("B", "side"),
            Head.number("Share", "share"),
            Head.number("A less B", "difference-of-shares"),
            Head.words("Verdict", "verdict")),
        shown(rows).stream().map(this::share).toList(),
        NOTHING);
  }

  /** What a table says that has no rows. */
  public static final String NOTHING = "No cases on either side.";

  private Line share(CompareRow.Shown row) {
    Difference d = difference(row);
    return Line.of(
        row.label(),
        Cell.counts(d.first().total()),
        Cell.share(d.first().total()),
        Cell.counts(d.second().total()),
        Cell.share(d.second().total()),
        Cell.difference(d),
        words(d.verdict()));
  }

  private Grid against() {
    return new Grid(
        "against",
        "Attempts against",
        "Shot attempts of the opponent within "
            + window
            + " of the release, or of the face-off where a defensive-zone face-off followed. No verdict: those of one game hang together.",
        List.of(
            Head.words("After", "exit-attempt"),
            Head.number("A", "attempts-against"),
            Head.number("Mean", "mean"),
            Head.number("B", "attempts-against"),
            Head.number("Mean", "mean")),
        shown(CompareRow.AGAINST).stream()
            .map(
                row ->
                    Line.of(
                        row.label(),
                        row.hits(a) + " in " + row.cases(a),
                        Cell.mean(row.hits(a), row.cases(a)),
                        row.hits(b) + " in " + row.cases(b),
                        Cell.mean(row.hits(b), row.cases(b))))
            .toList(),
        NOTHING);
  }
}
