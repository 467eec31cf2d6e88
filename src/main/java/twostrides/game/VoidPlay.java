package twostrides.game;

import java.util.Arrays;
import java.util.List;

/**
 * Play that did not count, because the clock was put back for it at the next draw. A draw blown
 * dead at once is often not written, only the touches and the stoppage after it; the next draw then
 * stands where the clock stood at the stoppage before, and that stoppage is why it is where it is.
 */
final class VoidPlay {

  /** How far a clock is put back, s: 1 to 3 s in real sheets; 5 s is assumed. */
  private static final double MOST_BACK_S = 5;

  private VoidPlay() {}

  /**
   * For each row the row after which play did not count, or -1 where it does.
   *
   * @param rows the rows of a game in the sheet's order
   */
  static int[] of(List<PlayRow> rows) {
    int[] from = new int[rows.size()];
    Arrays.fill(from, -1);
    for (int draw = 1; draw < rows.size(); draw++) {
      if (rows.get(draw).action() == Action.FACEOFF) {
        before(rows, draw, from);
      }
    }
    return from;
  }

  private static void before(List<PlayRow> rows, int draw, int[] from) {
    PlayRow faceoff = rows.get(draw);
    double latest = faceoff.elapsed();
    int i = draw - 1;
    while (i >= 0 && counted(rows.get(i), faceoff) && rows.get(i).elapsed() > faceoff.elapsed()) {
      latest = Math.max(latest, rows.get(i).elapsed());
      i--;
    }
    if (i < 0 || i == draw - 1 || latest > faceoff.elapsed() + MOST_BACK_S) {
      return;
    }
    int stoppage = i;
    while (stoppage >= 0
        && counted(rows.get(stoppage), faceoff)
        && rows.get(stoppage).action() != Action.STOPPAGE
        && rows.get(stoppage).elapsed() == faceoff.elapsed()) {
      stoppage--;
    }
    boolean stopped =
        stoppage >= 0
            && counted(rows.get(stoppage), faceoff)
            && rows.get(stoppage).action() == Action.STOPPAGE;
    // Without a stoppage the clock of the draw itself may be wrong: then play goes on later.
    boolean goesOnEarlier = draw + 1 < rows.size() && rows.get(draw + 1).elapsed() < latest;
    int last = stopped ? stoppage : i;
    for (int k = last + 1; k < draw && (stopped || goesOnEarlier); k++) {
      // A penalty is served all the same.
      from[k] = rows.get(k).action() == Action.PENALTY ? -1 : last;
    }
  }

  private static boolean counted(PlayRow r, PlayRow faceoff) {
    return r.period() == faceoff.period() && r.action() != Action.FACEOFF;
  }
}
