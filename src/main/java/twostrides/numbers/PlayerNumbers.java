package twostrides.numbers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import twostrides.exits.AtCenter;
import twostrides.exits.Columns;
import twostrides.rates.BetaBinomial;
import twostrides.rates.Count;
import twostrides.rates.HowManyMore;
import twostrides.rates.Trend;
import twostrides.review.Habit;
import twostrides.review.ShownStrength;
import twostrides.review.ShownWay;
import twostrides.review.TableRows;

/**
 * Every player against the team and the group: icing shares by way out and strength, drawn toward
 * the group; and whether the habit of releasing short of center changes over the season.
 */
public final class PlayerNumbers {

  /** More games than this are not counted out. Assumed: no season is longer. */
  private static final int MOST_GAMES = 200;

  private record Kind(ShownWay way, ShownStrength strength) implements Comparable<Kind> {
    @Override
    public int compareTo(Kind other) {
      int c = way.compareTo(other.way);
      return c != 0 ? c : strength.compareTo(other.strength);
    }
  }

  /** A player of a team. */
  private record Who(String team, String player) {}

  private final Map<Kind, BetaBinomial> groups = new TreeMap<>();
  private final Map<Kind, Count> everybody = new TreeMap<>();
  private final Map<String, Map<Kind, Count>> teams = new TreeMap<>();
  private final Map<Who, List<TableRows>> rows = new LinkedHashMap<>();
  private final Map<String, List<String>> gamesOfTeam = new TreeMap<>();

  PlayerNumbers(Season season) {
    Map<Kind, Map<Who, List<TableRows>>> byKind = new TreeMap<>();
    for (TableRows r : season.exits) {
      String team = r.words(Columns.TEAM);
      Kind kind = kind(r);
      Count one = Season.iced(List.of(r));
      everybody.merge(kind, one, Count::plus);
      teams.computeIfAbsent(team, t -> new TreeMap<>()).merge(kind, one, Count::plus);
      List<String> games = gamesOfTeam.computeIfAbsent(team, t -> new ArrayList<>());
      if (!games.contains(r.words(Columns.GAME))) {
        games.add(r.words(Columns.GAME));
      }
      r.text(Columns.PLAYER)
          .ifPresent(
              p -> {
                Who who = new Who(team, p);
                rows.computeIfAbsent(who, w -> new ArrayList<>()).add(r);
                byKind
                    .computeIfAbsent(kind, k -> new LinkedHashMap<>())
                    .computeIfAbsent(who, w -> new ArrayList<>())
                    .add(r);
              });
    }
    byKind.forEach(
        (kind, players) ->
            groups.put(
                kind, BetaBinomial.fit(players.values().stream().map(Season::iced).toList())));
  }

  private static Kind kind(TableRows r) {
    return new Kind(
        ShownWay.of(r.words(Columns.WAY_OUT), r.text(Columns.AT_CENTER)),
        r.text(Columns.STRENGTH).map(ShownStrength::of).orElse(ShownStrength.UNKNOWN));
  }

  /**
   * The grids of a player's page.
   *
   * @param team the player's team
   * @param player name as in the tables
   */
  public List<Grid> of(String team, String player) {
    List<TableRows> own = rowsOf(new Who(team, player));
    return List.of(profile(team, own), grid(habit(team, own)));
  }

  private Grid profile(String team, List<TableRows> own) {
    Map<Kind, Count> counts = new TreeMap<>();
    own.forEach(r -> counts.merge(kind(r), Season.iced(List.of(r)), Count::plus));
    int games = (int) own.stream().map(r -> r.words(Columns.GAME)).distinct().count();
    List<Line> lines = new ArrayList<>();
    counts.forEach(
        (kind, count) -> {
          Count mates = teams.get(team).get(kind);
          Count all = everybody.get(kind);
          List<String> drawn = Cell.drawn(groups.get(kind).shrink(count));
          lines.add(
              Line.of(
                  kind.way().label() + ", " + kind.strength().label(),
                  Cell.counts(count),
                  Cell.share(count),
                  drawn.get(0),
                  drawn.get(1),
                  drawn.get(2),
                  Cell.share(mates) + ", n " + mates.trials(),
                  Cell.share(all) + ", n " + all.trials(),
                  more(count, all, games)));
        });
    return new Grid(
        "against",
        "Icings, against the team and everybody",
        "The drawn share leans on all players of these sheets with the same way out and strength, the more the fewer attempts the player has. Games more: until the player's own interval would leave out everybody's share, if things stay as they are.",
        List.of(
            Head.words("Way out, strength", "way-out"),
            Head.number("Icings", "icing"),
            Head.number("Share", "share"),
            Head.number("Drawn share", "drawn-share"),
            Head.number("95 % interval", "drawn-share"),
            Head.number("from the group", "prior-share"),
            Head.number("Team", "share"),
            Head.number("Everybody", "share"),
            Head.number("Games more", "games-more")),
        lines,
        "No exit attempt of this player in these sheets.");
  }

  /** Games until the own interval leaves out everybody's share, at the player's pace. */
  private static String more(Count count, Count all, int games) {
    if (count.trials() == 0 || all.share().isEmpty()) {
      return Cell.NONE;
    }
    HowManyMore more = HowManyMore.untilItExcludes(count, all.share().getAsDouble());
    if (more instanceof HowManyMore.Trials t) {
      if (t.trials() == 0) {
        return "none: it differs";
      }
      double needed = Math.ceil((double) t.trials() * games / count.trials());
      return needed > MOST_GAMES ? "over " + MOST_GAMES : String.valueOf(Math.round(needed));
    }
    return "over " + MOST_GAMES;
  }

  /**
   * The habit over the season.
   *
   * @param team the player's team
   * @param player name as in the tables
   */
  public Habit habit(String team, String player) {
    return habit(team, rowsOf(new Who(team, player)));
  }

  /** The exits of each player, players in the order in which they come. */
  Collection<List<TableRows>> exitsOfPlayers() {
    return rows.values();
  }

  private List<TableRows> rowsOf(Who who) {
    return rows.getOrDefault(who, List.of());
  }

  private Habit habit(String team, List<TableRows> own) {
    Map<String, List<TableRows>> byGame = Season.by(own, r -> r.words(Columns.GAME));
    return Habit.of(
        gamesOfTeam.getOrDefault(team, List.of()).stream()
            .map(g -> releasedShort(byGame.getOrDefault(g, List.of())))
            .toList());
  }

  private static Grid grid(Habit habit) {
    List<Line> lines = new ArrayList<>();
    habit.stretches().forEach(s -> lines.add(stretch(s.label(), s.count(), false)));
    lines.add(stretch("all games", habit.all(), true));
    Trend trend = habit.trend();
    return new Grid(
        "habit",
        "The habit over the season",
        "Of the pucks carried or passed out of the zone, how many were released short of center. Over the team's games in order the share is "
            + trend.direction().word()
            + (trend.p().isPresent()
                ? " (p = " + Cell.decimals(trend.p().getAsDouble(), 3) + ")"
                : "")
            + ".",
        List.of(
            Head.words("Stretch", "stretch"),
            Head.number("Released short", "at-center"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval")),
        lines,
        "No puck carried or passed out.");
  }

  /** Carries and passes out that were released short of center. */
  static Count releasedShort(List<TableRows> rows) {
    List<TableRows> marked =
        rows.stream().filter(r -> r.text(Columns.AT_CENTER).isPresent()).toList();
    return Season.share(
        marked, r -> Season.is(r, Columns.AT_CENTER, AtCenter.RELEASED_SHORT.label()));
  }

  private static Line stretch(String name, Count c, boolean sum) {
    return new Line(List.of(name, Cell.counts(c), Cell.share(c), Cell.interval(c)), sum);
  }
}
