package twostrides.exits;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Who touched the puck next before play stopped.
 *
 * @param by whose touch it was
 * @param x where along the rink, metres, in the frame of the team that let it go
 * @param seconds how soon, seconds of play; empty where the reception of a pass has no row of its
 *     own
 */
public record NextTouch(By by, OptionalDouble x, OptionalDouble seconds) {

  /** Shares what has few values. */
  public NextTouch {
    x = Shared.tenths(x);
    seconds = Shared.tenths(seconds);
  }

  /** Nobody did. */
  static final NextTouch NONE =
      new NextTouch(By.NONE, OptionalDouble.empty(), OptionalDouble.empty());

  /** Whose touch. */
  public enum By {
    /** The same team. */
    OWN,
    /** The other team. */
    OPPONENT,
    /** Play stopped first. */
    NONE;

    /** The word for tables. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
