package twostrides.exits;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a puck was let go.
 *
 * @param kind sent on, or a pass that nobody got
 * @param shot whether it was a shot at goal; empty in rows of tag sheets
 * @param carried metres up ice from where the player got the puck to where he let it go: 0 at his
 *     first touch, below 0 when he went back; empty in rows of tag sheets
 */
public record LetGo(Kind kind, Optional<Shot> shot, OptionalDouble carried) {

  /** Sent on or passed. */
  public enum Kind {
    /** Sent on with no receiver meant. */
    SENT,
    /** A pass that no teammate got. */
    MISSED_PASS;

    /** The word for tables. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Whether a puck let go was a shot. */
  public enum Shot {
    /** It was none. */
    NONE,
    /** It was, and did not score. */
    TAKEN,
    /** It scored. */
    SCORED
  }
}
