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

/** The compare page as it opens, and the counts inside it. */
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

    private Asked at(String strength) {
      return new Asked(
          label + ", " + strength, releases, of.and(r -> r.is("strength", strength)), hits);
    }
  }

  private static final Predicate<BookData.Row> TOLD = r -> r.has("own_zone_restart");

  private static boolean iced(BookData.Row r) {
    return r.is("own_zone_restart", "true") && r.icing();
  }

  private static final Asked RELEASED_SHORT =
      Asked.yes(
          "released short, of carries and passes",
          false,
          r -> Set.of("carry", "pass").contains(r.get("way_out")) && r.has("at_center"),
          r -> r.is("at_center", "released short"));

  private static final Asked ICED =
      Asked.yes("iced, of releases short of center", true, r -> true, BookData.Row::icing);

  private static final Asked KEPT_IN =
      Asked.yes("kept in, of attempts", false, r -> true, r -> r.is("way_out", "kept in"));

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

  private static final List<Asked> SUMMARY =
      List.of(
          Asked.yes("icing, of attempts", false, TOLD, CompareFigures::iced),
          RELEASED_SHORT,
          ICED,
          KEPT_IN);

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

  private record Pair(String label, Formulas.Share a, Formulas.Share b) {

    private boolean told() {
      return !a.few() && !b.few();
    }

    /** 1 where A is more, -1 where B is, 0 where the interval holds 0. */
    private int more() {
      double[] i = Formulas.newcombe(a, b);
      return i[0] > 0 ? 1 : i[1] < 0 ? -1 : 0;
    }

    private Want verdict() {
      return Want.text(
          !told()
              ? Want.FEW
              : List.of("B more often", "no clear difference", "A more often").get(more() + 1));
    }
  }

  private static Formulas.Share share(Side side, Asked asked) {
    List<BookData.Row> rows = side.rows(asked);
    return new Formulas.Share(rows.stream().mapToInt(asked.hits()).sum(), rows.size());
  }

  /** The rows that are shown: all strengths where there are cases, two apart where both occur. */
  private static List<Pair> pairs(BookRun b, List<Asked> list) {
    Side first = sides(b.data, "players").get(0);
    Side second = sides(b.data, "players").get(1);
    List<Pair> pairs = new ArrayList<>();
    for (Asked asked : list) {
      List<Pair> apart = new ArrayList<>();
      for (String s : APART) {
        Asked at = asked.at(s);
        apart.add(new Pair(at.label(), share(first, at), share(second, at)));
      }
      Pair all = new Pair(asked.label(), share(first, asked), share(second, asked));
      if (all.a().n() + all.b().n() > 0) {
        pairs.add(all);
      }
      if (apart.stream().allMatch(p -> p.a().n() + p.b().n() > 0)) {
        pairs.addAll(apart);
      }
    }
    return pairs;
  }

  static Wanted summary(BookRun b) {
    return shares(b, "What is compared", SUMMARY);
  }

  static Wanted ways(BookRun b) {
    return shares(b, "Way out", WAYS);
  }

  private static Wanted shares(BookRun b, String what, List<Asked> list) {
    Wanted t = new Wanted(what, "A", "Share", "B", "Share", "A less B", "Verdict");
    for (Pair p : pairs(b, list)) {
      t.row(
          Want.name(p.label()),
          Want.counts(p.a()),
          p.a().words(),
          Want.counts(p.b()),
          p.b().words(),
          Formulas.difference(p.a(), p.b()),
          p.verdict());
    }
    return t;
  }

  static Wanted against(BookRun b) {
    Wanted t = new Wanted("After", "A", "Mean", "B", "Mean");
    for (Pair p : pairs(b, List.of(AGAINST))) {
      t.row(
          Want.name(p.label()),
          Want.text(p.a().k() + " in " + p.a().n()),
          Formulas.mean(p.a().k(), p.a().n(), 2, 0, ""),
          Want.text(p.b().k() + " in " + p.b().n()),
          Formulas.mean(p.b().k(), p.b().n(), 2, 0, ""));
    }
    return t;
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
    List<Side> players = sides(b.data, "players");
    Pair icings = pairs(b, SUMMARY).get(0);
    all.add(
        said("Icing followed ", icings.a(), " exit attempts", players.get(0), "A")
            .then(said(", and ", icings.b(), "", players.get(1), "B"))
            .then(Want.text(": "))
            .then(icings.verdict())
            .then(Want.text(".")));
    List<Pair> told =
        Stream.of(SUMMARY, WAYS)
            .flatMap(list -> pairs(b, list).stream())
            .filter(Pair::told)
            .toList();
    all.add(
        Want.text(
            "Rows of shares with ten cases or more on both sides: "
                + told.size()
                + ". Of these "
                + told.stream().filter(p -> p.more() != 0).count()
                + " differ; one in twenty would look different by chance alone."));
    all.add(
        Want.text(
            "Shot attempts of the opponent within "
                + b.data.shortly()
                + " of the release, or of the face-off where a defensive-zone face-off followed. No verdict: those of one game hang together."));
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

  private static Want said(
      String before, Formulas.Share share, String noun, Side side, String letter) {
    return Want.text(before)
        .then(Want.counts(share))
        .then(Want.text(noun + " ("))
        .then(share.words())
        .then(Want.text(") of " + letter + ", "))
        .then(Want.name(side.label()));
  }
}
