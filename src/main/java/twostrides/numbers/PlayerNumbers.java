package twostrides.numbers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import twostrides.exits.AtCenter;
import twostrides.exits.Columns;
import twostrides.review.Habit;
import twostrides.review.ShownStrength;
import twostrides.review.ShownWay;
import twostrides.review.TableRows;
import twostrides.stats.AdjustedRate;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Count;
import twostrides.stats.Difference;
import twostrides.stats.Holm;
import twostrides.stats.Trend;

/**
 * Every player against the team and the group: icing shares by way out and strength, adjusted by
 * everybody's; and whether the habit of releasing short of center changes over the season.
 */
public final class PlayerNumbers {

  /** At most this chance, all lines of a page allowed for, is called a difference. */
  private static final double CALLED = 0.05;

  private record Kind(ShownWay way, ShownStrength strength) implements Comparable<Kind> {
    @Override
    public int compareTo(Kind other) {
      int c = way.compareTo(other.way);
      return c != 0 ? c : strength.compareTo(other.strength);
    }
  }

  /** A player of a team. */
  private record Who(String team, String player) {}

  private final Map<Kind, AdjustedRates> rates = new TreeMap<>();
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
            rates.put(
                kind, AdjustedRates.of(players.values().stream().map(Season::iced).toList())));
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
    Map<Kind, String> verdicts = verdicts(counts);
    List<Line> lines = new ArrayList<>();
    counts.forEach(
        (kind, count) -> {
          Count mates = teams.get(team).get(kind);
          Count all = everybody.get(kind);
          Optional<AdjustedRate> rate = rates.get(kind).of(count);
          lines.add(
              Line.of(
                  kind.way().label() + ", " + kind.strength().label(),
                  Cell.counts(count),
                  Cell.share(count),
                  Cell.adjusted(rate),
                  Cell.adjustedInterval(rate),
                  Cell.share(mates) + ", n " + mates.trials(),
                  Cell.share(all) + ", n " + all.trials(),
                  verdicts.getOrDefault(kind, Cell.FEW)));
        });
    return new Grid(
        "against",
        "Icings, against the team and everybody",
        "The adjusted rate leans on all players of these sheets with the same way out and strength, the more the fewer attempts the player has. Against the others: whether the player's share differs from everybody else's, all lines of this table allowed for.",
        List.of(
            Head.words("Way out, strength", "way-out"),
            Head.number("Icings", "icing"),
            Head.number("Share", "share"),
            Head.number("Adjusted rate", "adjusted-rate"),
            Head.number("95 % interval", "adjusted-rate"),
            Head.number("Team", "share"),
            Head.number("Everybody", "share"),
            Head.words("Against the others", "against-the-others")),
        lines,
        "No exit attempt of this player in these sheets.");
  }

  /** Of the lines that have ten cases or more on both sides. */
  private Map<Kind, String> verdicts(Map<Kind, Count> counts) {
    Map<Kind, Difference> told = new TreeMap<>();
    counts.forEach(
        (kind, own) -> {
          Count others = everybody.get(kind).minus(own);
          if (!own.tooFew() && !others.tooFew()) {
            told.put(kind, new Difference(own, others));
          }
        });
    Iterator<Double> allowed =
        Holm.allowing(told.values().stream().map(Difference::chance).toList()).iterator();
    Map<Kind, String> words = new TreeMap<>();
    told.forEach(
        (kind, difference) ->
            words.put(
                kind,
                allowed.next() > CALLED
                    ? "no clear difference"
                    : difference.value().orElseThrow() > 0 ? "more often" : "less often"));
    return words;
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
