package twostrides.tracking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import twostrides.game.Action;
import twostrides.game.PlayRow;

/**
 * Where play stopped in a game, as its play sheet knows: a stoppage ends with each face-off, that
 * which opens a period included, since a video runs before it too. Where a sheet writes a stoppage
 * and no face-off after it, it ends at the stoppage's clock.
 */
final class Stoppages {
  /** A game without a play sheet: nothing is known. */
  static final Stoppages UNKNOWN = new Stoppages();

  private final Map<Integer, List<Double>> ends = new HashMap<>();
  private final List<Integer> before = new ArrayList<>();

  private Stoppages() {}

  /**
   * The stoppages of a game.
   *
   * @param rows its rows in the order of play
   */
  static Stoppages of(List<PlayRow> rows) {
    Stoppages found = new Stoppages();
    PlayRow last = null;
    PlayRow stopped = null;
    int here = 0;
    for (PlayRow row : rows) {
      boolean samePeriod = last != null && last.period() == row.period();
      here = samePeriod && last.elapsed() == row.elapsed() ? here : 0;
      stopped = samePeriod ? stopped : null;
      if (row.action() == Action.FACEOFF) {
        found.end(row);
        here++;
        stopped = null;
      } else if (row.action() == Action.STOPPAGE) {
        stopped = stopped == null ? row : stopped;
      } else if (stopped != null && row.elapsed() > stopped.elapsed() && row.control()) {
        found.end(stopped);
        stopped = null;
      }
      found.before.add(here);
      last = row;
    }
    return found;
  }

  private void end(PlayRow row) {
    ends.computeIfAbsent(row.period(), p -> new ArrayList<>()).add(row.elapsed());
  }

  /** Whether there is any. */
  boolean known() {
    return !ends.isEmpty();
  }

  /**
   * The clocks at which stoppages of a period ended, in seconds of play, rising; a clock stands as
   * often as play stopped at it.
   *
   * @param period period, from 1
   */
  List<Double> in(int period) {
    return ends.getOrDefault(period, List.of());
  }

  /**
   * How many stoppages at the very clock of a row were over when it happened.
   *
   * @param row number of the row in the game, from 0
   */
  int overAt(int row) {
    return before.isEmpty() ? 0 : before.get(row);
  }
}
