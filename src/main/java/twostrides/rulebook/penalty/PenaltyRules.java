package twostrides.rulebook.penalty;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;

/**
 * What a rulebook says about manpower, as data. Clauses and how sure each is stand with the methods
 * that apply them.
 *
 * @param minorSeconds a minor and a bench minor, s; a double minor is two. 120 (NHL 16.1, 17.1;
 *     IIHF 16, 17: grade S); affiliates of USA Hockey may shorten it to 60 or 90 (P)
 * @param majorSeconds a major, s. 300 (NHL 20.1; IIHF 20: S)
 * @param matchSeconds a match penalty, s; empty where the book knows none, then it counts as a
 *     major and a doubt is reported. NHL 300 (21.2: S); IIHF none (S)
 * @param misconductSeconds a misconduct, s; no skater is missing. 600 (NHL 22: S)
 * @param fullSkaters skaters at full strength, goalkeeper not counted. 5
 * @param fewestSkaters skaters below which penalties take no team. 3 (NHL 26.1: S)
 * @param overtimeSkaters skaters a side in overtime; empty: as in regulation. NHL 3 (84.1: S), NCAA
 *     3 (91.1: P)
 * @param coincidentalMinors what one minor each at the same stoppage does
 * @param shorthandedGoalFreesOwnMinor whether a shorthanded goal ends the scoring team's own minor
 *     (PWHL: P)
 * @param goalEndsMinorsOnlyWhenShorthanded whether a goal ends a minor only of a team that is
 *     shorthanded (NHL 16.2: S; every book read)
 * @param expiredMajorEmptyBoxExempt whether a team a skater down only because nobody sat out an
 *     expired major still is shorthanded. NHL no (81.6: S)
 * @param atExpiry what holds at the very instant of expiry
 */
public record PenaltyRules(
    double minorSeconds,
    double majorSeconds,
    OptionalDouble matchSeconds,
    double misconductSeconds,
    int fullSkaters,
    int fewestSkaters,
    OptionalInt overtimeSkaters,
    CoincidentalMinors coincidentalMinors,
    boolean shorthandedGoalFreesOwnMinor,
    boolean goalEndsMinorsOnlyWhenShorthanded,
    boolean expiredMajorEmptyBoxExempt,
    AtExpiry atExpiry) {

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
          120,
          300,
          OptionalDouble.of(300),
          600,
          5,
          3,
          OptionalInt.empty(),
          CoincidentalMinors.CANCEL,
          false,
          true,
          false,
          AtExpiry.OVER);

  /** Rejects lengths and counts that no book has. */
  public PenaltyRules {
    checkSeconds("a minor", minorSeconds);
    checkSeconds("a major", majorSeconds);
    matchSeconds.ifPresent(s -> checkSeconds("a match penalty", s));
    checkSeconds("a misconduct", misconductSeconds);
    if (fewestSkaters < 1 || fullSkaters <= fewestSkaters || fullSkaters > 6) {
      throw new IllegalArgumentException(
          "fewest and full skaters are 1 to 6 and ascend, not "
              + fewestSkaters
              + " and "
              + fullSkaters);
    }
    if (overtimeSkaters.isPresent()
        && (overtimeSkaters.getAsInt() < fewestSkaters
            || overtimeSkaters.getAsInt() > fullSkaters)) {
      throw new IllegalArgumentException(
          "overtime skaters are "
              + fewestSkaters
              + " to "
              + fullSkaters
              + ", not "
              + overtimeSkaters.getAsInt());
    }
    Objects.requireNonNull(coincidentalMinors);
    Objects.requireNonNull(atExpiry);
  }

  private static void checkSeconds(String what, double seconds) {
    if (!(seconds >= 1 && seconds <= 3600)) {
      throw new IllegalArgumentException(what + " lasts 1 to 3600 s, not " + seconds);
    }
  }

  /** Skaters that penalties can take from a team at once. */
  int mostShort() {
    return fullSkaters - fewestSkaters;
  }

  /**
   * These rules with another minor.
   *
   * @param seconds s
   */
  public PenaltyRules withMinorSeconds(double seconds) {
    return changed(d -> d.minorSeconds = seconds);
  }

  /**
   * These rules with another major.
   *
   * @param seconds s
   */
  public PenaltyRules withMajorSeconds(double seconds) {
    return changed(d -> d.majorSeconds = seconds);
  }

  /**
   * These rules with another match penalty.
   *
   * @param seconds s; empty: the book knows none
   */
  public PenaltyRules withMatchSeconds(OptionalDouble seconds) {
    return changed(d -> d.matchSeconds = seconds);
  }

  /**
   * These rules with another floor.
   *
   * @param skaters skaters below which penalties take no team
   */
  public PenaltyRules withFewestSkaters(int skaters) {
    return changed(d -> d.fewestSkaters = skaters);
  }

  /**
   * These rules with another overtime.
   *
   * @param skaters skaters a side; empty: as in regulation
   */
  public PenaltyRules withOvertimeSkaters(OptionalInt skaters) {
    return changed(d -> d.overtimeSkaters = skaters);
  }

  /**
   * These rules with another rule for one minor each.
   *
   * @param rule what they do
   */
  public PenaltyRules withCoincidentalMinors(CoincidentalMinors rule) {
    return changed(d -> d.coincidentalMinors = rule);
  }

  /**
   * These rules with or without freeing by a shorthanded goal.
   *
   * @param frees whether it ends the own minor
   */
  public PenaltyRules withShorthandedGoalFreesOwnMinor(boolean frees) {
    return changed(d -> d.shorthandedGoalFreesOwnMinor = frees);
  }

  /**
   * These rules with another rule for an expired major with an empty box.
   *
   * @param exempt whether the team still is shorthanded
   */
  public PenaltyRules withExpiredMajorEmptyBoxExempt(boolean exempt) {
    return changed(d -> d.expiredMajorEmptyBoxExempt = exempt);
  }

  /**
   * These rules with another convention for the instant of expiry.
   *
   * @param convention what holds there
   */
  public PenaltyRules withAtExpiry(AtExpiry convention) {
    return changed(d -> d.atExpiry = convention);
  }

  private PenaltyRules changed(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.rules();
  }

  /** The rules while one of them is changed. */
  private static final class Draft {
    private double minorSeconds;
    private double majorSeconds;
    private OptionalDouble matchSeconds;
    private double misconductSeconds;
    private int fullSkaters;
    private int fewestSkaters;
    private OptionalInt overtimeSkaters;
    private CoincidentalMinors coincidentalMinors;
    private boolean shorthandedGoalFreesOwnMinor;
    private boolean goalEndsMinorsOnlyWhenShorthanded;
    private boolean expiredMajorEmptyBoxExempt;
    private AtExpiry atExpiry;

    Draft(PenaltyRules r) {
      minorSeconds = r.minorSeconds;
      majorSeconds = r.majorSeconds;
      matchSeconds = r.matchSeconds;
      misconductSeconds = r.misconductSeconds;
      fullSkaters = r.fullSkaters;
      fewestSkaters = r.fewestSkaters;
      overtimeSkaters = r.overtimeSkaters;
      coincidentalMinors = r.coincidentalMinors;
      shorthandedGoalFreesOwnMinor = r.shorthandedGoalFreesOwnMinor;
      goalEndsMinorsOnlyWhenShorthanded = r.goalEndsMinorsOnlyWhenShorthanded;
      expiredMajorEmptyBoxExempt = r.expiredMajorEmptyBoxExempt;
      atExpiry = r.atExpiry;
    }

    PenaltyRules rules() {
      return new PenaltyRules(
          minorSeconds,
          majorSeconds,
          matchSeconds,
          misconductSeconds,
          fullSkaters,
          fewestSkaters,
          overtimeSkaters,
          coincidentalMinors,
          shorthandedGoalFreesOwnMinor,
          goalEndsMinorsOnlyWhenShorthanded,
          expiredMajorEmptyBoxExempt,
          atExpiry);
    }
  }
}
