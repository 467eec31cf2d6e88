package twostrides.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.exits.AtCenter;
import twostrides.exits.Columns;
import twostrides.review.TableRows;
import twostrides.stats.Count;

/**
 * The empty-net page: what came of pucks sent at the opponent's empty net from behind center, and
 * of gaining center first. A shot from behind center that misses is icing; one after gaining center
 * is not.
 */
final class EmptyNet {

  private final Season season;
  private final Optional<String> team;
  private final NumberSettings settings;

  EmptyNet(Season season, Optional<String> team, NumberSettings settings) {
    this.season = season;
    this.team = team;
    this.settings = settings;
  }

  NumberPage page() {
    return new NumberPage(
        "empty-net.html",
        "Opponent's net empty",
        "Shoot from behind center, or gain it first: what came of each while the opponent's goalkeeper was off the ice.",
        List.of(
            "A shot counts as one where the sheet writes it so; other pucks sent on count beside it. Whose net was empty is as the sheet says at the release."),
        List.of(
            sent("teams", "Let go from behind center", false),
            first(),
            sent("players", "Who let it go", true)));
  }

  private List<TableRows> releases() {
    return season.releases.stream().filter(Season::atEmptyNet).toList();
  }

  private Grid sent(String id, String title, boolean players) {
    List<Line> lines = new ArrayList<>();
    Map<String, List<TableRows>> groups =
        Season.by(
            releases().stream()
                .filter(r -> !players || r.text(Columns.PLAYER).isPresent())
                .filter(r -> !players || Season.team(team).test(r))
                .toList(),
            r -> r.words(Columns.TEAM) + (players ? "\n" + r.words(Columns.PLAYER) : ""));
    groups.forEach((k, rows) -> lines.add(line(rows, players)));
    if (!players && groups.size() > 1) {
      lines.add(new Line(line("all teams", releases()).cells(), true));
    }
    return new Grid(
        id,
        title,
        "Releases short of center while the opponent's net was empty.",
        List.of(
            Head.words(players ? "Player, team" : "Team", players ? "player" : "team"),
            Head.number("Shots", "empty-net-shot"),
            Head.number("Scored", "empty-net-shot"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Shots iced", "icing"),
            Head.number("Others let go", "release"),
            Head.number("Iced", "icing"),
            Head.number("All iced", "share")),
        lines,
        "No release short of center at an empty net.");
  }

  private static Line line(List<TableRows> rows, boolean players) {
    TableRows any = rows.get(0);
    return line(
        players
            ? any.words(Columns.PLAYER) + ", " + any.words(Columns.TEAM)
            : any.words(Columns.TEAM),
        rows);
  }

  private static Line line(String name, List<TableRows> rows) {
    List<TableRows> shots = rows.stream().filter(r -> r.flag(Columns.SHOT).orElse(false)).toList();
    List<TableRows> others =
        rows.stream().filter(r -> !r.flag(Columns.SHOT).orElse(false)).toList();
    Count scored = Season.share(shots, r -> r.flag(Columns.SCORED).orElse(false));
    return Line.of(
        name,
        String.valueOf(shots.size()),
        Cell.counts(scored),
        Cell.share(scored),
        Cell.interval(scored),
        Cell.counts(Season.share(shots, Season::icing)),
        String.valueOf(others.size()),
        Cell.counts(Season.share(others, Season::icing)),
        Cell.share(Season.share(rows, Season::icing)));
  }

  private Grid first() {
    List<TableRows> gained =
        season.exits.stream()
            .filter(Season::atEmptyNet)
            .filter(r -> Season.is(r, Columns.AT_CENTER, AtCenter.GAINED.label()))
            .toList();
    List<Line> lines = new ArrayList<>();
    Map<String, List<TableRows>> teams = Season.by(gained, r -> r.words(Columns.TEAM));
    teams.forEach((t, rows) -> lines.add(gained(t, rows, false)));
    if (teams.size() > 1) {
      lines.add(gained("all teams", gained, true));
    }
    return new Grid(
        "gained",
        "Gained center first",
        "Exits that gained center while the opponent's net was empty; goals within "
            + settings.shortWindow()
            + " of the exit.",
        List.of(
            Head.words("Team", "team"),
            Head.number("Exits", "exit-attempt"),
            Head.number("Goal followed", "goals-for"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval"),
            Head.number("Icings", "icing")),
        lines,
        "No exit that gained center at an empty net.");
  }

  private static Line gained(String name, List<TableRows> rows, boolean sum) {
    List<TableRows> known =
        rows.stream().filter(r -> r.count(Columns.GOALS_FOR_20S).isPresent()).toList();
    Count scored = Season.share(known, r -> r.count(Columns.GOALS_FOR_20S).orElseThrow() > 0);
    return new Line(
        List.of(
            name,
            String.valueOf(rows.size()),
            Cell.counts(scored),
            Cell.share(scored),
            Cell.interval(scored),
            Cell.counts(Season.iced(rows))),
        sum);
  }
}
