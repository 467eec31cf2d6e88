package twostrides.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DoubleColumn;
import twostrides.exits.Kill;
import twostrides.game.Strength;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.AdjustedRate;
import twostrides.stats.AdjustedRates;
import twostrides.stats.CensoredTime;
import twostrides.stats.Count;
import twostrides.stats.KaplanMeier;

/**
 * The penalty-kill page: was the zone cleared, what did that buy, what followed when it was not,
 * who did it, and which releases the exemption did not cover.
 */
final class PenaltyKill {

  /** A release this soon after the penalty counts as just after it, seconds. Assumed. */
  static final double JUST_AFTER = 10;

  private static final String NONE = "No exit attempt while shorthanded in these sheets.";

  private final Season season;
  private final Optional<String> team;
  private final NumberSettings settings;
  private final Rows attempts;

  PenaltyKill(Season season, Optional<String> team, NumberSettings settings) {
    this.season = season;
    this.team = team;
    this.settings = settings;
    this.attempts = Shares.shorthanded(season.exitRows());
  }

  NumberPage page() {
    return new NumberPage(
        "kill.html",
        "Penalty kill",
        "Exit attempts while shorthanded: cleared or failed clears, what a clear buys, and what"
            + " followed.",
        List.of(
            "Cleared: the puck left the zone. Time bought: seconds of play until the opponent had it"
                + " under control in the zone again; a stop cuts it short, so medians come from a"
                + " survival curve, never from what happened to finish."),
        List.of(teams(), ways(), players(), units(), after(), exemption(), kills()));
  }

  private Rows shown() {
    return Shares.team(attempts, team);
  }

  private String whose() {
    return team.orElse("all teams");
  }

  /** Time bought by the clears among some attempts. */
  static KaplanMeier timeBought(Rows exits) {
    Rows known = Shares.out(exits).known(Columns.SECONDS_UNTIL_REENTRY);
    DoubleColumn seconds = (DoubleColumn) known.column(Columns.SECONDS_UNTIL_REENTRY);
    BooleanColumn cut = (BooleanColumn) known.column(Columns.RELIEF_CUT_SHORT);
    return KaplanMeier.of(
        IntStream.range(0, known.n())
            .mapToObj(i -> new CensoredTime(seconds.getDouble(i), !cut.get(i)))
            .toList());
  }

  private Grid teams() {
    Rows kills = new Rows(season.kills());
    List<Line> lines = new ArrayList<>();
    Map<List<String>, Rows> byTeam = attempts.by(Columns.TEAM);
    byTeam.forEach(
        (t, rows) ->
            lines.add(teamLine(t.get(0), rows, kills.where(Columns.TEAM, t.get(0)), false)));
    if (byTeam.size() > 1) {
      lines.add(teamLine("all teams", attempts, kills, true));
    }
    return new Grid(
        "teams",
        "Teams",
        "Kills and goals against come from play sheets; the tries to get it out from all sheets."
            + " Time bought a kill: all seconds that clears bought, cut short or not, over the kills.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Kills", "kill"),
            Head.number("Seconds", "kill"),
            Head.number("Goals against in the kills", "kill"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Cleared", "cleared"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Time bought, median (95 %)", "time-bought"),
            Head.number("Time bought a kill", "time-bought-a-kill"),
            Head.number("Failed clears", "failed-clear"),
            Head.number(
                "Attempts against, " + settings.shortWindow() + " after a failed clear",
                "failed-clear"),
            Head.number(
                "Goals, " + settings.shortWindow() + " after a failed clear", "failed-clear")),
        lines,
        NONE);
  }

  private Line teamLine(String name, Rows rows, Rows kills, boolean sum) {
    Count cleared = Shares.cleared(rows);
    Rows kept = Shares.keptIn(rows);
    return Line.of(
        name,
        sum,
        new Value.Whole(kills.n()),
        new Value.Decimal(total(kills, Columns.SECONDS), 0, ""),
        against(kills, Columns.GOALS_AGAINST),
        new Value.Whole(rows.n()),
        new Value.Counts(cleared),
        new Value.Share(cleared),
        new Value.IntervalOf(rows.byGame(Shares::cleared)),
        new Value.Median(timeBought(rows)),
        new Value.Mean(total(kills, Columns.RELIEF_TOTAL_S).orElse(0), kills.n(), 1, " s"),
        new Value.Whole(kept.n()),
        against(kept, season.columns().attempts()),
        against(kept, season.columns().goals()));
  }

  private static OptionalDouble total(Rows kills, String column) {
    return kills.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(((DoubleColumn) kills.column(column)).sum());
  }

  private static Value against(Rows rows, String column) {
    Rows known = rows.known(column);
    return known.isEmpty() ? new Value.Empty() : new Value.SumIn(known.sum(column), known.n());
  }

  private Grid ways() {
    List<Line> lines = new ArrayList<>();
    for (ShownWay way : ShownWay.values()) {
      Rows rows = way.in(shown());
      if (!rows.isEmpty()) {
        Count iced = Shares.iced(rows);
        lines.add(
            Line.of(
                way.label(),
                new Value.Whole(rows.n()),
                new Value.Counts(iced),
                new Value.Share(iced),
                new Value.IntervalOf(rows.byGame(Shares::iced)),
                new Value.Whole(Shares.after(rows, FaceOffAfter.PENALTY).n()),
                new Value.Whole(Shares.after(rows, FaceOffAfter.OTHER).n()),
                new Value.Median(timeBought(rows)),
                against(rows, season.columns().attempts()),
                against(rows, season.columns().goals())));
      }
    }
    return new Grid(
        "ways",
        "Ways out while shorthanded, " + whose(),
        "Attempts and goals against within "
            + settings.shortWindow()
            + " of the release, or of the face-off where a defensive-zone face-off followed.",
        List.of(
            Head.words("Way out", "way-out"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Icings", "icing"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("After a penalty", "after-a-penalty"),
            Head.number("Other face-offs", "defensive-zone-face-off"),
            Head.number("Time bought, median (95 %)", "time-bought"),
            Head.number("Attempts against", "attempts-against"),
            Head.number("Goals against", "goals-against")),
        lines,
        NONE);
  }

  /** Groups with the most rows first, then by their words. */
  private static List<Map.Entry<List<String>, Rows>> mostFirst(Map<List<String>, Rows> groups) {
    return groups.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> -e.getValue().n()))
        .toList();
  }

  private Grid players() {
    Map<List<String>, Rows> every = attempts.known(Columns.PLAYER).by(Columns.TEAM, Columns.PLAYER);
    AdjustedRates rates = AdjustedRates.of(every.values().stream().map(Shares::cleared).toList());
    List<Line> lines = new ArrayList<>();
    for (Map.Entry<List<String>, Rows> e : mostFirst(every)) {
      if (team.isPresent() && !team.get().equals(e.getKey().get(0))) {
        continue;
      }
      Count cleared = Shares.cleared(e.getValue());
      Optional<AdjustedRate> rate = rates.of(cleared);
      lines.add(
          Line.of(
              e.getKey().get(1),
              new Value.Words(e.getKey().get(0)),
              new Value.Counts(cleared),
              new Value.Share(cleared),
              Value.interval(cleared),
              new Value.Adjusted(rate),
              new Value.AdjustedInterval(rate),
              new Value.Median(timeBought(e.getValue())),
              new Value.Counts(Shares.iced(e.getValue()))));
    }
    return new Grid(
        "players",
        "Players while shorthanded, " + whose(),
        "Who took it out, or lost it inside. The adjusted rate leans on all players of these"
            + " sheets, the more the fewer attempts the player has.",
        List.of(
            Head.words("Player", "player"),
            Head.words("Team", "team"),
            Head.number("Cleared", "cleared"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Adjusted rate", "adjusted-rate"),
            Head.number("95 % interval", "adjusted-rate"),
            Head.number("Time bought, median (95 %)", "time-bought"),
            Head.number("Icings", "icing")),
        lines,
        "No player is named for an attempt while shorthanded.");
  }

  private Grid units() {
    List<Line> lines = new ArrayList<>();
    for (Map.Entry<List<String>, Rows> e :
        mostFirst(shown().known(Columns.ON_ICE).by(Columns.TEAM, Columns.ON_ICE))) {
      Count cleared = Shares.cleared(e.getValue());
      lines.add(
          Line.of(
              e.getKey().get(1),
              new Value.Words(e.getKey().get(0)),
              new Value.Counts(cleared),
              new Value.Share(cleared),
              Value.interval(cleared),
              new Value.Median(timeBought(e.getValue())),
              against(e.getValue(), season.columns().attempts()),
              against(e.getValue(), season.columns().goals())));
    }
    return new Grid(
        "units",
        "Units while shorthanded, " + whose(),
        "Skaters who were on the ice together at the release, where the sheet lists them.",
        List.of(
            Head.words("Unit", "unit"),
            Head.words("Team", "team"),
            Head.number("Cleared", "cleared"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Time bought, median (95 %)", "time-bought"),
            Head.number("Attempts against", "attempts-against"),
            Head.number("Goals against", "goals-against")),
        lines,
        "These sheets do not list who is on the ice (column on_ice).");
  }

  /** Releases just after a penalty: the exemption no longer held. */
  static Rows justAfter(Rows releases) {
    Rows full = releases.without(Columns.STRENGTH, Strength.SHORTHANDED.label());
    DoubleColumn since = (DoubleColumn) full.column(Columns.SINCE_SHORTHANDED_S);
    return full.where(since.isLessThanOrEqualTo(JUST_AFTER));
  }

  private Grid after() {
    List<Line> lines = new ArrayList<>();
    justAfter(season.releaseRows())
        .by(Columns.TEAM)
        .forEach(
            (t, rows) -> {
              Count iced = Shares.icedReleases(rows);
              lines.add(
                  Line.of(
                      t.get(0),
                      new Value.Whole(rows.n()),
                      new Value.Counts(iced),
                      new Value.Share(iced),
                      new Value.IntervalOf(rows.byGame(Shares::icedReleases))));
            });
    return new Grid(
        "after",
        "Let go after the penalty was over",
        "Pucks sent before the red line within "
            + Math.round(JUST_AFTER)
            + " s (assumed) of the last row that shows the team shorthanded: the exemption no"
            + " longer held.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Releases", "release"),
            Head.number("Iced", "icing"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval")),
        lines,
        "No puck sent before the red line just after a penalty.");
  }

  private Grid exemption() {
    List<Line> lines = new ArrayList<>();
    Shares.shorthanded(season.releaseRows())
        .by(Columns.TEAM)
        .forEach(
            (t, rows) ->
                lines.add(
                    Line.of(
                        t.get(0),
                        new Value.Whole(rows.n()),
                        new Value.Whole(rows.where(Columns.RULING, "no icing").n()),
                        new Value.Whole(rows.where(Columns.RULING, "icing").n()),
                        new Value.Whole(rows.where(Columns.RULING, "waved off").n()),
                        new Value.Whole(rows.where(Columns.RULING, "not yet decided").n()),
                        new Value.Whole(rows.iced().n()))));
    return new Grid(
        "exemption",
        "Shorthanded clears that could still be icing",
        "Pucks sent before the red line while shorthanded, by what the rulebook of this run says of"
            + " them, and how many the sheets take for icing.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Releases", "release"),
            Head.number("No icing", "ruling"),
            Head.number("Icing", "ruling"),
            Head.number("Waved off", "ruling"),
            Head.number("Open", "ruling"),
            Head.number("Iced in the sheets", "icing")),
        lines,
        "No puck sent before the red line while shorthanded.");
  }

  private static OptionalDouble whole(OptionalInt n) {
    return n.isPresent() ? OptionalDouble.of(n.getAsInt()) : OptionalDouble.empty();
  }

  private Grid kills() {
    List<Line> lines = new ArrayList<>();
    for (Kill k : season.killRecords()) {
      if (team.isEmpty() || team.get().equals(k.team())) {
        int kept = k.keptIn();
        lines.add(
            Line.of(
                k.from().game().id(),
                new Value.Words(k.team()),
                new Value.Began(k.from().period(), k.from().elapsed()),
                new Value.Decimal(OptionalDouble.of(k.seconds()), 0, ""),
                new Value.Whole(k.exits().size()),
                new Value.Whole(k.exits().size() - kept),
                new Value.Whole(kept),
                new Value.Decimal(k.timeBought(), 0, " s"),
                new Value.Decimal(whole(k.attemptsAgainst()), 0, ""),
                new Value.Whole(k.goalsAgainst())));
      }
    }
    return new Grid(
        "kills",
        "Every kill, " + whose(),
        lines.size()
            + " stretches in which the team was shorthanded, from the first row that shows it to"
            + " the first that does not.",
        List.of(
            Head.words("Game", "game"),
            Head.words("Team", "team"),
            Head.words("Began", "kill"),
            Head.number("Seconds", "kill"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Cleared", "cleared"),
            Head.number("Failed clears", "failed-clear"),
            Head.number("Time bought", "time-bought-a-kill"),
            Head.number("Attempts against", "attempts-against"),
            Head.number("Goals against", "goals-against")),
        lines,
        "No penalty kill in these play sheets.");
  }
}
