package twostrides.review;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A release that an own-zone restart followed: flagged, or a near miss with its reason.
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
 * @param seconds seconds to the red line at the pace of the sheets
 * @param icing chance of icing, 0 to 1
 * @param icingError its simulation error
 * @param gain chance of gaining center, 0 to 1
 * @param avoid chance of avoiding the restart, 0 to 1
 * @param evidence on what the chance of gaining center rests
 * @param skaters skaters seen, in the words of the flags table; empty without any
 * @param puck where the puck would have gone
 * @param costRestart attempts against that a restart costs
 * @param costTrying attempts against that trying costs
 * @param flagged whether it is flagged
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
    double icing,
    double icingError,
    double gain,
    double avoid,
    String evidence,
    String skaters,
    Puck puck,
    double costRestart,
    double costTrying,
    boolean flagged,
    String sentence,
    String ruling,
    String clause,
    OptionalDouble video,
    After after,
    String sheet,
    int line) {

  /**
   * How likely center has to be for a release that is not flagged to be a near miss: even odds.
   * Assumed.
   */
  private static final double NEAR_MISS = 0.5;

  /** By what they cost: goals after the draw, then attempts, then what trying would have saved. */
  private static final Comparator<FlagLine> DEAREST =
      Comparator.comparingInt((FlagLine f) -> -f.after.goals().orElse(0))
          .thenComparingInt(f -> -f.after.attempts().orElse(0))
          .thenComparingDouble(f -> -f.saved());

  /** Near misses by how likely center was. */
  static final Comparator<FlagLine> NEAREST = Comparator.comparingDouble(f -> -f.avoid);

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

  /** Not flagged, though gaining center would as likely as not have avoided the restart. */
  boolean nearMiss() {
    return !flagged && avoid >= NEAR_MISS;
  }

  /** Attempts against that trying would have saved on average. */
  public double saved() {
    return costRestart - costTrying;
  }
}
