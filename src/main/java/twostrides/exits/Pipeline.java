package twostrides.exits;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tech.tablesaw.api.Table;
import twostrides.game.Game;
import twostrides.game.Season;
import twostrides.game.TaggedGame;
import twostrides.rink.Rink;

/**
 * The whole way from games to tables: moves, attempts, exits, releases, restarts, players. Each
 * stage takes tables and gives a table.
 */
public final class Pipeline {
  private Pipeline() {}

  /**
   * Runs every stage on what was read; who was where is known where the play sheets write it down.
   *
   * @param season games of play sheets and of tag sheets
   * @param settings what the run chose
   */
  public static ExitTables run(Season season, Settings settings) {
    return run(season.games(), season.tagged(), settings);
  }

  /**
   * Runs every stage; who was where is known where the play sheets write it down.
   *
   * @param games games of play sheets, in the order in which tables list them
   * @param tagged games of tag sheets
   * @param settings what the run chose
   */
  public static ExitTables run(List<Game> games, List<TaggedGame> tagged, Settings settings) {
    return run(games, tagged, settings, SkatersAtRelease.NONE);
  }

  /**
   * Runs every stage.
   *
   * @param games games of play sheets, in the order in which tables list them
   * @param tagged games of tag sheets
   * @param settings what the run chose
   * @param tracked who was where at a release, besides what the play sheets write down
   */
  public static ExitTables run(
      List<Game> games, List<TaggedGame> tagged, Settings settings, SkatersAtRelease tracked) {
    ManpowerStage.Read manpower = ManpowerStage.run(games, settings);
    Play play = play(games, settings, manpower);
    Table attempts = AttemptsStage.run(play);
    Standing standing = new Standing(play);
    Circumstances circumstances = new Circumstances(play, standing);
    Table exits = ExitsStage.run(attempts, play, circumstances);
    Table releases = ReleasesStage.run(attempts, play, circumstances);
    Table restarts = RestartsStage.run(attempts, releases, play, circumstances);
    Table kills = KillsStage.run(exits, play, standing);
    Table rulings = RulingsStage.run(releases, play);
    Costs costs = Costs.of(exits, restarts);
    TagsStage.Tables tags = TagsStage.run(tagged, settings.book());
    exits.append(tags.exits());
    releases.append(tags.releases());
    restarts.append(tags.restarts());
    Table flags =
        ChancesStage.run(
            releases,
            rinks(games, tagged),
            new CarryRates(play),
            costs,
            settings.race(),
            new SheetSkaters(games).and(tracked));
    return new ExitTables(
        exits,
        releases,
        restarts,
        rulings,
        flags,
        manpower.disagreements(),
        manpower.compared(),
        kills,
        costs,
        PlayersStage.run(exits));
  }

  /**
   * How carriers fare in their own half, as {@link Columns#P_GAIN_CENTER} takes it.
   *
   * @param season games of play sheets count; tag sheets have no carries
   * @param settings what the run chose
   */
  public static CarryRates carrying(Season season, Settings settings) {
    List<Game> games = season.games();
    return new CarryRates(play(games, settings, ManpowerStage.run(games, settings)));
  }

  private static Map<String, Rink> rinks(List<Game> games, List<TaggedGame> tagged) {
    Map<String, Rink> rinks = new HashMap<>();
    tagged.forEach(g -> rinks.put(g.id(), g.rink()));
    games.forEach(g -> rinks.put(g.id(), g.rink()));
    return rinks;
  }

  private static Play play(List<Game> games, Settings settings, ManpowerStage.Read manpower) {
    return new Play(MovesStage.run(games, manpower::at), games, settings);
  }
}
