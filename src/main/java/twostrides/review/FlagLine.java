package twostrides.review;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.exits.Evidence;
import twostrides.exits.FlagVerdict;
import twostrides.stats.Count;

/**
 * A release that an own-zone restart followed: flagged, without a verdict, or not flagged with its
 * reason.
 *
 * @param game game id
 * @param period period, from 1
 * @param clockLeft seconds left in the period, as a scoreboard shows it
 * @param team who let it go
 * @param player who let it go
 * @param strength strength at the release
 * @param x metres
 * @param y metres, where the sheet has it
 * @param shortOfCenter metres short of the red line
 * @param seconds seconds to the red line
 * @param gain chance of gaining center; empty where nothing says anything of it
 * @param avoid chance of avoiding the icing; only on evidence that carries a verdict
 * @param evidence on what the chance of gaining center rests
 * @param kind what makes releases alike, a phrase
 * @param kindIced iced ones of the releases of this kind in these sheets
 * @param skaters skaters seen, in the words of the flags table; empty without any
 * @param puck where the puck would have gone
 * @param costIcing attempts against that an icing costs
 * @param costTrying attempts against that trying costs; empty where {@code avoid} is
 * @param verdict flagged, or why not
 * @param sentence what happened and why it is flagged or not
 * @param ruling what the book says
 * @param clause clause of the book
 * @param video second of the video
 * @param after what the opponent did after the draw
 * @param sheet file name
 * @param line line of the sheet
 */
public record FlagLine(
    String game,
    int period,
    double clockLeft,
    String team,
    Optional<String> player,
    String strength,
    double x,
    OptionalDouble y,
    double shortOfCenter,
    double seconds,
    Optional<Likely> gain,
    Optional<Likely> avoid,
    Evidence evidence,
    String kind,
    Count kindIced,
    String skaters,
    Puck puck,
    double costIcing,
    OptionalDouble costTrying,
    FlagVerdict verdict,
    String sentence,
    String ruling,
    String clause,
    OptionalDouble video,
    After after,
    String sheet,
    int line) {

  /**
   * How likely center has to be for a release that fell short of a flag to be a near miss: even
   * odds. Assumed.
   */
  private static final double NEAR_MISS = 0.5;

  /** By what they cost: goals after the draw, then attempts, then what trying would have saved. */
  private static final Comparator<FlagLine> DEAREST =
      Comparator.comparingInt((FlagLine f) -> -f.after.goals().orElse(0))
          .thenComparingInt(f -> -f.after.attempts().orElse(0))
          .thenComparingDouble(f -> f.costTrying.orElse(0) - f.costIcing);

  /** Near misses by how likely center was. */
  static final Comparator<FlagLine> NEAREST =
      Comparator.comparingDouble(f -> -f.avoid.orElseThrow().p());

  /** Releases without a verdict by how likely center was; those last of which nothing is known. */
  static final Comparator<FlagLine> LIKELIEST =
      Comparator.comparingDouble(f -> -f.gain.map(Likely::p).orElse(-1.0));

  /**
   * What the opponent did within the window after the draw; empty where the sheet does not say.
   *
   * @param attempts shot attempts
   * @param goals goals
   */
  public record After(OptionalInt attempts, OptionalInt goals) {
    /** Nothing is known. */
    static final After UNKNOWN = new After(OptionalInt.empty(), OptionalInt.empty());
  }

  /**
   * Where the puck would have gone with nobody in its way.
   *
   * @param past share of the draws past the far goal line, 0 to 1
   * @param x metres up ice that half the draws reach
   * @param right 10 % of the draws pass there at or to the right of this, metres
   * @param middle the middle draw
   * @param left 10 % pass at or to the left of this
   */
  public record Puck(double past, double x, double right, double middle, double left) {}

  /** The flagged ones, those that cost most first; the order given within equals. */
  static List<FlagLine> dearestFirst(List<FlagLine> lines) {
    return lines.stream().filter(FlagLine::flagged).sorted(DEAREST).toList();
  }

  /** Whether there was time to gain center, and trying would have cost less. */
  public boolean flagged() {
    return verdict == FlagVerdict.FLAGGED;
  }

  /** Whether it was iced and nobody can say: to be looked at. */
  public boolean toLookAt() {
    return verdict == FlagVerdict.LOOK;
  }

  /** Whether it was iced, as the book calls it, and so flagged, to be looked at, or short of it. */
  public boolean icing() {
    return flagged() || toLookAt() || verdict.fellShort();
  }

  /** Measured and not flagged, though center would as likely as not have avoided the icing. */
  boolean nearMiss() {
    return verdict.fellShort() && avoid.filter(a -> a.p() >= NEAR_MISS).isPresent();
  }
}
