package twostrides.numbers;

import java.util.ArrayList;
import java.util.List;
import twostrides.exits.Columns;
import twostrides.exits.ExitTables;
import twostrides.review.TableRows;
import twostrides.stats.Count;

/** Releases short of center as the book of the run and another book rule them. */
public final class OtherBooks {

  private static final String ICING = "icing";

  private static final String OPEN = "not yet decided";

  private final List<TableRows> rulings;

  /**
   * Of a season.
   *
   * @param tables what the pipeline made of it
   */
  public OtherBooks(ExitTables tables) {
    rulings = TableRows.of(tables.rulings()).toList();
  }

  /**
   * One other book, team by team.
   *
   * @param number its number among the other books, from 1
   * @param book its id in the rulings table
   * @param name its name on the page
   */
  public Grid grid(int number, String book, String name) {
    List<TableRows> all = rulings.stream().filter(r -> Season.is(r, Columns.BOOK, book)).toList();
    List<Line> lines = new ArrayList<>();
    Season.by(all, r -> r.words(Columns.TEAM))
        .forEach((team, rows) -> lines.add(Line.of(cells(team, rows))));
    if (lines.size() > 1) {
      lines.add(Line.sum(cells("all teams", all)));
    }
    return new Grid(
        "book-" + number,
        "The book of this run and " + name,
        "Releases short of center, each put to both books. Open: the sheet cannot say. Ruled otherwise: one says icing and the other does not, or only one leaves it open.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Releases", "release"),
            Head.number("Icing by the book of this run", "ruling"),
            Head.number("Open", "ruling"),
            Head.number("Icing by the other book", "other-book"),
            Head.number("Open", "other-book"),
            Head.number("Ruled otherwise", "ruled-otherwise"),
            Head.number("Share", "share")),
        lines,
        "No release of a play sheet was put to it.");
  }

  private static String[] cells(String name, List<TableRows> rows) {
    Count otherwise = Season.share(rows, r -> r.flag(Columns.DIFFERS).orElse(false));
    return new String[] {
      name,
      String.valueOf(rows.size()),
      Season.many(rows, Columns.PLAYED_RULING, ICING),
      Season.many(rows, Columns.PLAYED_RULING, OPEN),
      Season.many(rows, Columns.RULING, ICING),
      Season.many(rows, Columns.RULING, OPEN),
      Cell.counts(otherwise),
      Cell.share(otherwise)
    };
  }
}
