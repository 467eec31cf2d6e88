package twostrides.review;

import java.util.List;
import java.util.Optional;
import twostrides.rates.Count;

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
 * @param manpower rows on which manpower columns and penalty rows disagree, of those that have both
 * @param flags releases that a restart followed: flagged ones first, by what trying would have
 *     saved
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
    Count manpower,
    List<FlagLine> flags,
    List<AuditLine> audits,
    List<OtherRuling> others) {

  /** Copies the lists. */
  public SeasonReview {
    sentences = List.copyOf(sentences);
    teams = List.copyOf(teams);
    players = List.copyOf(players);
    restarts = List.copyOf(restarts);
    flags = List.copyOf(flags);
    audits = List.copyOf(audits);
    others = List.copyOf(others);
  }

  /** The flagged releases, those that would have saved most first. */
  public List<FlagLine> flagged() {
    return flags.stream().filter(FlagLine::flagged).toList();
  }

  /** The releases that a restart followed and that are not flagged, in the order of play. */
  public List<FlagLine> notFlagged() {
    return flags.stream().filter(f -> !f.flagged()).toList();
  }

  /** The players of one team, by attempts. */
  public List<PlayerReview> playersOf(String team) {
    return players.stream().filter(p -> p.team().equals(team)).toList();
  }
}
