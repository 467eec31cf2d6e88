package twostrides.rulebook.penalty;

import java.util.Objects;

/**
 * An instant at which the skaters on the ice change.
 *
 * @param at from the first instant after this one, it is {@code after}
 * @param cause what changed it
 * @param before who was on the ice
 * @param after who is
 * @param why a plain phrase
 */
public record Change(GameInstant at, Cause cause, OnIce before, OnIce after, String why) {

  /** What changed it. */
  public enum Cause {
    /** A penalty was assessed. */
    CALLED,
    /** A penalty ran out. */
    EXPIRED,
    /** A goal ended a penalty. */
    GOAL,
    /** Play stopped and starts again, and the numbers are put right. */
    STARTED,
    /** A period began. */
    PERIOD,
    /** A goalkeeper left or came back. */
    NET
  }

  /** Rejects a change without a cause. */
  public Change {
    Objects.requireNonNull(at);
    Objects.requireNonNull(cause);
    Objects.requireNonNull(before);
    Objects.requireNonNull(after);
    Objects.requireNonNull(why);
  }
}
