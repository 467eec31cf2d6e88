package twostrides.findings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import twostrides.exits.Against;
import twostrides.exits.OtherRuling;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.race.Chance;
import twostrides.season.Flag;
import twostrides.season.Season;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Count;

/**
 * What the book shows of a season.
 *
 * @param games number of games
 * @param ourTeam the team the book is about: the one asked for, or the one that plays in most
 *     games, when just one does
 * @param everyPlayer whether players of every team have pages of their own, not only our team's
 * @param season the season
 * @param teams the teams; our team first, then by attempts
 * @param players players by attempts
 * @param iced adjusted rates of the releases short of center that were iced, of all players
 * @param icingsByGame icings of exit attempts game by game, in order; of our team where there is
 *     one, else of all
 */
public record SeasonReview(
    int games,
    Optional<String> ourTeam,
    boolean everyPlayer,
    Season season,
    List<TeamReview> teams,
    List<PlayerReview> players,
    AdjustedRates iced,
    List<Count> icingsByGame) {

  /** Flags and releases to look at on the opening page: time for a meeting. Assumed. */
  private static final int FEW = 5;

  /** Of them at least to look at, however many flags there are. Assumed. */
  private static final int LEAST_TO_LOOK_AT = 2;

  /** Copies the lists. */
  public SeasonReview {
    teams = List.copyOf(teams);
    players = List.copyOf(players);
    icingsByGame = List.copyOf(icingsByGame);
  }

  /** Flags that cost most first: goals that followed, attempts, then what trying saves. */
  static final Comparator<Flag> DEAREST =
      Comparator.comparingInt((Flag f) -> -against(f).map(Against::goals).orElse(0))
          .thenComparingInt(f -> -against(f).map(Against::attempts).orElse(0))
          .thenComparingDouble(f -> f.assessment().trying().orElse(0) - f.costIcing());

  private static final Comparator<Flag> LIKELIEST =
      Comparator.comparingDouble(f -> -f.assessment().gain().chance().map(Chance::p).orElse(-1.0));

  private static final Comparator<Flag> NEAREST =
      Comparator.comparingDouble(f -> -f.assessment().avoid().orElseThrow().p());

  private static Optional<Against> against(Flag f) {
    return f.restart().flatMap(r -> r.faceOff().against());
  }

  /** Whether the team of the zone had the puck last: its own restart. */
  public static boolean own(Restart r) {
    return r.ownLast().orElse(false);
  }

  /**
   * A team of the book.
   *
   * @param name its name
   */
  public Optional<TeamReview> team(String name) {
    return teams.stream().filter(t -> t.team().equals(name)).findFirst();
  }

  /**
   * Whether the players of a team have pages, sheets and clip lists of their own: our team's, every
   * team's where the book is about none, and where all were asked for.
   *
   * @param team the team
   */
  public boolean shows(String team) {
    return everyPlayer || ourTeam.isEmpty() || ourTeam.get().equals(team);
  }

  /** The players who have pages of their own, by attempts. */
  public List<PlayerReview> shown() {
    return players.stream().filter(p -> shows(p.team())).toList();
  }

  /** Whether any puck is known to have been sent before the red line: that takes places. */
  public boolean sentShort() {
    return !season.releaseRecords().isEmpty();
  }

  /** Seconds in which restarts, attempts and goals count. */
  public double window() {
    return season.columns().window();
  }

  /** Own-zone restarts in the order of play. */
  public List<Restart> restarts() {
    return season.restartRecords().stream().filter(SeasonReview::own).toList();
  }

  /** Releases that an own-zone restart followed, flagged or not, in the order of play. */
  public List<Flag> flags() {
    return season.flagRecords();
  }

  /** Icings in the sheets that the book would not call. */
  public List<Restart> audits() {
    return season.restartRecords().stream()
        .filter(r -> r.behind().flatMap(b -> b.ruling().audit()).isPresent())
        .toList();
  }

  /**
   * A release that another book would rule otherwise.
   *
   * @param release the release
   * @param other what the other book says
   */
  public record RuledOtherwise(Release release, OtherRuling other) {}

  /**
   * Releases that another book would rule otherwise.
   *
   * @param book the other book's id
   */
  public List<RuledOtherwise> ruledOtherwise(String book) {
    return season.releaseRecords().stream()
        .flatMap(
            a ->
                a.release().rulings().others().stream()
                    .filter(o -> o.book().equals(book) && o.differs())
                    .map(o -> new RuledOtherwise(a.release(), o)))
        .toList();
  }

  /** Flags, those that cost most first. */
  public List<Flag> flagged() {
    return flags().stream().filter(Flag::flagged).sorted(DEAREST).toList();
  }

  /** The few flags of our team to show first. */
  public List<Flag> dearest() {
    return ours(flagged()).stream().limit(FEW).toList();
  }

  /** Icings without a verdict in the order in which to look, the likeliest first. */
  public List<Flag> toLookAt() {
    return flags().stream().filter(Flag::toLookAt).sorted(LIKELIEST).toList();
  }

  /** The few of our team to look at first. */
  public List<Flag> firstToLookAt() {
    return ours(toLookAt()).stream()
        .filter(f -> f.assessment().gain().chance().isPresent())
        .limit(Math.max(LEAST_TO_LOOK_AT, FEW - dearest().size()))
        .toList();
  }

  /**
   * Those of the team that the book is about; all of them where it is about none.
   *
   * @param flags flags, or what stands beside them
   */
  public List<Flag> ours(List<Flag> flags) {
    return flags.stream()
        .filter(f -> ourTeam.isEmpty() || ourTeam.get().equals(f.release().at().team()))
        .toList();
  }

  /** Not flagged, though gaining center would as likely as not have avoided it. */
  public List<Flag> nearMisses() {
    return flags().stream().filter(Flag::nearMiss).sorted(NEAREST).toList();
  }

  /** Neither flagged nor to be looked at, in the order of play. */
  public List<Flag> notFlagged() {
    return flags().stream().filter(f -> !f.flagged() && !f.toLookAt()).toList();
  }

  /** Icings that were let go short of center. */
  public List<Flag> icingsLetGo() {
    return flags().stream().filter(Flag::icing).toList();
  }

  /**
   * The players of a team, by attempts.
   *
   * @param team the team
   */
  public List<PlayerReview> playersOf(String team) {
    return players.stream().filter(p -> p.team().equals(team)).toList();
  }
}
