package twostrides.rulebook.penalty;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a rulebook says about manpower, as data. Clauses and how sure each is stand with the methods
 * that apply them.
 *
 * @param lengths how long each penalty is
 * @param fewestSkaters skaters below which penalties take no team. 3 (NHL 26.1: S)
 * @param overtimeSkaters skaters a side in overtime; empty: as in regulation. NHL 3 (84.1: S), NCAA
 *     3 (91.1: P)
 * @param coincidentalMinors what one minor each at the same stoppage does
 * @param shorthandedGoalFreesOwnMinor whether a shorthanded goal ends the scoring team's own minor
 *     (PWHL: P)
 * @param expiredMajorEmptyBoxExempt whether a team a skater down only because nobody sat out an
 *     expired major still is shorthanded. NHL no (81.6: S)
 * @param atExpiry what holds at the very instant of expiry
 */
public record PenaltyRules(
    Lengths lengths,
    int fewestSkaters,
    OptionalInt overtimeSkaters,
    CoincidentalMinors coincidentalMinors,
    boolean shorthandedGoalFreesOwnMinor,
    boolean expiredMajorEmptyBoxExempt,
    AtExpiry atExpiry) {

  /** Skaters at full strength, goalkeeper not counted. */
  static final int FULL_SKATERS = 5;

  /**
   * How long penalties are that take a skater off; a misconduct takes none (NHL 22: S).
   *
   * @param minorSeconds a minor and a bench minor, s; a double minor is two. 120 (NHL 16.1, 17.1;
   *     IIHF 16, 17: grade S); affiliates of USA Hockey may shorten it to 60 or 90 (P)
   * @param majorSeconds a major, s. 300 (NHL 20.1; IIHF 20: S)
   * @param matchSeconds a match penalty, s; empty where the book knows none, then it counts as a
   *     major and a doubt is reported. NHL 300 (21.2: S); IIHF none (S)
   */
  public record Lengths(double minorSeconds, double majorSeconds, OptionalDouble matchSeconds) {

    /** What most books say. */
    public static final Lengths COMMON = new Lengths(120, 300, OptionalDouble.of(300));

    /**
     * Rejects lengths that no book has.
     *
     * @throws IllegalArgumentException when one is not 1 to 3600 s
     */
    public Lengths {
      check("a minor", minorSeconds);
      check("a major", majorSeconds);
      matchSeconds.ifPresent(s -> check("a match penalty", s));
    }

    private static void check(String what, double seconds) {
      if (!(seconds >= 1 && seconds <= 3600)) {
        throw new IllegalArgumentException(what + " lasts 1 to 3600 s, not " + seconds);
      }
    }
  }

  /** One minor each at the same stoppage, nothing else running. */
  public enum CoincidentalMinors {
    /** Both sit and count: four on four (NHL 19.1, grade S). */
    FOUR_ON_FOUR,
    /** They cancel, both are replaced (IIHF 19.1: S; USA Hockey and NFHS: P; Hockey Canada: ?). */
    CANCEL
  }

  /** What holds at the very instant at which a penalty runs out. */
  public enum AtExpiry {
    /** The penalty is over: it covers its start, not its end. */
    OVER,
    /** It is still being served at its last instant. */
    STILL_SERVED
  }

  /** Common practice, where no book is named. */
  public static final PenaltyRules COMMON =
      new PenaltyRules(
          Lengths.COMMON,
          3,
          OptionalInt.empty(),
          CoincidentalMinors.CANCEL,
          false,
          false,
          AtExpiry.OVER);

  /**
   * Rejects counts that no book has.
   *
   * @throws IllegalArgumentException when the floor is not 1 to 4, or overtime not from it to 5
   */
  public PenaltyRules {
    if (fewestSkaters < 1 || fewestSkaters >= FULL_SKATERS) {
      throw new IllegalArgumentException("fewest skaters are 1 to 4, not " + fewestSkaters);
    }
    int overtime = overtimeSkaters.orElse(FULL_SKATERS);
    if (overtime < fewestSkaters || overtime > FULL_SKATERS) {
      throw new IllegalArgumentException(
          "overtime skaters are " + fewestSkaters + " to 5, not " + overtime);
    }
  }

  /** Skaters that penalties can take from a team at once. */
  int mostShort() {
    return FULL_SKATERS - fewestSkaters;
  }

  /**
   * Skaters of a team that has no penalty.
   *
   * @param overtime whether the period is overtime
   */
  int skaters(boolean overtime) {
    return overtime ? overtimeSkaters.orElse(FULL_SKATERS) : FULL_SKATERS;
  }
}
