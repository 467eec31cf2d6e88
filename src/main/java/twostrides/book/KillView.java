package twostrides.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.book.chart.BigNumbers;
import twostrides.book.chart.Dot;
import twostrides.book.chart.DotLines;
import twostrides.book.chart.KillMark;
import twostrides.book.chart.KillStrips;
import twostrides.book.chart.Link;
import twostrides.book.chart.Picture;
import twostrides.book.chart.Reference;
import twostrides.book.chart.Span;
import twostrides.book.chart.Tone;
import twostrides.exits.Exit;
import twostrides.exits.Kill;
import twostrides.exits.Release;
import twostrides.exits.WayOut;
import twostrides.exits.When;
import twostrides.findings.Kills;
import twostrides.findings.Names;
import twostrides.season.Season;
import twostrides.stats.CensoredTime;
import twostrides.stats.Count;
import twostrides.stats.KaplanMeier;

/** The pictures of the penalty kill. */
public final class KillView {

  private static final Span PERCENT = new Span(0, 100);

  private final Kills own;
  private final Kills all;
  private final Optional<String> team;
  private final IdentityHashMap<Exit, Release> releases = new IdentityHashMap<>();

  /**
   * Looks at a season.
   *
   * @param season the season
   * @param team the team the book is about; empty for all teams
   */
  KillView(Season season, Optional<String> team) {
    this.team = team;
    this.own = Kills.of(season, team);
    this.all = Kills.of(season, Optional.empty());
    season
        .releaseRecords()
        .forEach(a -> a.release().exit().ifPresent(e -> releases.put(e, a.release())));
  }

  /** Kills without a goal against, tries that got out, time bought. */
  Picture numbers(String id) {
    return new BigNumbers(
            "The kill in three numbers",
            List.of(
                BigNumbers.Value.share(
                    "kills without a goal against",
                    own.withoutGoal(),
                    PERCENT,
                    TeamView.allTeams(team, all.withoutGoal()),
                    Link.to("#kill-strips", "kills without a goal against")),
                BigNumbers.Value.share(
                    "tries to clear that got out",
                    own.cleared(),
                    PERCENT,
                    TeamView.allTeams(team, all.cleared()),
                    Link.to("#tries", "tries to clear that got out")),
                bought()))
        .picture(id);
  }

  private BigNumbers.Value bought() {
    KaplanMeier curve = own.timeBought();
    boolean few = curve.waits() < Count.FEWEST_TO_SAY;
    KaplanMeier.Median m = curve.median();
    OptionalDouble everybody = all.timeBought().median().seconds();
    Optional<Span> interval =
        few || m.low().isEmpty() || m.high().isEmpty()
            ? Optional.empty()
            : Optional.of(new Span(m.low().getAsDouble(), m.high().getAsDouble()));
    return new BigNumbers.Value(
        "time bought by a clear, median of " + Format.count(curve.waits(), "clear"),
        "s",
        m.seconds().orElse(Double.NaN),
        interval,
        new Span(0, 60),
        team.isEmpty() || everybody.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new Reference(
                    "all teams",
                    everybody.getAsDouble(),
                    Format.count(all.timeBought().waits(), "clear"))),
        Link.to("#tries", "time bought by a clear"));
  }

  /** Every kill as a strip, by game. */
  Picture strips(String id) {
    Map<String, List<Kill>> byGame = new LinkedHashMap<>();
    for (Kill k : own.kills()) {
      String game = k.team() + "\n" + k.from().game().id();
      byGame.computeIfAbsent(game, g -> new ArrayList<>()).add(k);
    }
    return new KillStrips(
            "Every kill",
            byGame.values().stream()
                .map(
                    kills ->
                        new KillStrips.Game(
                            heading(kills.get(0)), kills.stream().map(this::strip).toList()))
                .toList())
        .picture(id);
  }

  private String heading(Kill k) {
    String day = k.from().game().date().map(d -> d.toString().substring(5) + " ").orElse("");
    return day
        + (team.isPresent()
            ? Names.shown(k.opponent())
            : Names.shown(k.team()) + " against " + Names.shown(k.opponent()));
  }

  private KillStrips.Kill strip(Kill k) {
    List<KillStrips.Event> events = new ArrayList<>();
    for (Exit e : k.exits()) {
      event(k, e).forEach(events::add);
    }
    for (Kill.Event e : k.events()) {
      KillMark mark =
          switch (e.what()) {
            case ATTEMPT_AGAINST -> KillMark.ATTEMPT;
            case GOAL_AGAINST -> KillMark.GOAL;
            case FACE_OFF -> KillMark.FACE_OFF;
          };
      String words =
          switch (e.what()) {
            case ATTEMPT_AGAINST -> "shot attempt";
            case GOAL_AGAINST -> "goal against";
            case FACE_OFF -> "face-off";
          };
      events.add(
          KillStrips.Event.at(
              mark, Math.min(e.secondsIn(), k.seconds()), Watch.at(k.from(), e.video(), words)));
    }
    String clock = Format.clock(k.from().period(), k.from().clockLeft());
    return new KillStrips.Kill(
        clock,
        Math.max(k.seconds(), 1),
        events,
        Watch.at(
            k.from(),
            clock
                + ": "
                + Format.count((int) Math.round(k.seconds()), "second")
                + ", "
                + Format.count(k.exits().size() - k.keptIn(), "clear")
                + ", "
                + Format.count(k.keptIn(), "failed clear")
                + ", "
                + Format.count(k.goalsAgainst(), "goal")
                + " against"));
  }

  private List<KillStrips.Event> event(Kill k, Exit e) {
    When when = e.at().when();
    double from = Math.min(k.secondsIn(when), k.seconds());
    String who = Show.clock(when) + e.player().map(p -> ", " + Names.player(p)).orElse("");
    if (e.way() == WayOut.KEPT_IN) {
      return List.of(
          KillStrips.Event.at(KillMark.FAILED_CLEAR, from, Watch.at(when, who + ": failed clear")));
    }
    double bought = e.outcome().reentry().map(CensoredTime::seconds).orElse(0.0);
    String words = who + ": " + Show.way(e) + ", " + Math.round(bought) + " s bought";
    List<KillStrips.Event> events = new ArrayList<>();
    events.add(
        KillStrips.Event.clear(from, Math.min(from + bought, k.seconds()), Watch.at(when, words)));
    if (exempted(e)) {
      events.add(
          KillStrips.Event.at(
              KillMark.ICING_EXEMPTION, from, Watch.at(when, words + ", no icing: shorthanded")));
    }
    return events;
  }

  /** Sent the length from before the red line, and no icing only because the team was short. */
  private boolean exempted(Exit e) {
    Release r = releases.get(e);
    return e.way() == WayOut.LONG_CLEARANCE && r != null && !r.rulings().mayBeIcing();
  }

  /** Who gets it out: players with ten tries or more, by share. */
  Picture who(String id) {
    List<Kills.Player> enough =
        own.players().stream()
            .filter(p -> !p.cleared().tooFew())
            .sorted(Comparator.comparingDouble(p -> -p.cleared().share().orElseThrow()))
            .toList();
    List<DotLines.Row> rows =
        enough.stream()
            .map(
                p ->
                    new DotLines.Row(
                        p.name() + (team.isPresent() ? "" : ", " + p.team()),
                        List.of(Dot.of(p.cleared(), Tone.PLAIN)),
                        "",
                        Link.to(
                            "#f0-player=" + Links.encoded(p.name()),
                            p.name() + ": his clears and failed clears")))
            .toList();
    Count mean = own.cleared().total();
    return DotLines.of("Who gets it out when shorthanded", rows, Reference.of("team", mean))
        .picture(id);
  }

  /** "8 players with under ten tries are left out: too few to say." */
  public String fewWords() {
    long few = own.players().stream().filter(p -> p.cleared().tooFew()).count();
    return few == 0
        ? ""
        : Format.count((int) few, "player")
            + " with under ten tries "
            + (few == 1 ? "is" : "are")
            + " left out: too few to say.";
  }

  /** The sentence above the pictures. */
  public String sentence() {
    return Format.count(own.kills().size(), "kill")
        + ", "
        + Format.count(own.kills().stream().mapToInt(Kill::goalsAgainst).sum(), "goal")
        + " against. Killed without a goal: "
        + Format.withInterval(own.withoutGoal())
        + ". Tries to clear that got out: "
        + Format.withInterval(own.cleared())
        + ".";
  }

  /** Every try while shorthanded, in the order of play. */
  public List<Exit> tries() {
    return own.tries();
  }
}
