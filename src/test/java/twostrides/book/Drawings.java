package twostrides.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What pictures say of shares, ways out, zones and single pucks, made anew from the tables. */
final class Drawings {

  /** Metres of an NHL rink: from center to the end-zone face-off spots, and the width. */
  private static final double SPOTS = 69 * 0.3048;

  private static final double WIDTH = 85 * 0.3048;
  private static final double BLUE_LINE = 25 * 0.3048;
  private static final double LAST_STRIDES = 3.5;

  private Drawings() {}

  /** A whole number with a separator for thousands. */
  static String whole(long n) {
    return String.format(Locale.ROOT, "%,d", n);
  }

  private static String counted(Formulas.Share s) {
    return whole(s.k()) + " of " + whole(s.n());
  }

  /** "61 % (142 of 234; could be 54 to 67 %)", or "few (2 of 6)". */
  static Want said(Formulas.Share s) {
    String share = s.n() == 0 ? "none" : s.few() ? "few" : s.words().words();
    return said(Want.text(share), s, s.interval());
  }

  /** The same of an adjusted rate. */
  static Want said(AdjustedFigures group, Formulas.Share s) {
    return said(group.rate(s), s, group.interval(s));
  }

  private static Want said(Want share, Formulas.Share s, Want interval) {
    Want start = share.then(Want.text(" (" + counted(s)));
    return (s.few() ? start : start.then(Want.text("; could be ")).then(interval))
        .then(Want.text(")"));
  }

  static Want joined(List<Want> parts) {
    Want all = Want.text("");
    for (int i = 0; i < parts.size(); i++) {
      all = all.then(Want.text(i == 0 ? "" : "; ")).then(parts.get(i));
    }
    return all.then(Want.text("."));
  }

  /** Lines of dots; what they are compared with stands first. */
  static Want lines(Optional<Want> reference, Map<String, Formulas.Share> lines) {
    List<Want> parts = new ArrayList<>(reference.stream().toList());
    lines.forEach((name, s) -> parts.add(Want.text(name + ": ").then(said(s))));
    return joined(parts);
  }

  /** "team 6 %, 58 of 1,014"; empty where there are too few to say. */
  static Optional<Want> reference(String name, Formulas.Share s) {
    return s.few()
        ? Optional.empty()
        : Optional.of(
            Want.like(name + " # %", Formulas.hundred(s.value()))
                .then(Want.text(", " + counted(s))));
  }

  /** One of the numbers to be seen first; all is what it is compared with. */
  static Want number(String words, Formulas.Share own, Optional<Formulas.Share> all) {
    Want start =
        own.few()
            ? Want.text(
                (own.n() == 0 ? "– " : "few ")
                    + words
                    + ": "
                    + counted(own)
                    + ", too few to say more")
            : own.words()
                .then(Want.text(" " + words + ": " + counted(own) + ", could be "))
                .then(own.interval());
    return all.filter(s -> !s.few())
        .map(
            s ->
                start
                    .then(Want.like(", all teams # %", Formulas.hundred(s.value())))
                    .then(Want.text(", " + counted(s))))
        .orElse(start);
  }

  /** A team, or all teams, in three numbers. */
  static Want numbers(BookData d, Optional<String> team) {
    List<BookData.Row> exits = BookData.rows(d.exits, BookData.team(team));
    List<BookData.Row> kills = BookData.rows(d.kills, BookData.team(team));
    return joined(
        List.of(
            number(
                "iced, of the tries to get out",
                BookData.byGame(exits, BookData::icedAfter),
                team.map(t -> BookData.byGame(d.exits, BookData::icedAfter))),
            number(
                "sent before the red line, of pucks carried or passed out",
                BookData.byGame(exits, PlayerFigures::releasedShort),
                team.map(t -> BookData.byGame(d.exits, PlayerFigures::releasedShort))),
            number(
                "kills without a goal against",
                KillFigures.withoutGoal(kills),
                team.map(t -> KillFigures.withoutGoal(d.kills)))));
  }

  /** How often each way out was iced, where a sheet tells an ending. */
  static Want ways(List<BookData.Row> exits) {
    Map<String, Formulas.Share> lines = new LinkedHashMap<>();
    for (String way : TeamFigures.WAYS) {
      Formulas.Share s =
          BookData.byGame(
              BookData.rows(exits, r -> TeamFigures.way(r).equals(way)), BookData::icedAfter);
      if (s.n() > 0) {
        lines.put(way, s);
      }
    }
    return lines(Optional.empty(), lines);
  }

  /** Attempts by way out and strength. */
  static Want stack(List<BookData.Row> exits) {
    List<Want> ways = new ArrayList<>();
    occurring(exits)
        .forEach(
            (way, rows) ->
                ways.add(
                    Want.text(
                        way
                            + ": "
                            + String.join(
                                ", ",
                                TeamFigures.STRENGTHS.stream()
                                    .filter(s -> strength(exits, s) > 0)
                                    .map(s -> whole(strength(rows, s)) + " " + s)
                                    .toList()))));
    return joined(ways);
  }

  /** Ways that occur, as the names of the stack's bars count them. */
  static List<String> bars(List<BookData.Row> exits) {
    List<String> bars = new ArrayList<>();
    occurring(exits).forEach((way, rows) -> bars.add(way + " (" + whole(rows.size()) + ")"));
    return bars;
  }

  private static Map<String, List<BookData.Row>> occurring(List<BookData.Row> exits) {
    Map<String, List<BookData.Row>> ways = new LinkedHashMap<>();
    for (String way : TeamFigures.WAYS) {
      List<BookData.Row> rows = BookData.rows(exits, r -> TeamFigures.way(r).equals(way));
      if (!rows.isEmpty()) {
        ways.put(way, rows);
      }
    }
    return ways;
  }

  private static int strength(List<BookData.Row> rows, String strength) {
    return BookData.rows(rows, r -> TeamFigures.strength(r).equals(strength)).size();
  }

  /** A player's habit over the season. */
  static Want trend(PlayerFigures figures, BookData.Player p) {
    List<Want> stretches = new ArrayList<>();
    figures
        .stretches(p)
        .forEach((games, s) -> stretches.add(Want.text(games + ": ").then(said(s))));
    return joined(stretches).then(Want.text(" ")).then(figures.change(p));
  }

  /** Marks of a map of releases, what lies on top first. */
  private static final List<String> MARKS = marks();

  private static List<String> marks() {
    List<String> marks = new ArrayList<>(ListFigures.OUTCOMES);
    marks.add(1, "scored");
    return marks;
  }

  private static String mark(BookData.Row release) {
    return release.is("scored", "true") ? "scored" : ListFigures.outcome(release);
  }

  /** The map of a player's releases. */
  static Want map(List<BookData.Row> releases) {
    List<Want> kinds = new ArrayList<>();
    for (String o : MARKS) {
      int n = BookData.rows(releases, r -> mark(r).equals(o)).size();
      if (n > 0) {
        kinds.add(Want.text(o + " (" + whole(n) + ")"));
      }
    }
    Want note =
        Want.text(SentenceFigures.count(releases.size(), "puck") + " sent before the red line.");
    return kinds.isEmpty() ? note : note.then(Want.text(" ")).then(joined(kinds));
  }

  /** What the marks of the map say, in the order drawn: icings lie on top. */
  static List<Want> marks(BookData d, List<BookData.Row> releases) {
    return releases.stream()
        .sorted(Comparator.comparing(r -> -MARKS.indexOf(mark(r))))
        .map(
            r ->
                ListFigures.clock(d, r, "release_elapsed_s")
                    .then(Want.text(": "))
                    .then(
                        ListFigures.gap(
                            r,
                            " before the red line, "
                                + (mark(r).equals(ListFigures.ICED)
                                    ? ListFigures.cause(r)
                                    : mark(r)))))
        .toList();
  }

  /** Releases of which a picture of zones tells: those that the book may call icing. */
  private static List<BookData.Row> told(List<BookData.Row> releases) {
    return BookData.rows(releases, r -> r.is("may_be_icing", "true") && r.has("own_zone_restart"));
  }

  private static String zone(BookData.Row r) {
    double x = r.number("release_x_m");
    double y = r.number("release_y_m");
    return (x <= -SPOTS
            ? "behind the dots"
            : x <= -BLUE_LINE
                ? "dots to blue line"
                : x <= -LAST_STRIDES ? "blue line on" : "last strides")
        + (y > WIDTH / 6 ? ", left" : y < -WIDTH / 6 ? ", right" : ", middle");
  }

  /** What each zone says of its icings. */
  private static List<Want> eachZone(List<BookData.Row> releases) {
    Map<String, List<BookData.Row>> zones = new LinkedHashMap<>();
    told(releases).forEach(r -> zones.computeIfAbsent(zone(r), z -> new ArrayList<>()).add(r));
    List<Want> parts = new ArrayList<>();
    zones.forEach(
        (zone, rows) -> parts.add(Want.text(zone + ": ").then(said(BookData.iced(rows)))));
    return parts;
  }

  /** Where icings start. */
  static Want zones(BookData d, List<BookData.Row> releases) {
    List<Want> parts = eachZone(releases);
    List<BookData.Row> iced = BookData.rows(told(releases), BookData.Row::icing);
    for (String kind : List.of(FLAGGED, LOOK, ListFigures.ICED)) {
      int n = BookData.rows(iced, r -> kind(d, r).equals(kind)).size();
      if (n > 0) {
        parts.add(Want.text(kind + " (" + whole(n) + ")"));
      }
    }
    Want note =
        Want.text(
            "Of the pucks sent from a zone before the red line: how many were iced. Pucks that the rule book exempts are left out.");
    return parts.isEmpty() ? note : note.then(Want.text(" ")).then(joined(parts));
  }

  private static final String FLAGGED = "flagged: there was time to gain the red line";
  private static final String LOOK = "look at these first";

  private static String kind(BookData d, BookData.Row release) {
    List<BookData.Row> flags =
        BookData.rows(
            d.flags,
            f -> f.is("game", release.get("game")) && f.is("release", release.get("release")));
    Function<BookData.Row, String> kind =
        f ->
            f.is("flagged", "true")
                ? FLAGGED
                : ListFigures.look(f) && f.has("p_gain_center") ? LOOK : ListFigures.ICED;
    return flags.stream().map(kind).findFirst().orElse(ListFigures.ICED);
  }

  /** What the zones say, and the icings among them in the order drawn: flags lie on top. */
  static List<Want> icings(BookData d, List<BookData.Row> releases) {
    List<String> order = List.of(ListFigures.ICED, LOOK, FLAGGED);
    List<Want> all = new ArrayList<>(eachZone(releases));
    BookData.rows(told(releases), BookData.Row::icing).stream()
        .sorted(Comparator.comparing(r -> order.indexOf(kind(d, r))))
        .map(
            r ->
                ListFigures.clock(d, r, "release_elapsed_s")
                    .then(Want.text(", " + (r.has("player") ? r.get("player") : Want.NONE)))
                    .then(Want.text(": iced, "))
                    .then(ListFigures.gap(r, " before the red line")))
        .forEach(all::add);
    return all;
  }
}
