package twostrides.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Players' sheets, made anew from the tables: the lines of ways out. */
final class SheetFigures {

  private final BookData data;
  private final Map<String, Predicate<BookData.Row>> lines = new LinkedHashMap<>();
  private final Map<String, AdjustedFigures> groups = new LinkedHashMap<>();

  SheetFigures(BookData data) {
    this.data = data;
    for (String way : TeamFigures.WAYS) {
      lines.put(way, r -> TeamFigures.way(r).equals(way));
    }
    lines.put("all ways", r -> true);
    lines.forEach(
        (name, in) ->
            groups.put(
                name,
                new AdjustedFigures(
                    data.players().stream()
                        .map(p -> BookData.rows(data.exits, BookData.of(p).and(in)))
                        .filter(rows -> !rows.isEmpty())
                        .map(BookData::icedAfter)
                        .toList())));
  }

  Wanted ways(BookData.Player p) {
    Wanted t = new Wanted("Way out", "Attempts", "Icings", "Adjusted rate (95 %)", "Team");
    lines.forEach(
        (name, in) -> {
          List<BookData.Row> own = BookData.rows(data.exits, BookData.of(p).and(in));
          if (!own.isEmpty()) {
            Formulas.Share share = BookData.icedAfter(own);
            Formulas.Share team =
                BookData.icedAfter(
                    BookData.rows(data.exits, BookData.team(Optional.of(p.team())).and(in)));
            t.row(
                Want.name(name),
                Want.count(own.size()),
                Want.counts(share),
                groups.get(name).both(share),
                Want.text(team.words().words() + ", n " + team.n()));
          }
        });
    return t;
  }

  /** The line under a player's name. */
  Want who(BookData.Player p) {
    List<BookData.Row> exits = BookData.rows(data.exits, BookData.of(p));
    List<BookData.Row> releases = BookData.rows(data.releases, BookData.of(p));
    List<BookData.Row> both = new ArrayList<>(exits);
    both.addAll(releases);
    return Want.text(
            p.team()
                + ". "
                + SentenceFigures.count(exits.size(), "exit attempt")
                + " in "
                + BookData.values(both, "game").size()
                + " of the team's "
                + SentenceFigures.count(data.gamesOfTeam.get(p.team()).size(), "game")
                + ".")
        .then(
            data.icedRates()
                .sentence(" Pucks sent before the red line iced: ", BookData.iced(releases), "."));
  }
}
