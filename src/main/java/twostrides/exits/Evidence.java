package twostrides.exits;

import java.util.Locale;

/** On what the chance of gaining center rests. */
public enum Evidence {
  /** Skaters' places at the release are known. */
  MEASURED,
  /** The sheet says how much pressure there was. */
  TAGGED,
  /** Comparable touches in the same sheets. */
  INFERRED;

  /** The word in tables and on pages. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
