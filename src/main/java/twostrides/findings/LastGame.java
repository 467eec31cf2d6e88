package twostrides.findings;

import java.util.List;
import java.util.Optional;
import twostrides.exits.GameRecords;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.Count;

/**
 * A team's last game beside its games before.
 *
 * @param game the last game's id
 * @param day its date, ISO 8601, where the sheet has it
 * @param opponent against whom
 * @param icings exit attempts that were iced
 * @param sentShort pucks carried or passed out that were sent before the red line
 * @param failedClears exit attempts while shorthanded that did not get out
 */
public record LastGame(
    String game,
    Optional<String> day,
    String opponent,
    Compared icings,
    Compared sentShort,
    Compared failedClears) {

  /**
   * One thing that is counted.
   *
   * @param label what
   * @param last in the last game
   * @param before in the games before
   */
  public record Compared(String label, Count last, Count before) {}

  /**
   * The last game of a team.
   *
   * @param season the season
   * @param team the team
   * @return empty where the team has fewer than two games with exit attempts
   */
  public static Optional<LastGame> of(Season season, String team) {
    Rows own = season.exitRows().where(Columns.TEAM, team);
    List<String> ids =
        season.games().stream()
            .filter(g -> g.exits().stream().anyMatch(e -> e.at().team().equals(team)))
            .sorted((a, b) -> day(a).compareTo(day(b)))
            .map(g -> g.game().id())
            .distinct()
            .toList();
    if (ids.size() < 2) {
      return Optional.empty();
    }
    String id = ids.get(ids.size() - 1);
    Rows last = own.where(Columns.GAME, id);
    Rows before = own.without(Columns.GAME, id);
    Rows killing = Shares.shorthanded(last);
    Rows killingBefore = Shares.shorthanded(before);
    return Optional.of(
        new LastGame(
            id,
            season.games().stream()
                .filter(g -> g.game().id().equals(id))
                .flatMap(g -> g.game().date().stream())
                .map(Object::toString)
                .findFirst(),
            last.words(Columns.OPPONENT).get(0),
            new Compared("iced, of the tries to get out", Shares.iced(last), Shares.iced(before)),
            new Compared(
                "sent before the red line, of pucks carried or passed out",
                Shares.releasedShort(last),
                Shares.releasedShort(before)),
            new Compared(
                "failed clears, of tries shorthanded",
                killing.share(Shares.keptIn(killing)),
                killingBefore.share(Shares.keptIn(killingBefore)))));
  }

  /** Games without a date keep their order behind those that have one. */
  private static String day(GameRecords g) {
    return g.game().date().map(Object::toString).orElse("9999");
  }
}
