package twostrides.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/**
 * The counts inside the compare page. What its script makes of them is asked in a browser
 * (ComparePageTest).
 */
final class CompareFigures {

  /** Strengths in a cell's number; the third is all others. */
  private static final List<String> APART = List.of("even", "shorthanded");

  private static final int FEWEST = 10;

  private CompareFigures() {}

  /**
   * A player, unit or team.
   *
   * @param label its name on the page
   * @param team its team
   * @param exits its exit attempts
   * @param releases its releases short of center
   */
  record Side(String label, String team, List<BookData.Row> exits, List<BookData.Row> releases) {

    private List<BookData.Row> rows(Asked asked) {
      return BookData.rows(asked.releases() ? releases : exits, asked.of());
    }
  }

  /**
   * A thing that is counted.
   *
   * @param label its words
   * @param releases whether it is of releases, else of exits
   * @param of which rows are cases
   * @param hits what a row adds
   */
  record Asked(
      String label,
      boolean releases,
      Predicate<BookData.Row> of,
      ToIntFunction<BookData.Row> hits) {

    private static Asked yes(
        String label, boolean releases, Predicate<BookData.Row> of, Predicate<BookData.Row> hit) {
      return new Asked(label, releases, of, r -> hit.test(r) ? 1 : 0);
    }
  }

  private static final Predicate<BookData.Row> TOLD = r -> r.has("own_zone_restart");

  private static boolean iced(BookData.Row r) {
    return r.is("own_zone_restart", "true") && r.icing();
  }

  private static final Asked RELEASED_SHORT =
      Asked.yes(
          "sent before the red line, of carries and passes",
          false,
          r -> Set.of("carry", "pass").contains(r.get("way_out")) && r.has("at_center"),
          r -> r.is("at_center", "released short"));

  private static final Asked ICED =
      Asked.yes("iced, of pucks sent before the red line", true, r -> true, BookData.Row::icing);

  private static final Asked KEPT_IN =
      Asked.yes("failed clears, of attempts", false, r -> true, r -> r.is("way_out", "kept in"));

  private static final Asked AGAINST =
      new Asked(
          "exit attempts",
          false,
          r -> r.has("attempts_against_20s"),
          r -> r.count("attempts_against_20s"));

  private static final List<Asked> WAYS =
      TeamFigures.WAYS.stream()
          .map(
              w ->
                  Asked.yes(
                      w, false, TOLD.and(r -> TeamFigures.way(r).equals(w)), CompareFigures::iced))
          .toList();

  /** What a cell counts, in the order of the cells. */
  private static final List<Asked> SLOTS =
      Stream.of(WAYS, List.of(RELEASED_SHORT, ICED, KEPT_IN, AGAINST))
          .flatMap(List::stream)
          .toList();

  /** All players or units, whatever their attempts: the column that names them. */
  private static List<Side> named(BookData d, String column) {
    List<Side> sides = new ArrayList<>();
    for (String team : d.teams()) {
      List<Side> mates = new ArrayList<>();
      List<BookData.Row> exits = BookData.rows(d.exits, BookData.team(Optional.of(team)));
      List<BookData.Row> releases = BookData.rows(d.releases, BookData.team(Optional.of(team)));
      Set<String> names = new TreeSet<>(BookData.values(exits, column));
      names.addAll(BookData.values(releases, column));
      names.remove("");
      for (String name : names) {
        mates.add(
            new Side(
                name + ", " + team,
                team,
                BookData.rows(exits, r -> r.is(column, name)),
                BookData.rows(releases, r -> r.is(column, name))));
      }
      mates.sort(Comparator.comparing((Side s) -> -s.exits().size()).thenComparing(Side::label));
      sides.addAll(mates);
    }
    return sides;
  }

  private static List<Side> enough(List<Side> sides) {
    return sides.stream().filter(s -> s.exits().size() >= FEWEST).toList();
  }

  /** What can be picked, by kind. */
  static List<Side> sides(BookData d, String kind) {
    return switch (kind) {
      case "players" -> enough(named(d, "player"));
      case "units" -> enough(named(d, "on_ice"));
      default ->
          d.teams().stream()
              .filter(t -> kind.equals("teams") || games(d, t).size() > 1)
              .map(
                  t ->
                      new Side(
                          t,
                          t,
                          BookData.rows(d.exits, BookData.team(Optional.of(t))),
                          BookData.rows(d.releases, BookData.team(Optional.of(t)))))
              .toList();
    };
  }

  /** A team's games in the order of play. */
  static List<String> games(BookData d, String team) {
    Set<String> games = new LinkedHashSet<>();
    for (List<BookData.Row> rows : List.of(d.exits, d.releases)) {
      for (BookData.Row r : rows) {
        if (r.is("team", team) || r.is("opponent", team)) {
          games.add(r.get("game"));
        }
      }
    }
    return List.copyOf(games);
  }

  /** Cell, hits and cases of every cell of a side in a game that has cases. */
  static List<Integer> cells(Side side, String game) {
    List<Integer> cells = new ArrayList<>();
    for (int slot = 0; slot < SLOTS.size(); slot++) {
      Asked asked = SLOTS.get(slot);
      List<BookData.Row> rows = BookData.rows(side.rows(asked), r -> r.is("game", game));
      for (int s = 0; s <= APART.size(); s++) {
        int strength = s;
        List<BookData.Row> in =
            BookData.rows(
                rows,
                r ->
                    strength == APART.size()
                        ? !APART.contains(r.get("strength"))
                        : r.is("strength", APART.get(strength)));
        if (!in.isEmpty()) {
          cells.add(slot * (APART.size() + 1) + s);
          cells.add(in.stream().mapToInt(asked.hits()).sum());
          cells.add(in.size());
        }
      }
    }
    return cells;
  }

  /** By team: what the book of the run and the other book call icing, and where they differ. */
  static Wanted otherBook(BookData d) {
    Wanted t =
        new Wanted(
            "Team",
            "Releases",
            "Icing by the book of this run",
            "Open",
            "Icing by the other book",
            "Open",
            "Ruled otherwise",
            "Share");
    Set<String> teams = new TreeSet<>(BookData.values(d.rulings, "team"));
    teams.forEach(n -> t.row(otherBook(n, BookData.rows(d.rulings, r -> r.is("team", n)))));
    return teams.size() > 1 ? t.row(otherBook("all teams", d.rulings)) : t;
  }

  private static List<Want> otherBook(String name, List<BookData.Row> rows) {
    Formulas.Share differs = BookData.share(rows, r -> r.is("differs", "true"));
    return List.of(
        Want.name(name),
        Want.count(rows.size()),
        ruled(rows, "played_ruling", "icing"),
        ruled(rows, "played_ruling", "not yet decided"),
        ruled(rows, "ruling", "icing"),
        ruled(rows, "ruling", "not yet decided"),
        Want.counts(differs),
        differs.words());
  }

  private static Want ruled(List<BookData.Row> rows, String column, String word) {
    return Want.count(BookData.rows(rows, r -> r.is(column, word)).size());
  }

  /** The sentences with numbers in them. */
  static List<Want> sentences(BookRun b) {
    List<Want> all = new ArrayList<>();
    all.add(
        Want.text(
            "A less B: points of a hundred, with a 95 % interval. Even and shorthanded stand apart where both occur."));
    all.add(
        Want.text(
            "Shot attempts of the opponent within the run's window of the release, or of the face-off where a defensive-zone face-off followed. No verdict: those of one game hang together."));
    List<String> left = new ArrayList<>();
    for (String kind : List.of("players", "units")) {
      List<Side> every = named(b.data, kind.equals("players") ? "player" : "on_ice");
      int out = every.size() - enough(every).size();
      if (out > 0) {
        left.add(out + " of " + every.size() + " " + kind);
      }
    }
    if (!left.isEmpty()) {
      all.add(
          Want.text(
              "Left out, with under ten exit attempts (too few to say): "
                  + String.join(", ", left)
                  + "."));
    }
    return all;
  }
}
