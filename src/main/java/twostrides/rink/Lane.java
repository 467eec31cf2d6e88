package twostrides.rink;

import java.util.Locale;

/** A third of the rink's width, facing the attack. */
public enum Lane {
  /** At the left boards. */
  LEFT,
  /** The middle. */
  MIDDLE,
  /** At the right boards. */
  RIGHT;

  /** The word for tables and pages. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
