package twostrides.numbers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import twostrides.exits.Columns;
import twostrides.review.FaceOffAfter;
import twostrides.review.Say;
import twostrides.review.ShownWay;
import twostrides.review.TableRows;
import twostrides.stats.AdjustedRate;
import twostrides.stats.AdjustedRates;
import twostrides.stats.CensoredTime;
import twostrides.stats.Count;
import twostrides.stats.KaplanMeier;

/**
 * The penalty-kill page: was the zone cleared, what did that burn, what followed when it was not,
 * who did it, and which releases the exemption did not cover.
 */
final class PenaltyKill {

  /** A release this soon after the penalty counts as just after it, seconds. Assumed. */
  static final double JUST_AFTER = 10;

  private final Season season;
  private final Optional<String> team;
  private final NumberSettings settings;
  private final List<TableRows> attempts;

  PenaltyKill(Season season, Optional<String> team, NumberSettings settings) {
    this.season = season;
    this.team = team;
    this.settings = settings;
    this.attempts = season.exits.stream().filter(Season::shorthanded).toList();
  }

  NumberPage page() {
    List<Grid> grids = new ArrayList<>();
    grids.add(teams());
    grids.add(ways());
    grids.add(players());
    grids.add(units());
    grids.add(after());
    grids.add(exemption());
    grids.add(kills());
    return new NumberPage(
        "kill.html",
        "Penalty kill",
        "Exit attempts while shorthanded: cleared or kept in, what a clear burns, and what followed.",
        List.of(
            "Cleared: the puck left the zone. Relief: seconds of play until the opponent had it under control in the zone again; a stop cuts it short, so medians come from a survival curve, never from what happened to finish."),
        grids);
  }

  private List<TableRows> shown() {
    return attempts.stream().filter(Season.team(team)).toList();
  }

  private String whose() {
    return team.orElse("all teams");
  }

  private static Count cleared(List<TableRows> rows) {
    return Season.share(rows, r -> !Season.keptIn(r));
  }

  /** Relief after each clear whose sheet tells it. */
  static KaplanMeier relief(List<TableRows> rows) {
    List<CensoredTime> waits = new ArrayList<>();
    for (TableRows r : rows) {
      OptionalDouble s = r.number(Columns.RELIEF_S);
      Optional<Boolean> cut = r.flag(Columns.RELIEF_CUT_SHORT);
      if (!Season.keptIn(r) && s.isPresent() && cut.isPresent()) {
        waits.add(new CensoredTime(s.getAsDouble(), !cut.get()));
      }
    }
    return KaplanMeier.of(waits);
  }

  private Grid teams() {
    List<Line> lines = new ArrayList<>();
    Map<String, List<TableRows>> byTeam = Season.by(attempts, r -> r.words(Columns.TEAM));
    byTeam.forEach((t, rows) -> lines.add(teamLine(t, rows, kills(Optional.of(t)), false)));
    if (byTeam.size() > 1) {
      lines.add(teamLine("all teams", attempts, season.kills, true));
    }
    return new Grid(
        "teams",
        "Teams",
        "Kills and goals against come from play sheets; the tries to get it out from all sheets. Seconds burned a kill: relief after clears, cut short or not, over the kills.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Kills", "kill"),
            Head.number("Seconds", "kill"),
            Head.number("Goals against in the kills", "kill"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Cleared", "cleared"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Relief, median (95 %)", "relief"),
            Head.number("Burned a kill", "burned-a-kill"),
            Head.number("Kept in", "kept-in"),
            Head.number(
                "Attempts against, " + settings.shortWindow() + " after kept in", "kept-in"),
            Head.number("Goals, " + settings.shortWindow() + " after kept in", "kept-in")),
        lines,
        "No exit attempt while shorthanded in these sheets.");
  }

  private List<TableRows> kills(Optional<String> whose) {
    return season.kills.stream().filter(Season.team(whose)).toList();
  }

  private static double sum(List<TableRows> rows, String column) {
    return rows.stream().mapToDouble(r -> r.number(column).orElse(0)).sum();
  }

  private Line teamLine(String name, List<TableRows> rows, List<TableRows> kills, boolean last) {
    Count cleared = cleared(rows);
    List<TableRows> kept = rows.stream().filter(Season::keptIn).toList();
    return new Line(
        List.of(
            name,
            String.valueOf(kills.size()),
            kills.isEmpty() ? Cell.NONE : Cell.decimals(sum(kills, Columns.SECONDS), 0),
            against(kills, Columns.GOALS_AGAINST),
            String.valueOf(rows.size()),
            Cell.counts(cleared),
            Cell.share(cleared),
            Cell.interval(Season.byGame(rows, PenaltyKill::cleared)),
            Cell.median(relief(rows)),
            kills.isEmpty()
                ? Cell.NONE
                : kills.size() < Count.FEWEST_TO_SAY
                    ? Cell.FEW
                    : Cell.decimals(sum(kills, Columns.RELIEF_TOTAL_S) / kills.size(), 1) + " s",
            String.valueOf(kept.size()),
            against(kept, Columns.ATTEMPTS_AGAINST_20S),
            against(kept, Columns.GOALS_AGAINST_20S)),
        last);
  }

  /** A total over the rows that have it; a dash where none has. */
  private static String against(List<TableRows> rows, String column) {
    List<TableRows> known = rows.stream().filter(r -> r.count(column).isPresent()).toList();
    return known.isEmpty() ? Cell.NONE : RestartCosts.total(known, column) + " in " + known.size();
  }

  private Grid ways() {
    List<Line> lines = new ArrayList<>();
    Map<ShownWay, List<TableRows>> byWay =
        shown().stream()
            .collect(
                Collectors.groupingBy(
                    r -> ShownWay.of(r.words(Columns.WAY_OUT), r.text(Columns.AT_CENTER)),
                    TreeMap::new,
                    Collectors.toList()));
    byWay.forEach(
        (way, rows) -> {
          Count iced = Season.iced(rows);
          lines.add(
              Line.of(
                  way.label(),
                  String.valueOf(rows.size()),
                  Cell.counts(iced),
                  Cell.share(iced),
                  Cell.interval(Season.byGame(rows, Season::iced)),
                  Season.after(rows, FaceOffAfter.PENALTY),
                  Season.after(rows, FaceOffAfter.OTHER),
                  Cell.median(relief(rows)),
                  against(rows, Columns.ATTEMPTS_AGAINST_20S),
                  against(rows, Columns.GOALS_AGAINST_20S)));
        });
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
            Head.number("Relief, median (95 %)", "relief"),
            Head.number("Attempts against", "attempts-against"),
            Head.number("Goals against", "goals-against")),
        lines,
        "No exit attempt while shorthanded in these sheets.");
  }

  private Grid players() {
    Map<String, List<TableRows>> every =
        Season.by(
            attempts.stream().filter(r -> r.text(Columns.PLAYER).isPresent()).toList(),
            r -> r.words(Columns.TEAM) + "\n" + r.words(Columns.PLAYER));
    AdjustedRates rates =
        AdjustedRates.of(every.values().stream().map(PenaltyKill::cleared).toList());
    List<Line> lines = new ArrayList<>();
    every.values().stream()
        .filter(rows -> Season.team(team).test(rows.get(0)))
        .sorted(MOST_FIRST)
        .forEach(
            rows -> {
              Count cleared = cleared(rows);
              Optional<AdjustedRate> rate = rates.of(cleared);
              lines.add(
                  Line.of(
                      rows.get(0).words(Columns.PLAYER),
                      rows.get(0).words(Columns.TEAM),
                      Cell.counts(cleared),
                      Cell.share(cleared),
                      Cell.interval(cleared),
                      Cell.adjusted(rate),
                      Cell.adjustedInterval(rate),
                      Cell.median(relief(rows)),
                      Cell.counts(Season.iced(rows))));
            });
    return new Grid(
        "players",
        "Players while shorthanded, " + whose(),
        "Who took it out, or lost it inside. The adjusted rate leans on all players of these sheets, the more the fewer attempts the player has.",
        List.of(
            Head.words("Player", "player"),
            Head.words("Team", "team"),
            Head.number("Cleared", "cleared"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Adjusted rate", "adjusted-rate"),
            Head.number("95 % interval", "adjusted-rate"),
            Head.number("Relief, median (95 %)", "relief"),
            Head.number("Icings", "icing")),
        lines,
        "No player is named for an attempt while shorthanded.");
  }

  private static final Comparator<List<TableRows>> MOST_FIRST =
      Comparator.comparingInt((List<TableRows> rows) -> -rows.size())
          .thenComparing(rows -> rows.get(0).words(Columns.TEAM))
          .thenComparing(rows -> rows.get(0).words(Columns.PLAYER))
          .thenComparing(rows -> rows.get(0).words(Columns.ON_ICE));

  private Grid units() {
    Map<String, List<TableRows>> every =
        Season.by(
            shown().stream().filter(r -> r.text(Columns.ON_ICE).isPresent()).toList(),
            r -> r.words(Columns.TEAM) + "\n" + r.words(Columns.ON_ICE));
    List<Line> lines = new ArrayList<>();
    every.values().stream()
        .sorted(MOST_FIRST)
        .forEach(
            rows -> {
              Count cleared = cleared(rows);
              lines.add(
                  Line.of(
                      rows.get(0).words(Columns.ON_ICE),
                      rows.get(0).words(Columns.TEAM),
                      Cell.counts(cleared),
                      Cell.share(cleared),
                      Cell.interval(cleared),
                      Cell.median(relief(rows)),
                      against(rows, Columns.ATTEMPTS_AGAINST_20S),
                      against(rows, Columns.GOALS_AGAINST_20S)));
            });
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
            Head.number("Relief, median (95 %)", "relief"),
            Head.number("Attempts against", "attempts-against"),
            Head.number("Goals against", "goals-against")),
        lines,
        "These sheets do not list who is on the ice (column on_ice).");
  }

  private Grid after() {
    List<Line> lines = new ArrayList<>();
    List<TableRows> late = season.releases.stream().filter(PenaltyKill::justAfter).toList();
    Season.by(late, r -> r.words(Columns.TEAM)).forEach((t, rows) -> lines.add(icedLine(t, rows)));
    return new Grid(
        "after",
        "Let go after the penalty was over",
        "Releases short of center within "
            + Math.round(JUST_AFTER)
            + " s (assumed) of the last row that shows the team shorthanded: the exemption no longer held.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Releases", "release"),
            Head.number("Iced", "icing"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval")),
        lines,
        "No release short of center just after a penalty.");
  }

  /** Whether a row is just after a penalty: the exemption no longer holds. */
  static boolean justAfter(TableRows r) {
    OptionalDouble since = r.number(Columns.SINCE_SHORTHANDED_S);
    return !Season.shorthanded(r) && since.isPresent() && since.getAsDouble() <= JUST_AFTER;
  }

  private static Count iced(List<TableRows> rows) {
    return Season.share(rows, Season::icing);
  }

  private static Line icedLine(String name, List<TableRows> rows) {
    Count iced = iced(rows);
    return Line.of(
        name,
        String.valueOf(rows.size()),
        Cell.counts(iced),
        Cell.share(iced),
        Cell.interval(Season.byGame(rows, PenaltyKill::iced)));
  }

  private Grid exemption() {
    List<Line> lines = new ArrayList<>();
    Season.by(
            season.releases.stream().filter(Season::shorthanded).toList(),
            r -> r.words(Columns.TEAM))
        .forEach(
            (t, rows) ->
                lines.add(
                    Line.of(
                        t,
                        String.valueOf(rows.size()),
                        Season.many(rows, Columns.RULING, "no icing"),
                        Season.many(rows, Columns.RULING, "icing"),
                        Season.many(rows, Columns.RULING, "waved off"),
                        Season.many(rows, Columns.RULING, "not yet decided"),
                        String.valueOf(rows.stream().filter(Season::icing).count()))));
    return new Grid(
        "exemption",
        "Where the exemption does not hold",
        "Releases short of center while shorthanded, by what the rulebook of this run says of them, and how many the sheets take for icing.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Releases", "release"),
            Head.number("No icing", "ruling"),
            Head.number("Icing", "ruling"),
            Head.number("Waved off", "ruling"),
            Head.number("Open", "ruling"),
            Head.number("Iced in the sheets", "icing")),
        lines,
        "No release short of center while shorthanded.");
  }

  private Grid kills() {
    List<Line> lines = new ArrayList<>();
    for (TableRows k : kills(team)) {
      lines.add(
          Line.of(
              k.words(Columns.GAME),
              k.words(Columns.TEAM),
              "P"
                  + k.count(Columns.PERIOD).orElseThrow()
                  + ", "
                  + Say.clock(k.number(Columns.ELAPSED_S).orElseThrow())
                  + " played",
              Cell.decimals(k.number(Columns.SECONDS).orElseThrow(), 0),
              String.valueOf(k.count(Columns.ATTEMPTS).orElseThrow()),
              String.valueOf(k.count(Columns.CLEARED).orElseThrow()),
              String.valueOf(k.count(Columns.KEPT_IN).orElseThrow()),
              Cell.decimals(k.number(Columns.RELIEF_TOTAL_S).orElseThrow(), 0) + " s",
              String.valueOf(k.count(Columns.ATTEMPTS_AGAINST).orElseThrow()),
              String.valueOf(k.count(Columns.GOALS_AGAINST).orElseThrow())));
    }
    return new Grid(
        "kills",
        "Every kill, " + whose(),
        lines.size()
            + " stretches in which the team was shorthanded, from the first row that shows it to the first that does not.",
        List.of(
            Head.words("Game", "game"),
            Head.words("Team", "team"),
            Head.words("Began", "kill"),
            Head.number("Seconds", "kill"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Cleared", "cleared"),
            Head.number("Kept in", "kept-in"),
            Head.number("Burned", "burned-a-kill"),
            Head.number("Attempts against", "attempts-against"),
            Head.number("Goals against", "goals-against")),
        lines,
        "No penalty kill in these play sheets.");
  }
}
