package twostrides.exits;

import java.util.List;
import tech.tablesaw.api.Table;
import twostrides.game.Game;
import twostrides.game.TaggedGame;

/**
 * The whole way from games to tables: moves, attempts, exits, releases, restarts, players. Each
 * stage takes tables and gives a table.
 */
public final class Pipeline {
  private Pipeline() {}

  /**
   * Runs every stage.
   *
   * @param games games of play sheets, in the order in which tables list them
   * @param tagged games of tag sheets
   * @param settings what the run chose
   */
  public static ExitTables run(List<Game> games, List<TaggedGame> tagged, Settings settings) {
    ManpowerStage.Read manpower = ManpowerStage.run(games, settings);
    Play play = new Play(MovesStage.run(games, manpower::at), games, settings);
    Table attempts = AttemptsStage.run(play);
    Table exits = ExitsStage.run(attempts, play);
    Table releases = ReleasesStage.run(attempts, play);
    Table restarts = RestartsStage.run(attempts, releases, play);
    Table rulings = RulingsStage.run(releases, play);
    TagsStage.Tables tags = TagsStage.run(tagged, settings.book());
    exits.append(tags.exits());
    releases.append(tags.releases());
    restarts.append(tags.restarts());
    return new ExitTables(
        exits,
        releases,
        restarts,
        rulings,
        manpower.disagreements(),
        manpower.compared(),
        PlayersStage.run(exits));
  }
}
