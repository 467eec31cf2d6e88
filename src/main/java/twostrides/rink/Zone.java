package twostrides.rink;

import java.util.Locale;

/** A third of the rink between the blue lines, in the frame of one team. */
public enum Zone {
  /** Up to the own blue line. */
  OWN,
  /** Between the blue lines. */
  NEUTRAL,
  /** Past the far blue line. */
  ATTACKING;

  /** The word for sheets and tables. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The same ice in the frame of the other team. */
  public Zone seenByOpponent() {
    return switch (this) {
      case OWN -> ATTACKING;
      case NEUTRAL -> NEUTRAL;
      case ATTACKING -> OWN;
    };
  }
}
