package twostrides.review;

import java.util.List;
import java.util.Optional;
import twostrides.stats.Count;

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

  /** Flags and releases to look at on the opening page: time for a meeting. Assumed. */
  private static final int FEW = 5;

  /** Of them at least to look at, however many flags there are. Assumed. */
  private static final int LEAST_TO_LOOK_AT = 2;

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
    return few(flagged(), FEW);
  }

  /**
   * Icings of which nobody can say whether center could have been gained: the likeliest first, at
   * the end those of which the sheet says nothing; the order of play within equals.
   */
  public List<FlagLine> toLookAt() {
    return flags.stream().filter(FlagLine::toLookAt).sorted(FlagLine.LIKELIEST).toList();
  }

  /** The first few of our team to look at, as far as the sheet says anything of them. */
  public List<FlagLine> firstToLookAt() {
    return few(
        toLookAt().stream().filter(f -> f.gain().isPresent()).toList(),
        Math.max(LEAST_TO_LOOK_AT, FEW - dearest().size()));
  }

  private List<FlagLine> few(List<FlagLine> lines, int most) {
    return lines.stream()
        .filter(f -> ourTeam.isEmpty() || ourTeam.get().equals(f.team()))
        .limit(most)
        .toList();
  }

  /**
   * Measured and not flagged, though gaining center would as likely as not have avoided the icing;
   * the likeliest first.
   */
  public List<FlagLine> nearMisses() {
    return flags.stream().filter(FlagLine::nearMiss).sorted(FlagLine.NEAREST).toList();
  }

  /** What is neither flagged nor to be looked at, in the order of play. */
  public List<FlagLine> notFlagged() {
    return flags.stream().filter(f -> !f.flagged() && !f.toLookAt()).toList();
  }

  /** Icings let go short of center: flagged, to be looked at, or fallen short of a flag. */
  public long icingsLetGo() {
    return flags.stream().filter(FlagLine::icing).count();
  }

  /** The players of one team, by attempts. */
  public List<PlayerReview> playersOf(String team) {
    return players.stream().filter(p -> p.team().equals(team)).toList();
  }
}
