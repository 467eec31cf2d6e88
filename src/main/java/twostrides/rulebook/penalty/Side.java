package twostrides.rulebook.penalty;

import java.util.Locale;

/** One of the two teams of a game. */
public enum Side {
  /** The home team. */
  HOME,
  /** The visiting team. */
  AWAY;

  /** The other team. */
  public Side other() {
    return this == HOME ? AWAY : HOME;
  }

  /** The side in running text. */
  String text() {
    return name().toLowerCase(Locale.ROOT);
  }
}
