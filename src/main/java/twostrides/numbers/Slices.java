package twostrides.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import twostrides.exits.Columns;
import twostrides.review.FaceOffAfter;
import twostrides.review.ShownWay;
import twostrides.review.TableRows;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;

/**
 * The slices page: exits and releases by strength, score, period, pressure, side, venue and
 * opponent, each slice with its n and set against all the others together.
 */
final class Slices {

  private final Season season;
  private final Optional<String> team;

  Slices(Season season, Optional<String> team) {
    this.season = season;
    this.team = team;
  }

  /**
   * One way to slice.
   *
   * @param id its place on the page
   * @param title heading
   * @param value the slice of a row; empty where the sheet does not say
   * @param order slices in the order in which they are shown; others follow by name
   */
  private record Cut(
      String id, String title, Function<TableRows, Optional<String>> value, List<String> order) {}

  private static final List<Cut> CUTS =
      List.of(
          new Cut(
              "strength",
              "Strength",
              r -> r.text(Columns.STRENGTH),
              List.of("even", "shorthanded", "power play", "unknown")),
          new Cut("score", "Score", RestartCosts::score, List.of("ahead", "level", "behind")),
          new Cut("period", "Period", r -> period(r), List.of()),
          new Cut(
              "pressure",
              "Pressure at the release",
              r -> r.text(Columns.PRESSURE),
              List.of("none", "light", "heavy")),
          new Cut(
              "side",
              "Side of the rink, facing the attack",
              r -> r.text(Columns.SIDE),
              List.of("left", "middle", "right")),
          new Cut("venue", "Venue", r -> r.text(Columns.VENUE), List.of("home", "away")),
          new Cut("opponent", "Opponent", r -> r.text(Columns.OPPONENT), List.of()));

  private static Optional<String> period(TableRows r) {
    int p = r.count(Columns.PERIOD).orElseThrow();
    return Optional.of(p > 3 ? "overtime" : "period " + p);
  }

  NumberPage page() {
    List<Grid> grids = new ArrayList<>();
    for (Cut c : CUTS) {
      grids.add(grid(c));
    }
    return new NumberPage(
        "slices.html",
        "Sliced",
        "When and where it happens, " + team.orElse("all teams") + ".",
        List.of(
            "Many slices are looked at here, so one in twenty differs from the rest by chance alone. A slice is a question for the video, not an answer. Rows whose sheet does not say stand under \"not in the sheet\"."),
        grids);
  }

  private static final String UNKNOWN = "not in the sheet";

  private Grid grid(Cut cut) {
    List<TableRows> exits = season.exits.stream().filter(Season.team(team)).toList();
    List<TableRows> releases = season.releases.stream().filter(Season.team(team)).toList();
    List<String> names = new ArrayList<>(cut.order());
    exits.stream()
        .map(cut.value())
        .flatMap(Optional::stream)
        .sorted()
        .filter(v -> !names.contains(v))
        .distinct()
        .forEach(names::add);
    names.add(UNKNOWN);
    List<Line> lines = new ArrayList<>();
    for (String name : names) {
      List<TableRows> in = exits.stream().filter(r -> in(cut, name, r)).toList();
      List<TableRows> rest = exits.stream().filter(r -> !in(cut, name, r)).toList();
      List<TableRows> let = releases.stream().filter(r -> in(cut, name, r)).toList();
      if (!in.isEmpty() || !let.isEmpty()) {
        lines.add(line(name, in, rest, let));
      }
    }
    boolean nothing = lines.stream().allMatch(l -> l.cells().get(0).equals(UNKNOWN));
    return new Grid(
        cut.id(),
        cut.title(),
        "Exit attempts and releases short of center. Against the rest: points of a hundred, with a 95 % interval.",
        List.of(
            Head.words("Slice", "slice"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Carry over center", "way-out"),
            Head.number("Released short", "at-center"),
            Head.number("Icings", "icing"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Against the rest", "difference-of-shares"),
            Head.number("After a penalty", "after-a-penalty"),
            Head.number("Other face-offs", "defensive-zone-face-off"),
            Head.number("Releases short of center", "release"),
            Head.number("Iced", "icing"),
            Head.number("Share", "share")),
        nothing ? List.of() : lines,
        "Not in these sheets.");
  }

  private static boolean in(Cut cut, String name, TableRows r) {
    return cut.value().apply(r).orElse(UNKNOWN).equals(name);
  }

  private static Line line(
      String name, List<TableRows> in, List<TableRows> rest, List<TableRows> releases) {
    Count icings = Season.iced(in);
    Clustered byGame = Season.byGame(in, Season::iced);
    Count iced = Season.share(releases, Season::icing);
    return Line.of(
        name,
        String.valueOf(in.size()),
        String.valueOf(in.stream().filter(Slices::carriedOver).count()),
        String.valueOf(
            in.stream().filter(r -> Season.is(r, Columns.AT_CENTER, "released short")).count()),
        Cell.counts(icings),
        Cell.share(icings),
        Cell.interval(byGame),
        Cell.difference(new Difference(byGame, Season.byGame(rest, Season::iced))),
        Season.after(in, FaceOffAfter.PENALTY),
        Season.after(in, FaceOffAfter.OTHER),
        String.valueOf(releases.size()),
        Cell.counts(iced),
        Cell.share(iced));
  }

  private static boolean carriedOver(TableRows r) {
    return ShownWay.of(r.words(Columns.WAY_OUT), r.text(Columns.AT_CENTER))
        == ShownWay.CARRY_OVER_CENTER;
  }
}
