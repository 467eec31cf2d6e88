package twostrides.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import twostrides.exits.Exit;
import twostrides.exits.Kill;
import twostrides.game.Strength;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.KaplanMeier;

/**
 * A team's penalty kills, and its tries to clear while shorthanded.
 *
 * @param kills the kills, of play sheets
 * @param tries exit attempts while shorthanded, of all sheets
 * @param cleared how many of them got out, game by game
 * @param timeBought seconds bought by those
 * @param players how many tries of each named player got out
 */
public record Kills(
    List<Kill> kills,
    List<Exit> tries,
    Clustered cleared,
    KaplanMeier timeBought,
    List<Player> players) {

  /**
   * A player's tries.
   *
   * @param team his team
   * @param name the player
   * @param cleared how many of them got out
   */
  public record Player(String team, String name, Count cleared) {}

  /**
   * The kills of a season.
   *
   * @param season the season
   * @param team whose; empty for all teams
   */
  public static Kills of(Season season, Optional<String> team) {
    Rows tries = Shares.team(Shares.shorthanded(season.exitRows()), team);
    return new Kills(
        kills(season, team),
        season.games().stream()
            .flatMap(g -> g.exits().stream())
            .filter(e -> e.at().state().strength() == Strength.SHORTHANDED)
            .filter(e -> team.isEmpty() || team.get().equals(e.at().team()))
            .toList(),
        tries.byGame(Shares::cleared),
        PenaltyKill.timeBought(tries),
        tries.known(Columns.PLAYER).by(Columns.TEAM, Columns.PLAYER).entrySet().stream()
            .map(
                e -> new Player(e.getKey().get(0), e.getKey().get(1), Shares.cleared(e.getValue())))
            .toList());
  }

  private static List<Kill> kills(Season season, Optional<String> team) {
    return season.killRecords().stream()
        .filter(k -> team.isEmpty() || team.get().equals(k.team()))
        .toList();
  }

  /** Kills without a goal against, game by game. */
  public Clustered withoutGoal() {
    return withoutGoal(kills);
  }

  /**
   * The same of a season.
   *
   * @param season the season
   * @param team whose; empty for all teams
   */
  public static Clustered withoutGoal(Season season, Optional<String> team) {
    return withoutGoal(kills(season, team));
  }

  private static Clustered withoutGoal(List<Kill> kills) {
    Map<String, List<Kill>> byGame =
        kills.stream()
            .collect(
                Collectors.groupingBy(
                    k -> k.team() + "\n" + k.from().game().id(),
                    java.util.TreeMap::new,
                    Collectors.toList()));
    Function<List<Kill>, Count> count =
        some ->
            new Count((int) some.stream().filter(k -> k.goalsAgainst() == 0).count(), some.size());
    return new Clustered(byGame.values().stream().map(count).toList());
  }
}
