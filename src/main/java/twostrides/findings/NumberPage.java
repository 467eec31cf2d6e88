package twostrides.findings;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import twostrides.season.Season;

/**
 * A page of grids.
 *
 * @param file its file in the book's folder
 * @param title its heading
 * @param lead one sentence under the heading
 * @param notes paragraphs before the grids: what is counted and where it can mislead
 * @param grids its tables
 */
public record NumberPage(
    String file, String title, String lead, List<String> notes, List<Grid> grids) {

  /** Copies the lists. */
  public NumberPage {
    notes = List.copyOf(notes);
    grids = List.copyOf(grids);
  }

  /**
   * The pages of a season, in the order in which the book lists them, each worked out when it is
   * asked for. Each knows the season alone, so each may be worked out on a thread of its own.
   *
   * @param season the season
   * @param team the team the book is about; empty for all teams
   * @param settings what the run chose
   */
  public static List<Supplier<NumberPage>> all(
      Season season, Optional<String> team, NumberSettings settings) {
    return List.of(
        () -> new RestartCosts(season, team, settings).page(),
        () -> new PenaltyKill(season, team, settings).page(),
        () -> new EmptyNet(season, team, settings).page(),
        () -> new Slices(season, team).page());
  }

  /**
   * One of its tables.
   *
   * @param id the table's id
   */
  public Grid grid(String id) {
    return grids.stream().filter(g -> g.id().equals(id)).findFirst().orElseThrow();
  }
}
