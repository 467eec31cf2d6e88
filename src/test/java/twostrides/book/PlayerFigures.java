package twostrides.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A player against the team and everybody, and the habit over the season. */
final class PlayerFigures {

  private final BookData data;
  private final Map<TeamFigures.Kind, AdjustedFigures> groups = new HashMap<>();
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
                  new AdjustedFigures(players.values().stream().map(BookData::icedAfter).toList()));
            });
  }

  Wanted against(BookData.Player p) {
    Wanted t =
        new Wanted(
            "Way out, strength",
            "Icings",
            "Share",
            "Adjusted rate",
            "95 % interval",
            "Team",
            "Everybody",
            "Against the others");
    List<BookData.Row> own = BookData.rows(data.exits, BookData.of(p));
    Map<TeamFigures.Kind, Want> verdicts = verdicts(own);
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
              row.add(groups.get(kind).rate(share));
              row.add(groups.get(kind).interval(share));
              row.add(of(BookData.icedAfter(mates.get(kind))));
              row.add(of(all));
              row.add(verdicts.getOrDefault(kind, Want.text(Want.FEW)));
              t.row(row);
            });
    return t;
  }

  /** Lines with ten cases on both sides, the likeliest differences first: Holm 1979. */
  private Map<TeamFigures.Kind, Want> verdicts(List<BookData.Row> own) {
    record Line(TeamFigures.Kind kind, double chance, boolean more) {}
    List<Line> lines = new ArrayList<>();
    TeamFigures.byKind(own)
        .forEach(
            (kind, rows) -> {
              Formulas.Share share = BookData.icedAfter(rows);
              Formulas.Share all = everybody.get(kind);
              Formulas.Share others = new Formulas.Share(all.k() - share.k(), all.n() - share.n());
              if (!share.few() && !others.few()) {
                double more = Formulas.exact(share, others);
                double less = Formulas.exact(others, share);
                lines.add(new Line(kind, 2 * Math.min(more, less), share.value() > others.value()));
              }
            });
    lines.sort(Comparator.comparingDouble(Line::chance));
    Map<TeamFigures.Kind, Want> verdicts = new HashMap<>();
    boolean clear = true;
    for (int i = 0; i < lines.size(); i++) {
      clear &= lines.get(i).chance() * (lines.size() - i) <= 0.05;
      verdicts.put(
          lines.get(i).kind(),
          Want.text(
              !clear ? "no clear difference" : lines.get(i).more() ? "more often" : "less often"));
    }
    return verdicts;
  }

  private static Want of(Formulas.Share s) {
    return Want.text(s.words().words() + ", n " + s.n());
  }

  /** Released short of center, of the pucks carried or passed out. */
  static Formulas.Share releasedShort(List<BookData.Row> rows) {
    return BookData.share(
        BookData.rows(rows, r -> r.has("at_center")), r -> r.is("at_center", "released short"));
  }

  private List<String> games(BookData.Player p) {
    return BookData.values(BookData.rows(data.exits, BookData.team(Optional.of(p.team()))), "game");
  }

  Wanted habit(BookData.Player p) {
    Wanted t = new Wanted("Stretch", "Sent before the red line", "Share", "95 % interval");
    stretches(p).forEach((name, s) -> t.row(stretch(name, s)));
    return t.row(stretch("all games", releasedShort(BookData.rows(data.exits, BookData.of(p)))));
  }

  private static List<Want> stretch(String name, Formulas.Share s) {
    return List.of(Want.name(name), Want.counts(s), s.words(), s.interval());
  }

  /** The caption over the habit. */
  Want trend(BookData.Player p) {
    return Formulas.trend(
        "Of the pucks carried or passed out of the zone, how many were sent before the red line."
            + " Over the team's games in order the share is ",
        byGame(p));
  }

  /** What the picture of the habit says of its change. */
  Want change(BookData.Player p) {
    return Formulas.change(byGame(p), data.gamesOfTeam.get(p.team()).size());
  }

  private List<Formulas.Share> byGame(BookData.Player p) {
    List<BookData.Row> own = BookData.rows(data.exits, BookData.of(p));
    return games(p).stream()
        .map(g -> releasedShort(BookData.rows(own, r -> r.is("game", g))))
        .toList();
  }

  /** Thirds of the team's games by their words. */
  Map<String, Formulas.Share> stretches(BookData.Player p) {
    List<BookData.Row> own = BookData.rows(data.exits, BookData.of(p));
    List<String> games = games(p);
    Map<String, Formulas.Share> stretches = new LinkedHashMap<>();
    int parts = Math.min(3, games.size());
    for (int i = 0; i < parts; i++) {
      int from = games.size() * i / parts;
      int to = games.size() * (i + 1) / parts;
      List<String> in = games.subList(from, to);
      stretches.put(
          to == from + 1 ? "game " + to : "games " + (from + 1) + " to " + to,
          releasedShort(BookData.rows(own, r -> in.contains(r.get("game")))));
    }
    return stretches;
  }
}
