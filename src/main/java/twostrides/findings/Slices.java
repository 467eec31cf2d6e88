package twostrides.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import twostrides.exits.AtCenter;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** When and where it happens: exit attempts and releases by one circumstance after the other. */
final class Slices {

  private static final String UNKNOWN = "not in the sheet";

  private final Season season;
  private final Optional<String> team;

  Slices(Season season, Optional<String> team) {
    this.season = season;
    this.team = team;
  }

  /** A circumstance: its name, the word of each row, and the words in the order to show. */
  private record Cut(
      String id, String title, Function<Rows, StringColumn> word, List<String> order) {}

  private static final List<Cut> CUTS =
      List.of(
          new Cut(
              "strength",
              "Strength",
              t -> t.words(Columns.STRENGTH),
              List.of("even", "shorthanded", "power play", "unknown")),
          new Cut("score", "Score", Score::words, Score.WORDS),
          new Cut("period", "Period", Slices::period, List.of()),
          new Cut(
              "pressure",
              "Pressure at the release",
              t -> t.words(Columns.PRESSURE),
              List.of("none", "light", "heavy")),
          new Cut(
              "side",
              "Side of the rink, facing the attack",
              t -> t.words(Columns.SIDE),
              List.of("left", "middle", "right")),
          new Cut("venue", "Venue", t -> t.words(Columns.VENUE), List.of("home", "away")),
          new Cut("opponent", "Opponent", t -> t.words(Columns.OPPONENT), List.of()));

  private static StringColumn period(Rows t) {
    IntColumn period = (IntColumn) t.column(Columns.PERIOD);
    return StringColumn.create(
        "period",
        IntStream.range(0, t.n())
            .map(period::getInt)
            .mapToObj(p -> p > 3 ? "overtime" : "period " + p));
  }

  NumberPage page() {
    return new NumberPage(
        "slices.html",
        "Situations",
        "When and where it happens, " + team.orElse("all teams") + ".",
        List.of(
            "Many situations are looked at here, so one in twenty differs from the rest by chance"
                + " alone. One that stands out is a question for the video, not an answer. Rows"
                + " whose sheet does not say stand under \"not in the sheet\"."),
        CUTS.stream().map(this::grid).toList());
  }

  private Grid grid(Cut cut) {
    Rows exits = Shares.team(season.exitRows(), team);
    Rows releases = Shares.team(season.releaseRows(), team);
    StringColumn word = cut.word().apply(exits);
    StringColumn wordOfRelease = cut.word().apply(releases);
    List<String> names = new ArrayList<>(cut.order());
    new TreeSet<>(word.where(word.isNotMissing()).asList())
        .stream().filter(w -> !names.contains(w)).forEach(names::add);
    List<Line> lines = new ArrayList<>();
    for (String name : names) {
      add(
          lines,
          name,
          exits.where(word.isEqualTo(name)),
          exits.where(word.isNotEqualTo(name)),
          releases.where(wordOfRelease.isEqualTo(name)));
    }
    add(
        lines,
        UNKNOWN,
        exits.where(word.isMissing()),
        exits.where(word.isNotMissing()),
        releases.where(wordOfRelease.isMissing()));
    boolean nothing = lines.stream().allMatch(l -> l.name().equals(UNKNOWN));
    return new Grid(
        cut.id(),
        cut.title(),
        "Exit attempts and pucks sent before the red line. Against the rest: points of a hundred, with a"
            + " 95 % interval.",
        List.of(
            Head.words("Situation", "situation"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Carry over center", "way-out"),
            Head.number("Sent before the red line", "at-center"),
            Head.number("Icings", "icing"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Against the rest", "difference-of-shares"),
            Head.number("After a penalty", "after-a-penalty"),
            Head.number("Other face-offs", "defensive-zone-face-off"),
            Head.number("Pucks sent before the red line", "release"),
            Head.number("Iced", "icing"),
            Head.number("Share", "share")),
        nothing ? List.of() : lines,
        "Not in these sheets.");
  }

  private static void add(List<Line> lines, String name, Rows in, Rows rest, Rows releases) {
    if (in.isEmpty() && releases.isEmpty()) {
      return;
    }
    Count icings = Shares.iced(in);
    Clustered byGame = in.byGame(Shares::iced);
    Count iced = Shares.icedReleases(releases);
    lines.add(
        Line.of(
            name,
            new Value.Whole(in.n()),
            new Value.Whole(ShownWay.CARRY_OVER_CENTER.in(in).n()),
            new Value.Whole(in.where(Columns.AT_CENTER, AtCenter.RELEASED_SHORT.label()).n()),
            new Value.Counts(icings),
            new Value.Share(icings),
            new Value.IntervalOf(byGame),
            new Value.DifferenceOf(byGame, rest.byGame(Shares::iced)),
            new Value.Whole(Shares.after(in, FaceOffAfter.PENALTY).n()),
            new Value.Whole(Shares.after(in, FaceOffAfter.OTHER).n()),
            new Value.Whole(releases.n()),
            new Value.Counts(iced),
            new Value.Share(iced)));
  }
}
