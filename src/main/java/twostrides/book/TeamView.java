package twostrides.book;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import twostrides.book.chart.BigNumbers;
import twostrides.book.chart.Dot;
import twostrides.book.chart.DotLines;
import twostrides.book.chart.HalfRink;
import twostrides.book.chart.Link;
import twostrides.book.chart.MarkKind;
import twostrides.book.chart.Picture;
import twostrides.book.chart.Reference;
import twostrides.book.chart.Span;
import twostrides.book.chart.Tone;
import twostrides.book.chart.Trend;
import twostrides.book.chart.WayStack;
import twostrides.exits.LetGo;
import twostrides.exits.Release;
import twostrides.findings.Grid;
import twostrides.findings.Habit;
import twostrides.findings.Kills;
import twostrides.findings.Line;
import twostrides.findings.MarkOutcome;
import twostrides.findings.NumberPage;
import twostrides.findings.Profile;
import twostrides.findings.SeasonReview;
import twostrides.findings.Shares;
import twostrides.findings.ShownWay;
import twostrides.findings.Value;
import twostrides.findings.WayCount;
import twostrides.game.NetEmpty;
import twostrides.game.Strength;
import twostrides.rink.Rink;
import twostrides.season.Assessed;
import twostrides.season.Rows;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Pictures of teams and players: the numbers to see first, habits, situations, maps. */
final class TeamView {

  private final SeasonReview review;
  private final Clustered iced;
  private final Clustered sentShort;
  private final Clustered withoutGoal;

  /** Counts all teams once, beside which each stands. */
  TeamView(SeasonReview review) {
    this.review = review;
    Rows all = review.season().exitRows();
    this.iced = all.byGame(Shares::iced);
    this.sentShort = all.byGame(Shares::releasedShort);
    this.withoutGoal = Kills.withoutGoal(review.season(), Optional.empty());
  }

  /** A team in three numbers, each beside all teams, for a page so far {@code up} in the book. */
  Picture numbers(String id, Optional<String> team, String up) {
    Rows own = Shares.team(review.season().exitRows(), team);
    String whose =
        team.isPresent() ? "The team" : review.teams().size() == 2 ? "Both teams" : "All teams";
    return new BigNumbers(
            whose + " in three numbers",
            List.of(
                number(
                    "iced, of the tries to get out",
                    own.byGame(Shares::iced),
                    iced,
                    new Span(0, 25),
                    team,
                    up + "icings.html"),
                number(
                    "sent before the red line, of pucks carried or passed out",
                    own.byGame(Shares::releasedShort),
                    sentShort,
                    new Span(0, 50),
                    team,
                    up + "icings.html"),
                number(
                    "kills without a goal against",
                    Kills.withoutGoal(review.season(), team),
                    withoutGoal,
                    new Span(0, 100),
                    team,
                    up + "kill.html")))
        .picture(id);
  }

  private static BigNumbers.Value number(
      String words, Clustered own, Clustered all, Span axis, Optional<String> team, String page) {
    double most = 100 * own.total().share().orElse(0);
    return BigNumbers.Value.share(
        words,
        own,
        most > axis.high() ? new Span(0, 100) : axis,
        allTeams(team, all),
        Link.to(page, words));
  }

  /** What a team's share is compared with, in percent; empty where the book is about all teams. */
  static Optional<Reference> allTeams(Optional<String> team, Clustered all) {
    return team.flatMap(t -> Reference.of("all teams", all.total()))
        .map(r -> new Reference(r.label(), 100 * r.value(), r.from()));
  }

  /** Attempts by way out and strength. */
  static Picture stack(String id, String title, Profile profile) {
    return new WayStack(
            title,
            Stream.of(ShownWay.values())
                .filter(w -> profile.counts().stream().anyMatch(c -> c.way() == w))
                .map(
                    w ->
                        new WayStack.Way(
                            w.label(),
                            Stream.of(Strength.values())
                                .map(s -> new WayStack.Part(s.label(), attempts(profile, w, s)))
                                .toList(),
                            Link.words(w.label())))
                .toList())
        .picture(id);
  }

  private static int attempts(Profile profile, ShownWay way, Strength strength) {
    return profile.counts().stream()
        .filter(c -> c.way() == way && c.strength() == strength)
        .mapToInt(WayCount::attempts)
        .sum();
  }

  /** Whether a player gets better: his habit over the season. */
  static Picture trend(String id, Habit habit, int games) {
    return new Trend(
            "Sent before the red line, of pucks carried or passed out",
            habit.stretches().stream()
                .map(
                    s ->
                        new Trend.Stretch(
                            s.label(), Dot.of(s.count(), Tone.TROUBLE), Link.words(s.label())))
                .toList(),
            trendWords(habit, games))
        .picture(id);
  }

  /** "No clear change in 12 games; about 40 more like these would tell." */
  static String trendWords(Habit habit, int games) {
    String in = " in " + Format.count(games, "game");
    return switch (habit.trend().direction()) {
      case RISING -> "More often" + in + ", beyond chance.";
      case FALLING -> "Less often" + in + ", beyond chance.";
      case FLAT_OR_UNCLEAR ->
          "No clear change"
              + in
              + (habit.trend().moreToTell(games).isPresent()
                  ? "; about "
                      + habit.trend().moreToTell(games).getAsInt()
                      + " more like these would tell."
                  : ".");
      case TOO_FEW -> "Too few to say whether it changes.";
    };
  }

  /** Where a player sent pucks before the red line, and what came of each. */
  static HalfRink map(List<Release> releases, Rink rink) {
    return map("Sent before the red line", releases, rink);
  }

  private static HalfRink map(String title, List<Release> releases, Rink rink) {
    return new HalfRink(
        title,
        rink,
        Format.count(releases.size(), "puck") + " sent before the red line.",
        List.of(),
        releases.stream()
            .map(
                r ->
                    new HalfRink.Mark(
                        r.at().where().place().orElseThrow(),
                        scored(r) ? MarkKind.SCORED : kind(MarkOutcome.of(r.outcome())),
                        Watch.at(
                            r.at().when(),
                            Show.clock(r.at().when())
                                + ": "
                                + Format.metresAndFeet(r.shortOfCenter())
                                + " before the red line, "
                                + (scored(r) ? "scored" : Show.outcome(r)))))
            .toList());
  }

  private static boolean scored(Release r) {
    return r.how().shot().equals(Optional.of(LetGo.Shot.SCORED));
  }

  /** Pucks sent before the red line while the opponent's net was empty. */
  static List<Release> atEmptyNet(SeasonReview review) {
    return review.season().releaseRecords().stream()
        .map(Assessed::release)
        .filter(r -> r.at().state().netEmpty().filter(NetEmpty::ofOpponent).isPresent())
        .toList();
  }

  /** Where they were sent from, and what came of each. */
  static Picture emptyNetMap(String id, List<Release> sent, Rink rink) {
    return map("Sent before the red line at an empty net, all teams", sent, rink).picture(id);
  }

  /**
   * How often each way brought a goal at an empty net.
   *
   * @param page its tables
   * @param window seconds in which a goal after center was gained counts
   */
  static Picture emptyNetGoals(String id, NumberPage page, double window) {
    return DotLines.of(
            "A goal at the empty net, all teams",
            List.of(
                goals("shot from before the red line", page.grid("teams")),
                goals("center gained, goal in " + Math.round(window) + " s", page.grid("gained"))),
            Optional.empty())
        .picture(id);
  }

  /** The line of all teams, or of the only one. */
  private static DotLines.Row goals(String label, Grid grid) {
    Count scored =
        grid.lines().stream()
            .skip(Math.max(0, grid.lines().size() - 1))
            .flatMap(l -> l.first(Value.Share.class).stream())
            .map(Value.Share::count)
            .findFirst()
            .orElse(new Count(0, 0));
    return new DotLines.Row(label, List.of(Dot.of(scored, Tone.PLAIN)), "", Link.words(label));
  }

  private static MarkKind kind(MarkOutcome outcome) {
    return switch (outcome) {
      case ICED -> MarkKind.ICED;
      case OTHER_RESTART -> MarkKind.OTHER_FACE_OFF;
      case OPPONENT_NEXT -> MarkKind.OPPONENT_NEXT;
      case OWN_NEXT -> MarkKind.OWN_NEXT;
      case STOPPED -> MarkKind.STOPPED;
    };
  }

  /** When and where it happens: every situation on one scale. */
  static Picture situations(String id, NumberPage page, Clustered all, Optional<String> team) {
    return new DotLines(
            "Iced, of the tries to get out",
            page.grids().stream()
                .filter(g -> !g.lines().isEmpty())
                .map(g -> new DotLines.Group(g.title(), rows(g, team)))
                .toList(),
            Reference.of("all tries", all.total()),
            List.of(),
            false)
        .picture(id);
  }

  /** Against whom the team is iced; each leads to the opponent's page. */
  static Picture opponents(String id, Grid grid, SeasonReview review) {
    return DotLines.of(
            "Iced, of our tries to get out, by opponent",
            grid.lines().stream()
                .map(
                    l ->
                        new DotLines.Row(
                            l.name(),
                            List.of(dot(l)),
                            "",
                            review
                                .team(l.name())
                                .map(t -> Link.to(Links.file(t), l.name()))
                                .orElse(Link.words(l.name()))))
                .toList(),
            Optional.empty())
        .picture(id);
  }

  private static List<DotLines.Row> rows(Grid grid, Optional<String> team) {
    return grid.lines().stream()
        .filter(l -> !l.sum())
        .map(l -> new DotLines.Row(l.name(), List.of(dot(l)), "", icings(grid, l, team)))
        .toList();
  }

  /** The icings of a situation in the list of face-offs, where the list can tell them apart. */
  private static Link icings(Grid grid, Line line, Optional<String> team) {
    if (line.name().equals("overtime")) {
      return Link.words(line.name());
    }
    String value =
        line.name().equals("not in the sheet")
            ? Links.NOT_KNOWN
            : line.name().replaceFirst("^period ", "");
    return Link.to(Links.restarts(team, grid.id(), value, "cause", Links.ICINGS), line.name());
  }

  private static Dot dot(Line line) {
    Clustered games =
        line.first(Value.IntervalOf.class)
            .map(Value.IntervalOf::games)
            .orElse(new Clustered(new Count(0, 0)));
    return Dot.of(games, Tone.PLAIN);
  }
}
