package twostrides.rulebook;

import java.util.function.BiFunction;

/**
 * One rule: what it does to an icing when it applies, and how to ask it.
 *
 * @param effect what it makes of the situation
 * @param ask the rule itself
 */
record Rule(Effect effect, BiFunction<IcingBook, Facts, Answer> ask) {

  /** What a rule makes of the situation. */
  enum Effect {
    /** Something that makes an icing is missing. */
    NO_ICING,
    /** Nothing is missing, and the book takes it back. */
    WAVED_OFF,
    /** A goal. */
    GOAL,
    /** Nothing has happened yet; play goes on. */
    NOT_YET
  }
}
