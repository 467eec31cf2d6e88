package twostrides.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tech.tablesaw.api.IntColumn;
import twostrides.exits.AtCenter;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.Count;

/** What came of pucks let go, and of center gained, while the opponent's net was empty. */
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
        "Shoot from behind center, or gain it first: what came of each while the opponent's"
            + " goalkeeper was off the ice.",
        List.of(
            "A shot counts as one where the sheet writes it so; other pucks sent on count beside"
                + " it. Whose net was empty is as the sheet says at the release."),
        List.of(
            sent("teams", "Let go from behind center", false),
            first(),
            sent("players", "Who let it go", true)));
  }

  private Grid sent(String id, String title, boolean players) {
    Rows all = Shares.atEmptyNet(season.releaseRows());
    Rows shown = players ? Shares.team(all.known(Columns.PLAYER), team) : all;
    Map<List<String>, Rows> groups =
        players ? shown.by(Columns.TEAM, Columns.PLAYER) : shown.by(Columns.TEAM);
    List<Line> lines = new ArrayList<>();
    groups.forEach(
        (key, rows) ->
            lines.add(line(players ? key.get(1) + ", " + key.get(0) : key.get(0), rows, false)));
    if (!players && groups.size() > 1) {
      lines.add(line("all teams", all, true));
    }
    return new Grid(
        id,
        title,
        "Pucks sent before the red line while the opponent's net was empty.",
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
        "No puck sent before the red line at an empty net.");
  }

  private static Line line(String name, Rows rows, boolean sum) {
    Rows shots = rows.isTrue(Columns.SHOT);
    Count others = new Count(rows.iced().n() - shots.iced().n(), rows.n() - shots.n());
    Count scored = shots.share(shots.isTrue(Columns.SCORED));
    return Line.of(
        name,
        sum,
        new Value.Whole(shots.n()),
        new Value.Counts(scored),
        new Value.Share(scored),
        Value.interval(scored),
        new Value.Counts(Shares.icedReleases(shots)),
        new Value.Whole(others.trials()),
        new Value.Counts(others),
        new Value.Share(Shares.icedReleases(rows)));
  }

  private Grid first() {
    Rows gained =
        Shares.atEmptyNet(season.exitRows()).where(Columns.AT_CENTER, AtCenter.GAINED.label());
    List<Line> lines = new ArrayList<>();
    Map<List<String>, Rows> teams = gained.by(Columns.TEAM);
    teams.forEach((t, rows) -> lines.add(gained(t.get(0), rows, false)));
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

  private Line gained(String name, Rows rows, boolean sum) {
    Rows known = rows.known(season.columns().goalsFor());
    IntColumn goals = (IntColumn) known.column(season.columns().goalsFor());
    Count scored = known.share(known.where(goals.isGreaterThan(0)));
    return Line.of(
        name,
        sum,
        new Value.Whole(rows.n()),
        new Value.Counts(scored),
        new Value.Share(scored),
        Value.interval(scored),
        new Value.Counts(Shares.iced(rows)));
  }
}
