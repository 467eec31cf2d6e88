package twostrides.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Ways out, players and teams, as the opening page and the pages of teams and players show them.
 */
final class TeamFigures {

  /** The ways out as they are shown, in their order. */
  static final List<String> WAYS =
      List.of(
          "carry over center",
          "carried, sent before the red line",
          "carry, other end",
          "pass",
          "chip",
          "long clearance",
          "missed pass",
          "moved, means unknown",
          "failed clear");

  /** The strengths in their order. */
  static final List<String> STRENGTHS = List.of("even", "shorthanded", "power play", "unknown");

  private TeamFigures() {}

  /** A carry is split by what became of it at center. */
  static String way(BookData.Row r) {
    if (r.is("way_out", "kept in")) {
      return "failed clear";
    }
    if (!r.is("way_out", "carry")) {
      return r.get("way_out");
    }
    return r.is("at_center", "gained")
        ? "carry over center"
        : r.is("at_center", "released short")
            ? "carried, sent before the red line"
            : "carry, other end";
  }

  static String strength(BookData.Row r) {
    return r.has("strength") ? r.get("strength") : "unknown";
  }

  /**
   * A way out at a strength.
   *
   * @param way the way out
   * @param strength the strength
   */
  record Kind(String way, String strength) {}

  /** Rows by way out and strength, only those that occur, in the order in which they are shown. */
  static Map<Kind, List<BookData.Row>> byKind(List<BookData.Row> exits) {
    Map<Kind, List<BookData.Row>> kinds = new LinkedHashMap<>();
    for (String way : WAYS) {
      for (String strength : STRENGTHS) {
        List<BookData.Row> rows =
            BookData.rows(exits, r -> way(r).equals(way) && strength(r).equals(strength));
        if (!rows.isEmpty()) {
          kinds.put(new Kind(way, strength), rows);
        }
      }
    }
    return kinds;
  }

  /** Of a team, whose intervals allow for its games; or of a player, whose do not. */
  static Wanted ways(List<BookData.Row> exits, boolean team) {
    Wanted t =
        new Wanted(
            "Way out",
            "Strength",
            "Attempts",
            "Icings",
            "Share",
            "95 % interval",
            "After a penalty",
            "Other face-offs");
    byKind(exits).forEach((kind, rows) -> t.row(way(kind.way(), kind.strength(), rows, team)));
    return exits.isEmpty() ? t : t.row(way("all ways", "", exits, team));
  }

  private static List<Want> way(
      String way, String strength, List<BookData.Row> rows, boolean team) {
    Formulas.Share iced =
        team ? BookData.byGame(rows, BookData::icedAfter) : BookData.icedAfter(rows);
    List<Want> others = BookData.otherFaceOffs(rows);
    return List.of(
        Want.name(way),
        Want.name(strength),
        Want.count(rows.size()),
        Want.counts(iced),
        iced.words(),
        iced.interval(),
        others.get(0),
        others.get(1));
  }

  static Wanted players(BookData d, String team) {
    Wanted t =
        new Wanted(
            "Player",
            "Attempts",
            "Carry over center",
            "Carried, sent before the red line",
            "Iced",
            "Adjusted rate (95 %)",
            "After a penalty",
            "Other face-offs");
    for (BookData.Player p : d.players()) {
      if (p.team().equals(team)) {
        List<BookData.Row> exits = BookData.rows(d.exits, BookData.of(p));
        Formulas.Share iced = BookData.iced(BookData.rows(d.releases, BookData.of(p)));
        List<Want> others = BookData.otherFaceOffs(exits);
        t.row(
            Want.name(p.name()),
            Want.count(exits.size()),
            Want.count(BookData.rows(exits, r -> way(r).equals(WAYS.get(0))).size()),
            Want.count(BookData.rows(exits, r -> way(r).equals(WAYS.get(1))).size()),
            Want.counts(iced),
            d.icedRates().both(iced),
            others.get(0),
            others.get(1));
      }
    }
    return t;
  }

  static Wanted teams(BookData d) {
    Wanted t =
        new Wanted(
            "Team",
            "Games",
            "Attempts",
            "Icings after an attempt",
            "Share",
            "95 % interval",
            "After a penalty",
            "Other face-offs",
            "All icings",
            "A game");
    for (String team : d.teams()) {
      List<BookData.Row> exits = BookData.rows(d.exits, BookData.team(Optional.of(team)));
      Formulas.Share iced = BookData.byGame(exits, BookData::icedAfter);
      List<Want> others = BookData.otherFaceOffs(exits);
      int games = d.gamesOfTeam.get(team).size();
      int icings = icings(d, team);
      t.row(
          Want.name(team),
          Want.count(games),
          Want.count(exits.size()),
          Want.counts(iced),
          iced.words(),
          iced.interval(),
          others.get(0),
          others.get(1),
          Want.count(icings),
          Want.like("#", Want.num((double) icings / games, 1)));
    }
    return t;
  }

  /** Icings against a team, also those whose play began in the neutral zone. */
  static int icings(BookData d, String team) {
    return BookData.rows(d.restarts, r -> r.is("team", team) && r.icing()).size();
  }
}
