package twostrides.findings;

import java.util.Optional;
import java.util.function.Function;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;

/**
 * One sentence of advice for a player, tied to its numbers: the first rule that has something to
 * say, in the order of {@link Rule}. What the player does more or less often than the rest of the
 * team comes first, single clips second, however many there are.
 *
 * @param attempts exit attempts of the player
 * @param flagged flagged ones, of the player's icings that carry a verdict
 * @param clips moments on the sheet
 * @param releasedShort released short of center, of the pucks carried or passed out
 * @param iced iced ones, of the releases short of center
 * @param icedRate the adjusted rate of the same
 * @param keptIn kept in, of the attempts under no or light pressure
 * @param late iced ones, of the player's releases just after a penalty
 */
public record Advice(
    int attempts,
    Count flagged,
    int clips,
    Pair releasedShort,
    Pair iced,
    Optional<AdjustedRate> icedRate,
    Pair keptIn,
    Count late) {

  /**
   * At most this chance of so many icings calls them a habit; with {@link #OTHERS} one equal player
   * in fifty is told of any. Assumed; docs/checks.md has what it finds.
   */
  private static final double HABIT = 0.02;

  /** The same for each of the other three comparisons. Assumed. */
  private static final double OTHERS = 0.0025;

  /** Once is no habit, however seldom the others are iced. Assumed. */
  private static final int FEWEST_ICINGS = 2;

  /** A release this soon after a penalty counts as just after it, seconds. Assumed. */
  public static final double JUST_AFTER = PenaltyKill.JUST_AFTER;

  /** The rules, in the order in which they are asked. */
  public enum Rule {
    /** Too few attempts to say anything. */
    TOO_FEW,
    /** Iced clearly more often than the rest of the team. */
    OFTEN_ICED,
    /** Released short of center clearly more often. */
    OFTEN_SHORT,
    /** Kept in clearly more often, under little pressure. */
    OFTEN_KEPT_IN,
    /** Some icings are flagged. */
    FLAGS,
    /** Iced just after a penalty. */
    AFTER_PENALTY,
    /** Released short of center clearly less often. */
    SELDOM_SHORT,
    /** Nothing stands out. */
    NOTHING
  }

  /**
   * The same count of the player and of the rest of the team, game by game: cases of one game may
   * hang together.
   *
   * @param own the player's
   * @param rest everybody else's in the team, the unnamed too
   */
  public record Pair(Clustered own, Clustered rest) {

    static Pair of(Rows team, String player, Function<Rows, Count> count) {
      return new Pair(
          team.where(Columns.PLAYER, player).byGame(count),
          team.without(Columns.PLAYER, player).byGame(count));
    }

    /** Whether either has too few cases. */
    public boolean tooFew() {
      return own.total().tooFew() || rest.total().tooFew();
    }

    boolean clearlyMore(double level) {
      return !tooFew() && new Difference(own, rest).chanceOfMore() <= level;
    }

    boolean clearlyLess(double level) {
      return !tooFew() && new Difference(own, rest).chanceOfLess() <= level;
    }
  }

  /** The first rule that has something to say. */
  public Rule rule() {
    if (attempts < Count.FEWEST_TO_SAY) {
      return Rule.TOO_FEW;
    }
    if (iced.own().total().successes() >= FEWEST_ICINGS && iced.clearlyMore(HABIT)) {
      return Rule.OFTEN_ICED;
    }
    if (releasedShort.clearlyMore(OTHERS)) {
      return Rule.OFTEN_SHORT;
    }
    if (keptIn.clearlyMore(OTHERS)) {
      return Rule.OFTEN_KEPT_IN;
    }
    if (flagged.successes() > 0) {
      return Rule.FLAGS;
    }
    if (late.successes() > 0) {
      return Rule.AFTER_PENALTY;
    }
    return releasedShort.clearlyLess(OTHERS) ? Rule.SELDOM_SHORT : Rule.NOTHING;
  }
}
