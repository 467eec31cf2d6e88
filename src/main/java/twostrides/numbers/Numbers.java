package twostrides.numbers;

import java.util.List;
import java.util.Optional;
import twostrides.exits.ExitTables;

/**
 * The pages of numbers of a season.
 *
 * @param pages pages of grids, in the order in which the book lists them
 * @param players grids of players' pages
 * @param sheets numbers of players' sheets
 */
public record Numbers(List<NumberPage> pages, PlayerNumbers players, PlayerSheets sheets) {

  /** Copies the pages. */
  public Numbers {
    pages = List.copyOf(pages);
  }

  /**
   * Works the pages out.
   *
   * @param tables what the pipeline made of the season
   * @param team the team the book is about; empty for all teams
   * @param settings what the run chose
   */
  public static Numbers of(ExitTables tables, Optional<String> team, NumberSettings settings) {
    Season season = new Season(tables);
    PlayerNumbers players = new PlayerNumbers(season);
    return new Numbers(
        List.of(
            new RestartCosts(season, team, tables.costs(), settings).page(),
            new PenaltyKill(season, team, settings).page(),
            new EmptyNet(season, team, settings).page(),
            new Slices(season, team).page()),
        players,
        new PlayerSheets(season, players));
  }
}
