package twostrides.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A player against the team and everybody, and the habit over the season. */
final class PlayerFigures {

  private final BookData data;
  private final Map<TeamFigures.Kind, DrawnShares> groups = new HashMap<>();
  private final Map<TeamFigures.Kind, Formulas.Share> everybody = new HashMap<>();

  PlayerFigures(BookData data) {
    this.data = data;
    TeamFigures.byKind(data.exits)
        .forEach(
            (kind, rows) -> {
              Map<BookData.Player, List<BookData.Row>> players = new LinkedHashMap<>();
              for (BookData.Row r : BookData.rows(rows, x -> x.has("player"))) {
                players
                    .computeIfAbsent(
                        new BookData.Player(r.get("team"), r.get("player")), p -> new ArrayList<>())
                    .add(r);
              }
              everybody.put(kind, BookData.icedAfter(rows));
              groups.put(
                  kind,
                  new DrawnShares(players.values().stream().map(BookData::icedAfter).toList()));
            });
  }

  Wanted against(BookData.Player p) {
    Wanted t =
        new Wanted(
            "Way out, strength",
            "Icings",
            "Share",
            "Drawn share",
            "95 % interval",
            "from the group",
            "Team",
            "Everybody",
            "Games more");
    List<BookData.Row> own = BookData.rows(data.exits, BookData.of(p));
    int games = BookData.values(own, "game").size();
    Map<TeamFigures.Kind, List<BookData.Row>> mates =
        TeamFigures.byKind(BookData.rows(data.exits, BookData.team(Optional.of(p.team()))));
    TeamFigures.byKind(own)
        .forEach(
            (kind, rows) -> {
              Formulas.Share share = BookData.icedAfter(rows);
              Formulas.Share all = everybody.get(kind);
              List<Want> row =
                  new ArrayList<>(
                      List.of(
                          Want.name(kind.way() + ", " + kind.strength()),
                          Want.counts(share),
                          share.words()));
              row.addAll(groups.get(kind).cells(share));
              row.add(of(BookData.icedAfter(mates.get(kind))));
              row.add(of(all));
              row.add(Formulas.gamesMore(share, all, games));
              t.row(row);
            });
    return t;
  }

  private static Want of(Formulas.Share s) {
    return Want.text(s.words().words() + ", n " + s.n());
  }

  private static Formulas.Share releasedShort(List<BookData.Row> rows) {
    return BookData.share(
        BookData.rows(rows, r -> r.has("at_center")), r -> r.is("at_center", "released short"));
  }

  private List<String> games(BookData.Player p) {
    return BookData.values(BookData.rows(data.exits, BookData.team(Optional.of(p.team()))), "game");
  }

  Wanted habit(BookData.Player p) {
    Wanted t = new Wanted("Stretch", "Released short", "Share", "95 % interval");
    List<BookData.Row> own = BookData.rows(data.exits, BookData.of(p));
    List<String> games = games(p);
    int parts = Math.min(3, games.size());
    for (int i = 0; i < parts; i++) {
      int from = games.size() * i / parts;
      int to = games.size() * (i + 1) / parts;
      List<String> in = games.subList(from, to);
      t.row(
          stretch(
              "games " + (from + 1) + " to " + to,
              BookData.rows(own, r -> in.contains(r.get("game")))));
    }
    return t.row(stretch("all games", own));
  }

  private static List<Want> stretch(String name, List<BookData.Row> rows) {
    Formulas.Share s = releasedShort(rows);
    return List.of(Want.name(name), Want.counts(s), s.words(), s.interval());
  }

  /** The caption over the habit. */
  Want trend(BookData.Player p) {
    List<BookData.Row> own = BookData.rows(data.exits, BookData.of(p));
    return Formulas.trend(
        "Of the pucks carried or passed out of the zone, how many were released short of center."
            + " Over the team's games in order the share is ",
        games(p).stream()
            .map(g -> releasedShort(BookData.rows(own, r -> r.is("game", g))))
            .toList());
  }
}
