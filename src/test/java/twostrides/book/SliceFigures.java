package twostrides.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** The page of slices, and the page of the opponent's empty net. */
final class SliceFigures {

  private static final String UNKNOWN = "not in the sheet";

  private SliceFigures() {}

  /** Ahead, level or behind; empty where the sheet does not say. */
  static Optional<String> score(BookData.Row r) {
    if (!r.has("goals_ahead")) {
      return Optional.empty();
    }
    int ahead = r.count("goals_ahead");
    return Optional.of(ahead > 0 ? "leading" : ahead == 0 ? "tied" : "trailing");
  }

  private static Function<BookData.Row, String> slice(String heading) {
    return switch (heading) {
      case "Strength" -> r -> r.get("strength");
      case "Score" -> r -> score(r).orElse("");
      case "Period" -> r -> r.count("period") > 3 ? "overtime" : "period " + r.get("period");
      case "Pressure at the release" -> r -> r.get("pressure");
      case "Side of the rink, facing the attack" -> r -> r.get("side");
      case "Venue" -> r -> r.get("venue");
      case "Opponent" -> r -> r.get("opponent");
      default -> throw new IllegalArgumentException(heading);
    };
  }

  private static List<String> order(String heading) {
    return switch (heading) {
      case "Strength" -> TeamFigures.STRENGTHS;
      case "Score" -> List.of("leading", "tied", "trailing");
      case "Pressure at the release" -> List.of("none", "light", "heavy");
      case "Side of the rink, facing the attack" -> List.of("left", "middle", "right");
      case "Venue" -> List.of("home", "away");
      default -> List.of();
    };
  }

  /** Attempts of each line, those not in the sheet under no name. */
  static Map<String, List<BookData.Row>> attempts(BookData d, String heading) {
    Function<BookData.Row, String> slice = slice(heading);
    List<BookData.Row> exits = BookData.rows(d.exits, BookData.team(d.ours()));
    List<BookData.Row> releases = BookData.rows(d.releases, BookData.team(d.ours()));
    List<String> names = new ArrayList<>(order(heading));
    TreeSet<String> found = new TreeSet<>();
    exits.forEach(r -> found.add(slice.apply(r)));
    found.remove("");
    found.stream().filter(s -> !names.contains(s)).forEach(names::add);
    boolean told = !found.isEmpty();
    names.add("");
    Map<String, List<BookData.Row>> lines = new LinkedHashMap<>();
    for (String name : names) {
      List<BookData.Row> in = BookData.rows(exits, r -> slice.apply(r).equals(name));
      if (told
          && !(in.isEmpty() && releases.stream().noneMatch(r -> slice.apply(r).equals(name)))) {
        lines.put(name, in);
      }
    }
    return lines;
  }

  /** How often icing followed, by line. */
  static Map<String, Formulas.Share> iced(BookData d, String heading) {
    Map<String, Formulas.Share> lines = new LinkedHashMap<>();
    attempts(d, heading)
        .forEach(
            (name, rows) ->
                lines.put(
                    name.isEmpty() ? UNKNOWN : name, BookData.byGame(rows, BookData::icedAfter)));
    return lines;
  }

  static Wanted slices(BookData d, String heading) {
    Function<BookData.Row, String> slice = slice(heading);
    List<BookData.Row> exits = BookData.rows(d.exits, BookData.team(d.ours()));
    List<BookData.Row> releases = BookData.rows(d.releases, BookData.team(d.ours()));
    Wanted t =
        new Wanted(
            "Situation",
            "Attempts",
            "Carry over center",
            "Sent before the red line",
            "Icings",
            "Share",
            "95 % interval",
            "Against the rest",
            "After a penalty",
            "Other face-offs",
            "Pucks sent before the red line",
            "Iced",
            "Share");
    for (Map.Entry<String, List<BookData.Row>> line : attempts(d, heading).entrySet()) {
      String name = line.getKey();
      List<BookData.Row> in = line.getValue();
      List<BookData.Row> let = BookData.rows(releases, r -> slice.apply(r).equals(name));
      Formulas.Share after = BookData.byGame(in, BookData::icedAfter);
      List<Want> others = BookData.otherFaceOffs(in);
      List<BookData.Row> rest = BookData.rows(exits, r -> !slice.apply(r).equals(name));
      Formulas.Share iced = BookData.iced(let);
      t.row(
          Want.name(name.isEmpty() ? UNKNOWN : name),
          Want.count(in.size()),
          Want.count(BookData.rows(in, r -> TeamFigures.way(r).equals("carry over center")).size()),
          Want.count(BookData.rows(in, r -> r.is("at_center", "released short")).size()),
          Want.counts(after),
          after.words(),
          after.interval(),
          Formulas.difference(after, BookData.byGame(rest, BookData::icedAfter)),
          others.get(0),
          others.get(1),
          Want.count(let.size()),
          Want.counts(iced),
          iced.words());
    }
    return t;
  }

  static boolean netEmpty(BookData.Row r) {
    return r.is("net_empty", "opponent") || r.is("net_empty", "both");
  }

  static Wanted sent(BookData d, boolean players) {
    Wanted t =
        new Wanted(
            players ? "Player, team" : "Team",
            "Shots",
            "Scored",
            "Share",
            "95 % interval",
            "Shots iced",
            "Others let go",
            "Iced",
            "All iced");
    List<BookData.Row> all = BookData.rows(d.releases, SliceFigures::netEmpty);
    List<BookData.Row> shown =
        players ? BookData.rows(all, r -> r.has("player") && BookData.team(d.ours()).test(r)) : all;
    for (String team : new TreeSet<>(BookData.values(shown, "team"))) {
      List<BookData.Row> own = BookData.rows(shown, r -> r.is("team", team));
      if (!players) {
        t.row(sent(team, own));
        continue;
      }
      for (String p : new TreeSet<>(BookData.values(own, "player"))) {
        t.row(sent(p + ", " + team, BookData.rows(own, r -> r.is("player", p))));
      }
    }
    return !players && t.rows.size() > 1 ? t.row(sent("all teams", all)) : t;
  }

  private static List<Want> sent(String name, List<BookData.Row> rows) {
    List<BookData.Row> shots = BookData.rows(rows, r -> r.is("shot", "true"));
    List<BookData.Row> others = BookData.rows(rows, r -> !r.is("shot", "true"));
    Formulas.Share scored = BookData.share(shots, r -> r.is("scored", "true"));
    return List.of(
        Want.name(name),
        Want.count(shots.size()),
        Want.counts(scored),
        scored.words(),
        scored.interval(),
        Want.counts(BookData.iced(shots)),
        Want.count(others.size()),
        Want.counts(BookData.iced(others)),
        BookData.iced(rows).words());
  }

  static Wanted gained(BookData d) {
    Wanted t = new Wanted("Team", "Exits", "Goal followed", "Share", "95 % interval", "Icings");
    List<BookData.Row> all =
        BookData.rows(d.exits, r -> netEmpty(r) && r.is("at_center", "gained"));
    for (String team : new TreeSet<>(BookData.values(all, "team"))) {
      t.row(gained(team, BookData.rows(all, r -> r.is("team", team))));
    }
    return t.rows.size() > 1 ? t.row(gained("all teams", all)) : t;
  }

  /** How often each way brought a goal at an empty net. */
  static Map<String, Formulas.Share> goals(BookData d) {
    List<BookData.Row> shots = BookData.rows(d.releases, r -> netEmpty(r) && r.is("shot", "true"));
    Map<String, Formulas.Share> goals = new LinkedHashMap<>();
    goals.put("shot from before the red line", BookData.share(shots, r -> r.is("scored", "true")));
    goals.put(
        "center gained, goal in " + Math.round(d.window()) + " s",
        goalFollowed(BookData.rows(d.exits, r -> netEmpty(r) && r.is("at_center", "gained"))));
    return goals;
  }

  private static Formulas.Share goalFollowed(List<BookData.Row> rows) {
    return BookData.share(
        BookData.rows(rows, r -> r.has("goals_for_20s")), r -> r.count("goals_for_20s") > 0);
  }

  private static List<Want> gained(String name, List<BookData.Row> rows) {
    Formulas.Share scored = goalFollowed(rows);
    return List.of(
        Want.name(name),
        Want.count(rows.size()),
        Want.counts(scored),
        scored.words(),
        scored.interval(),
        Want.counts(BookData.icedAfter(rows)));
  }
}
