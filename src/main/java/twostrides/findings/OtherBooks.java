package twostrides.findings;

import java.util.ArrayList;
import java.util.List;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.Count;

/** What other books say of the releases short of center of a season, counted by team. */
public final class OtherBooks {

  private static final String ICING = "icing";
  private static final String OPEN = "not yet decided";

  private final Rows rulings;

  /**
   * The rulings of a season.
   *
   * @param season the season
   */
  public OtherBooks(Season season) {
    rulings = new Rows(season.rulings());
  }

  /**
   * The grid of one other book.
   *
   * @param number which of the books asked, from 1
   * @param book its id
   * @param name its name
   */
  public Grid grid(int number, String book, String name) {
    Rows all = rulings.where(Columns.BOOK, book);
    List<Line> lines = new ArrayList<>();
    all.by(Columns.TEAM).forEach((team, rows) -> lines.add(line(team.get(0), rows, false)));
    if (lines.size() > 1) {
      lines.add(line("all teams", all, true));
    }
    return new Grid(
        "book-" + number,
        "The book of this run and " + name,
        "Pucks sent before the red line, each put to both books. Open: the sheet cannot say. Ruled"
            + " otherwise: one says icing and the other does not, or only one leaves it open.",
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

  private static Line line(String name, Rows rows, boolean sum) {
    Count otherwise = rows.share(rows.isTrue(Columns.DIFFERS));
    return Line.of(
        name,
        sum,
        new Value.Whole(rows.n()),
        new Value.Whole(rows.where(Columns.PLAYED_RULING, ICING).n()),
        new Value.Whole(rows.where(Columns.PLAYED_RULING, OPEN).n()),
        new Value.Whole(rows.where(Columns.RULING, ICING).n()),
        new Value.Whole(rows.where(Columns.RULING, OPEN).n()),
        new Value.Counts(otherwise),
        new Value.Share(otherwise));
  }
}
