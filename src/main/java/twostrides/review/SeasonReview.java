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
 * @param flags releases that a restart followed, flagged or not, in the order of play
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

  /** Flags on the opening page: as many as a meeting has time for. Assumed. */
  private static final int DEAREST = 5;

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

  /**
   * The flagged releases, those that cost most first: goals after the draw, then attempts, then
   * what trying would have saved on average; the order of play within equals.
   */
  public List<FlagLine> flagged() {
    return FlagLine.dearestFirst(flags);
  }

  /** The first few flags of our team, or of all where no team plays every game. */
  public List<FlagLine> dearest() {
    return flagged().stream()
        .filter(f -> ourTeam.isEmpty() || ourTeam.get().equals(f.team()))
        .limit(DEAREST)
        .toList();
  }

  /**
   * Not flagged, though gaining center would as likely as not have avoided the restart; the
   * likeliest first.
   */
  public List<FlagLine> nearMisses() {
    return flags.stream().filter(FlagLine::nearMiss).sorted(FlagLine.NEAREST).toList();
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
