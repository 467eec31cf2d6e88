package twostrides.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The penalty-kill page. */
final class KillFigures {

  /** A release this soon after the penalty counts as just after it: seconds, as the page says. */
  private static final double JUST_AFTER = 10;

  private KillFigures() {}

  static List<BookData.Row> shorthanded(List<BookData.Row> rows) {
    return BookData.rows(rows, r -> r.is("strength", "shorthanded"));
  }

  /** Exit attempts while shorthanded: of the book's team where it has one. */
  static List<BookData.Row> shown(BookData d) {
    return BookData.rows(shorthanded(d.exits), BookData.team(d.ours()));
  }

  static boolean keptIn(BookData.Row r) {
    return r.is("way_out", "kept in");
  }

  static Formulas.Share cleared(List<BookData.Row> rows) {
    return BookData.share(rows, r -> !keptIn(r));
  }

  private static Want relief(List<BookData.Row> rows) {
    return Formulas.median(bought(rows));
  }

  /** Seconds that clears bought, up to the opponent's return or cut short by a stop. */
  static List<Formulas.Wait> bought(List<BookData.Row> rows) {
    return BookData.rows(
            rows, r -> !keptIn(r) && r.has("seconds_until_reentry") && r.has("relief_cut_short"))
        .stream()
        .map(
            r ->
                new Formulas.Wait(
                    r.number("seconds_until_reentry"), r.is("relief_cut_short", "false")))
        .toList();
  }

  /** Kills without a goal against, with what their games say of how they hang together. */
  static Formulas.Share withoutGoal(List<BookData.Row> kills) {
    return BookData.byGame(kills, some -> BookData.share(some, k -> k.is("goals_against", "0")));
  }

  /** Tries to clear of each named player, the largest first, then by name. */
  static List<List<BookData.Row>> byPlayer(BookData d) {
    return groups(shown(d), "player");
  }

  static Wanted tries(BookData d) {
    Wanted t =
        new Wanted(
            "Game",
            "Clock",
            "Team",
            "Player",
            "Way out",
            "Result",
            "Time bought",
            "Video",
            "Sheet");
    for (BookData.Row r : shown(d)) {
      t.row(
          Want.name(r.get("game")),
          ListFigures.clock(d, r, "release_elapsed_s"),
          Want.name(r.get("team")),
          Want.name(r.has("player") ? r.get("player") : Want.NONE),
          Want.name(TeamFigures.way(r)),
          Want.name(keptIn(r) ? "failed clear" : "cleared"),
          keptIn(r) || !r.has("seconds_until_reentry")
              ? Want.text(Want.NONE)
              : Want.like("# s", Want.num(r.number("seconds_until_reentry"), 0, 0.01)),
          ListFigures.video(r),
          ListFigures.sheet(r));
    }
    return t;
  }

  private static Want against(List<BookData.Row> rows, String column) {
    List<BookData.Row> known = BookData.rows(rows, r -> r.has(column));
    return Want.text(
        known.isEmpty() ? Want.NONE : BookData.sum(known, column) + " in " + known.size());
  }

  private static List<String> sorted(List<BookData.Row> rows, String column) {
    return List.copyOf(new TreeSet<>(BookData.values(rows, column)));
  }

  static Wanted teams(BookData d) {
    Wanted t =
        new Wanted(
            "Team",
            "Kills",
            "Seconds",
            "Goals against in the kills",
            "Attempts",
            "Cleared",
            "Share",
            "95 % interval",
            "Time bought, median (95 %)",
            "Time bought a kill",
            "Failed clears",
            "Attempts against, " + d.shortly() + " after a failed clear",
            "Goals, " + d.shortly() + " after a failed clear");
    List<BookData.Row> all = shorthanded(d.exits);
    for (String team : sorted(all, "team")) {
      t.row(
          team(
              team,
              BookData.rows(all, r -> r.is("team", team)),
              BookData.rows(d.kills, k -> k.is("team", team))));
    }
    return t.rows.size() > 1 ? t.row(team("all teams", all, d.kills)) : t;
  }

  private static List<Want> team(String name, List<BookData.Row> rows, List<BookData.Row> kills) {
    Formulas.Share cleared = BookData.byGame(rows, KillFigures::cleared);
    List<BookData.Row> kept = BookData.rows(rows, KillFigures::keptIn);
    // From the exits themselves; only those of play sheets stand in a kill.
    double bought =
        BookData.total(
            BookData.rows(rows, r -> r.has("kill") && !keptIn(r)), "seconds_until_reentry");
    return List.of(
        Want.name(name),
        Want.count(kills.size()),
        kills.isEmpty()
            ? Want.text(Want.NONE)
            : Want.like("#", Want.num(BookData.total(kills, "seconds"), 0, 0.01 * kills.size())),
        against(kills, "goals_against"),
        Want.count(rows.size()),
        Want.counts(cleared),
        cleared.words(),
        cleared.interval(),
        relief(rows),
        Formulas.mean(bought, kills.size(), 1, 0.01, " s"),
        Want.count(kept.size()),
        against(kept, "attempts_against_20s"),
        against(kept, "goals_against_20s"));
  }

  static Wanted ways(BookData d) {
    Wanted t =
        new Wanted(
            "Way out",
            "Attempts",
            "Icings",
            "Share",
            "95 % interval",
            "After a penalty",
            "Other face-offs",
            "Time bought, median (95 %)",
            "Attempts against",
            "Goals against");
    for (String way : TeamFigures.WAYS) {
      List<BookData.Row> rows = BookData.rows(shown(d), r -> TeamFigures.way(r).equals(way));
      Formulas.Share iced = BookData.byGame(rows, BookData::icedAfter);
      List<Want> others = BookData.otherFaceOffs(rows);
      if (!rows.isEmpty()) {
        t.row(
            Want.name(way),
            Want.count(rows.size()),
            Want.counts(iced),
            iced.words(),
            iced.interval(),
            others.get(0),
            others.get(1),
            relief(rows),
            against(rows, "attempts_against_20s"),
            against(rows, "goals_against_20s"));
      }
    }
    return t;
  }

  /** Groups of rows by team and another column, the largest first, then by name. */
  private static List<List<BookData.Row>> groups(List<BookData.Row> rows, String column) {
    Map<String, List<BookData.Row>> groups = new LinkedHashMap<>();
    for (BookData.Row r : BookData.rows(rows, x -> x.has(column))) {
      groups.computeIfAbsent(r.get("team") + "\n" + r.get(column), k -> new ArrayList<>()).add(r);
    }
    List<List<BookData.Row>> order = new ArrayList<>(groups.values());
    order.sort(
        Comparator.comparing((List<BookData.Row> g) -> -g.size())
            .thenComparing(g -> g.get(0).get("team"))
            .thenComparing(g -> g.get(0).get(column)));
    return order;
  }

  /** The group that shares lean on while shorthanded: all players of the sheets. */
  static AdjustedFigures group(BookData d) {
    return new AdjustedFigures(
        groups(shorthanded(d.exits), "player").stream().map(KillFigures::cleared).toList());
  }

  static Wanted players(BookData d) {
    Wanted t =
        new Wanted(
            "Player",
            "Team",
            "Cleared",
            "Share",
            "95 % interval",
            "Adjusted rate",
            "95 % interval",
            "Time bought, median (95 %)",
            "Icings");
    AdjustedFigures group = group(d);
    for (List<BookData.Row> rows : groups(shown(d), "player")) {
      Formulas.Share cleared = cleared(rows);
      List<Want> row =
          new ArrayList<>(
              List.of(
                  Want.name(rows.get(0).get("player")),
                  Want.name(rows.get(0).get("team")),
                  Want.counts(cleared),
                  cleared.words(),
                  cleared.interval()));
      row.add(group.rate(cleared));
      row.add(group.interval(cleared));
      row.add(relief(rows));
      row.add(Want.counts(BookData.icedAfter(rows)));
      t.row(row);
    }
    return t;
  }

  static Wanted units(BookData d) {
    Wanted t =
        new Wanted(
            "Unit",
            "Team",
            "Cleared",
            "Share",
            "95 % interval",
            "Time bought, median (95 %)",
            "Attempts against",
            "Goals against");
    for (List<BookData.Row> rows : groups(shown(d), "on_ice")) {
      Formulas.Share cleared = cleared(rows);
      t.row(
          Want.name(rows.get(0).get("on_ice")),
          Want.name(rows.get(0).get("team")),
          Want.counts(cleared),
          cleared.words(),
          cleared.interval(),
          relief(rows),
          against(rows, "attempts_against_20s"),
          against(rows, "goals_against_20s"));
    }
    return t;
  }

  static Wanted justAfter(BookData d) {
    Wanted t = new Wanted("Team", "Releases", "Iced", "Share", "95 % interval");
    List<BookData.Row> late =
        BookData.rows(
            d.releases,
            r ->
                !r.is("strength", "shorthanded")
                    && r.has("since_shorthanded_s")
                    && r.number("since_shorthanded_s") <= JUST_AFTER);
    for (String team : sorted(late, "team")) {
      Formulas.Share iced =
          BookData.byGame(BookData.rows(late, r -> r.is("team", team)), BookData::iced);
      t.row(
          Want.name(team), Want.count(iced.n()), Want.counts(iced), iced.words(), iced.interval());
    }
    return t;
  }

  static Wanted exemption(BookData d) {
    Wanted t =
        new Wanted(
            "Team", "Releases", "No icing", "Icing", "Waved off", "Open", "Iced in the sheets");
    List<BookData.Row> all = shorthanded(d.releases);
    for (String team : sorted(all, "team")) {
      List<BookData.Row> rows = BookData.rows(all, r -> r.is("team", team));
      List<Want> row = new ArrayList<>(List.of(Want.name(team), Want.count(rows.size())));
      for (String ruling : List.of("no icing", "icing", "waved off", "not yet decided")) {
        row.add(Want.count(BookData.rows(rows, r -> r.is("ruling", ruling)).size()));
      }
      row.add(Want.count(BookData.iced(rows).k()));
      t.row(row);
    }
    return t;
  }

  static Wanted kills(BookData d) {
    Wanted t =
        new Wanted(
            "Game",
            "Team",
            "Began",
            "Seconds",
            "Attempts",
            "Cleared",
            "Failed clears",
            "Time bought",
            "Attempts against",
            "Goals against");
    for (BookData.Row k : BookData.rows(d.kills, BookData.team(d.ours()))) {
      Optional<String> number = Optional.of(k.get("kill"));
      List<BookData.Row> exits =
          BookData.rows(
              d.exits, r -> r.is("game", k.get("game")) && r.is("kill", number.orElseThrow()));
      Formulas.Share cleared = cleared(exits);
      t.row(
          Want.name(k.get("game")),
          Want.name(k.get("team")),
          Want.text(
              "P"
                  + k.get("period")
                  + ", "
                  + ListFigures.minutes((int) Math.floor(k.number("elapsed_s")))
                  + " played"),
          Want.like("#", Want.num(k.number("seconds"), 0, 0.01)),
          Want.count(cleared.n()),
          Want.count(cleared.k()),
          Want.count(cleared.n() - cleared.k()),
          Want.like(
              "# s",
              Want.num(
                  BookData.total(BookData.rows(exits, r -> !keptIn(r)), "seconds_until_reentry"),
                  0,
                  0.01)),
          Want.count(k.count("attempts_against")),
          Want.count(k.count("goals_against")));
    }
    return t;
  }
}
