package twostrides.findings;

import java.util.Optional;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.stats.Count;

/**
 * What an opponent does to the book's team.
 *
 * @param iced the team's tries to get out against it that were iced
 * @param others the same against all other opponents
 * @param lost face-offs after the team's icings that the opponent won, of those whose winner is
 *     known
 * @param attemptsLost its shot attempts within the window after those it won
 * @param casesLost how many of those face-offs have shots in their sheet
 */
public record Opponent(Count iced, Count others, Count lost, int attemptsLost, int casesLost) {

  /**
   * Looks at an opponent.
   *
   * @param review the season and its team
   * @param opponent the opponent
   * @return empty where the book is about no one team
   */
  public static Optional<Opponent> of(SeasonReview review, String opponent) {
    if (review.ourTeam().isEmpty()) {
      return Optional.empty();
    }
    String team = review.ourTeam().get();
    Rows tries = review.season().exitRows().where(Columns.TEAM, team);
    Rows against = tries.where(Columns.OPPONENT, opponent);
    Rows elsewhere = tries.without(Columns.OPPONENT, opponent);
    Rows icings =
        review
            .season()
            .restartRows()
            .isTrue(Columns.OWN_LAST)
            .where(Columns.TEAM, team)
            .where(Columns.OPPONENT, opponent)
            .iced();
    Rows decided = icings.known(Columns.WON_BY);
    Rows lost = decided.where(Columns.WON_BY, "opponent");
    String attempts = review.season().columns().attempts();
    Rows shots = lost.known(attempts);
    return Optional.of(
        new Opponent(
            Shares.iced(against),
            Shares.iced(elsewhere),
            decided.share(lost),
            shots.sum(attempts),
            shots.n()));
  }
}
