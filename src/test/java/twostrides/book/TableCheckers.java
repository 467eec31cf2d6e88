package twostrides.book;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which checker knows which table, by kind of page and heading. */
final class TableCheckers {

  /** Makes a table anew. */
  interface Checker {
    Wanted wanted(BookRun book, PageTable table);
  }

  /**
   * A table that is known.
   *
   * @param kind kind of page
   * @param heading the heading above the table
   * @param checker makes the table anew
   */
  record Known(String kind, Pattern heading, Checker checker) {}

  private TableCheckers() {}

  private static Known known(String kind, String heading, Checker checker) {
    return new Known(kind, Pattern.compile(heading), checker);
  }

  private static Known slices(String heading) {
    return known("slices.html", heading, (b, t) -> SliceFigures.slices(b.data, t.heading()));
  }

  static final List<Known> ALL =
      List.of(
          known("index.html", "Ways out, .*", (b, t) -> TeamFigures.ways(b.exits(t.page()), true)),
          known("players.html", ".*", (b, t) -> TeamFigures.players(b.data, t.heading())),
          known(
              "kill.html",
              "Every try to clear, with its clip",
              (b, t) -> KillFigures.tries(b.data)),
          known("index.html", "Teams", (b, t) -> TeamFigures.teams(b.data)),
          known(
              "restarts.html",
              "Every defensive-zone face-off",
              (b, t) -> ListFigures.restarts(b.data, Optional.empty())),
          known("teams", "Ways out", (b, t) -> TeamFigures.ways(b.exits(t.page()), true)),
          known("teams", "Players", (b, t) -> TeamFigures.players(b.data, b.team(t.page()))),
          known(
              "teams",
              "Defensive-zone face-offs",
              (b, t) -> ListFigures.restarts(b.data, Optional.of(b.team(t.page())))),
          known("players", "Ways out", (b, t) -> TeamFigures.ways(b.exits(t.page()), false)),
          known(
              "players",
              "Icings, against the team and everybody",
              (b, t) -> b.figures.against(b.player(t.page()))),
          known(
              "players",
              "The habit over the season",
              (b, t) -> b.figures.habit(b.player(t.page()))),
          known(
              "players",
              "Pucks sent before the red line",
              (b, t) -> ListFigures.releases(b.data, b.player(t.page()))),
          known(
              "sheets",
              ".*",
              (b, t) -> b.sheets.ways(new BookData.Player(b.team(t.page()), t.heading()))),
          known(
              "costs.html", "After a defensive-zone face-off", (b, t) -> CostFigures.after(b.data)),
          known(
              "costs.html",
              "Against matched exits without a face-off",
              (b, t) -> CostFigures.matched(b.data, t)),
          known(
              "costs.html",
              "Net goals after the face-off",
              (b, t) -> CostFigures.goals(b.data, b.goalPrior())),
          known("costs.html", "Tired skaters", (b, t) -> CostFigures.tired(b.data)),
          known("kill.html", "Teams", (b, t) -> KillFigures.teams(b.data)),
          known("kill.html", "Ways out while .*", (b, t) -> KillFigures.ways(b.data)),
          known("kill.html", "Players while .*", (b, t) -> KillFigures.players(b.data)),
          known("kill.html", "Units while .*", (b, t) -> KillFigures.units(b.data)),
          known(
              "kill.html",
              "Let go after the penalty was over",
              (b, t) -> KillFigures.justAfter(b.data)),
          known(
              "kill.html",
              "Shorthanded clears that could still be icing",
              (b, t) -> KillFigures.exemption(b.data)),
          known("kill.html", "Every kill, .*", (b, t) -> KillFigures.kills(b.data)),
          known(
              "empty-net.html",
              "Let go from behind center",
              (b, t) -> SliceFigures.sent(b.data, false)),
          known("empty-net.html", "Gained center first", (b, t) -> SliceFigures.gained(b.data)),
          known("empty-net.html", "Who let it go", (b, t) -> SliceFigures.sent(b.data, true)),
          known(
              "compare.html",
              "The book of this run and .*",
              (b, t) -> CompareFigures.otherBook(b.data)),
          slices("Strength"),
          slices("Score"),
          slices("Period"),
          slices("Pressure at the release"),
          slices("Side of the rink, facing the attack"),
          slices("Venue"),
          slices("Opponent"),
          known(
              "flags.html", "All to look at, in order", (b, t) -> ListFigures.allToLookAt(b.data)),
          known("flags.html", "Not flagged, because", (b, t) -> ListFigures.notFlagged(b.data)),
          known(
              "rulings.html",
              "Icings in the sheets that this book would not call",
              (b, t) -> ListFigures.audits(b.data)),
          known("rulings.html", "Ruled otherwise by .*", (b, t) -> ListFigures.others(b.data)),
          known("rulings.html", "What this book says", (b, t) -> points(b)));

  /** Point by point what run.json says of the book; points and sources are words. */
  private static Wanted points(BookRun b) {
    Wanted t = new Wanted("Point", "This book", "Clause", "Source");
    b.data.run.forEach(
        (name, value) -> {
          if (name.startsWith("book.")) {
            t.row(Want.ANY, Want.text(value), Want.ANY, Want.ANY);
          }
        });
    return t;
  }
}
