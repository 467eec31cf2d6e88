package twostrides.findings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import twostrides.exits.Exit;
import twostrides.exits.GameRecords;
import twostrides.game.Strength;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
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

  /** A way out at a strength. */
  private record Kind(ShownWay way, Strength strength) implements Comparable<Kind> {

    private static final Comparator<Kind> ORDER =
        Comparator.comparing(Kind::way).thenComparing(Kind::strength);

    @Override
    public int compareTo(Kind other) {
      return ORDER.compare(this, other);
    }
  }

  private final Rows exits;
  private final Map<Kind, AdjustedRates> rates = new TreeMap<>();
  private final Map<Kind, Count> everybody;
  private final Map<String, Map<Kind, Count>> ofTeams = new ConcurrentHashMap<>();
  private final Map<List<String>, Rows> players;
  private final Map<String, List<String>> gamesOfTeam = new TreeMap<>();

  /**
   * The numbers of a season's players.
   *
   * @param season the season
   */
  public PlayerNumbers(Season season) {
    exits = season.exitRows();
    everybody = counts(exits);
    players = exits.known(Columns.PLAYER).by(Columns.TEAM, Columns.PLAYER);
    for (GameRecords g : season.games()) {
      for (Exit e : g.exits()) {
        List<String> games = gamesOfTeam.computeIfAbsent(e.at().team(), t -> new ArrayList<>());
        if (!games.contains(g.game().id())) {
          games.add(g.game().id());
        }
      }
    }
    Map<Kind, List<Count>> byKind = new TreeMap<>();
    for (Rows own : players.values()) {
      counts(own).forEach((kind, c) -> byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(c));
    }
    byKind.forEach((kind, counts) -> rates.put(kind, AdjustedRates.of(counts)));
  }

  /** Icings by way out and strength, of those that occur. */
  private static Map<Kind, Count> counts(Rows exits) {
    Map<Kind, Count> counts = new TreeMap<>();
    for (ShownWay way : ShownWay.values()) {
      Rows ofWay = way.in(exits);
      for (Strength strength : Strength.values()) {
        Rows rows = ofWay.where(Columns.STRENGTH, strength.label());
        if (!rows.isEmpty()) {
          counts.put(new Kind(way, strength), Shares.iced(rows));
        }
      }
    }
    return counts;
  }

  /**
   * The grids of a player's page.
   *
   * @param team his team
   * @param player the player
   */
  public List<Grid> of(String team, String player) {
    return List.of(profile(team, rowsOf(team, player)), grid(habit(team, player)));
  }

  private Grid profile(String team, Rows own) {
    Map<Kind, Count> counts = counts(own);
    Map<Kind, Count> mates =
        ofTeams.computeIfAbsent(team, t -> counts(exits.where(Columns.TEAM, t)));
    Map<Kind, Verdict> verdicts = verdicts(counts);
    List<Line> lines = new ArrayList<>();
    counts.forEach(
        (kind, count) -> {
          Optional<AdjustedRate> rate = rates.get(kind).of(count);
          lines.add(
              Line.of(
                  kind.way().label() + ", " + kind.strength().label(),
                  new Value.Counts(count),
                  new Value.Share(count),
                  new Value.Adjusted(rate),
                  new Value.AdjustedInterval(rate),
                  new Value.ShareOfN(mates.get(kind)),
                  new Value.ShareOfN(everybody.get(kind)),
                  new Value.Against(verdicts.getOrDefault(kind, Verdict.TOO_FEW))));
        });
    return new Grid(
        "against",
        "Icings, against the team and everybody",
        "The adjusted rate leans on all players of these sheets with the same way out and"
            + " strength, the more the fewer attempts the player has. Against the others: whether"
            + " the player's share differs from everybody else's, all lines of this table allowed"
            + " for.",
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

  /** Whether a player's share differs from everybody else's. */
  public enum Verdict {
    MORE,
    LESS,
    NO_CLEAR_DIFFERENCE,
    TOO_FEW
  }

  private Map<Kind, Verdict> verdicts(Map<Kind, Count> counts) {
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
    Map<Kind, Verdict> verdicts = new TreeMap<>();
    told.forEach(
        (kind, difference) ->
            verdicts.put(
                kind,
                allowed.next() > CALLED
                    ? Verdict.NO_CLEAR_DIFFERENCE
                    : difference.value().orElseThrow() > 0 ? Verdict.MORE : Verdict.LESS));
    return verdicts;
  }

  /**
   * Releasing short of center, over the team's games in order.
   *
   * @param team his team
   * @param player the player
   */
  public Habit habit(String team, String player) {
    Map<List<String>, Rows> byGame = rowsOf(team, player).by(Columns.GAME);
    return Habit.of(
        gamesOfTeam.getOrDefault(team, List.of()).stream()
            .map(g -> Optional.ofNullable(byGame.get(List.of(g))))
            .map(rows -> rows.map(Shares::releasedShort).orElse(new Count(0, 0)))
            .toList());
  }

  Collection<Rows> exitsOfPlayers() {
    return players.values();
  }

  private Rows rowsOf(String team, String player) {
    return players.getOrDefault(List.of(team, player), exits.none());
  }

  private static Grid grid(Habit habit) {
    List<Line> lines = new ArrayList<>();
    habit.stretches().forEach(s -> lines.add(stretch(s.label(), s.count(), false)));
    lines.add(stretch("all games", habit.all(), true));
    Trend trend = habit.trend();
    return new Grid(
        "habit",
        "The habit over the season",
        "Of the pucks carried or passed out of the zone, how many were sent before the red line."
            + " Over the team's games in order the share is "
            + trend.direction().word()
            + (trend.p().isPresent()
                ? String.format(Locale.ROOT, " (p = %.3f)", trend.p().getAsDouble())
                : "")
            + ".",
        List.of(
            Head.words("Stretch", "stretch"),
            Head.number("Sent before the red line", "at-center"),
            Head.number("Share", "share"),
            Head.number("95 % interval", "interval")),
        lines,
        "No puck carried or passed out.");
  }

  private static Line stretch(String name, Count c, boolean sum) {
    return Line.of(name, sum, new Value.Counts(c), new Value.Share(c), Value.interval(c));
  }
}
