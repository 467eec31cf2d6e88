package twostrides.findings;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import twostrides.season.Season;

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
   * @param season the season
   * @param team the team the book is about; empty for all teams
   * @param settings what the run chose
   */
  public static Numbers of(Season season, Optional<String> team, NumberSettings settings) {
    PlayerNumbers players = new PlayerNumbers(season);
    // Each knows the season alone, so each may be worked out on a thread of its own.
    Stream<Supplier<NumberPage>> pages =
        Stream.of(
            () -> new RestartCosts(season, team, settings).page(),
            () -> new PenaltyKill(season, team, settings).page(),
            () -> new EmptyNet(season, team, settings).page(),
            () -> new Slices(season, team).page());
    return new Numbers(
        pages.parallel().map(Supplier::get).toList(), players, new PlayerSheets(season, players));
  }
}
