package twostrides.exits;

import java.util.List;
import twostrides.game.Action;
import twostrides.game.PlayRow;

/** Rows that say again what a row before them has said, and are no move of their own. */
final class Repeats {

  private Repeats() {}

  /**
   * Whether a row repeats another.
   *
   * @param rows the rows of a game
   * @param i the row's index
   */
  static boolean is(List<PlayRow> rows, int i) {
    return (rows.get(i).repeats() && followsOwnDelivery(rows, i)) || writtenAgain(rows, i);
  }

  /** Whether the last row before an entry that is a touch is a release or pass of the same team. */
  private static boolean followsOwnDelivery(List<PlayRow> rows, int i) {
    PlayRow entry = rows.get(i);
    for (int k = i - 1; k >= 0; k--) {
      PlayRow before = rows.get(k);
      if (before.period() != entry.period()) {
        return false;
      }
      switch (before.action()) {
        case PENALTY -> {
          continue;
        }
        case PASS, RELEASE, SHOT -> {
          return before.team().equals(entry.team());
        }
        default -> {
          return false;
        }
      }
    }
    return false;
  }

  /**
   * Whether a touch is where and when the same player just let the puck go: he does so once, and
   * rows of one second may stand in any order.
   */
  private static boolean writtenAgain(List<PlayRow> rows, int i) {
    PlayRow r = rows.get(i);
    if (i == 0 || r.action() != Action.TOUCH || r.place().isEmpty() || r.player().isEmpty()) {
      return false;
    }
    PlayRow before = rows.get(i - 1);
    return (before.action() == Action.PASS || before.action() == Action.RELEASE)
        && before.period() == r.period()
        && before.elapsed() == r.elapsed()
        && before.team().equals(r.team())
        && before.player().equals(r.player())
        && before.place().equals(r.place());
  }
}
