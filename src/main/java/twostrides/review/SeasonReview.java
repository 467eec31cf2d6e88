package twostrides.review;

import java.util.List;
import java.util.Optional;

/**
 * What the book shows of a season.
 *
 * @param games number of games
 * @param ourTeam the team that plays in every game, when just one does
 * @param window seconds in which restarts, attempts and goals count
 * @param sentences what the season says, five sentences
 * @param teams the teams; our team first, then by attempts
 * @param players players by attempts
 * @param restarts own-zone restarts in the order of play
 * @param audits icings in the sheets that the book would not call
 * @param others releases that another book would rule otherwise
 */
public record SeasonReview(
    int games,
    Optional<String> ourTeam,
    double window,
    List<String> sentences,
    List<TeamReview> teams,
    List<PlayerReview> players,
    List<RestartLine> restarts,
    List<AuditLine> audits,
    List<OtherRuling> others) {

  /** Copies the lists. */
  public SeasonReview {
    sentences = List.copyOf(sentences);
    teams = List.copyOf(teams);
    players = List.copyOf(players);
    restarts = List.copyOf(restarts);
    audits = List.copyOf(audits);
    others = List.copyOf(others);
  }

  /** The players of one team, by attempts. */
  public List<PlayerReview> playersOf(String team) {
    return players.stream().filter(p -> p.team().equals(team)).toList();
  }
}
