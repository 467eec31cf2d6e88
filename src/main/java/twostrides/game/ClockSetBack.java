package twostrides.game;

import java.util.Arrays;
import java.util.List;

/**
 * Clocks put back at a face-off, so that it stands earlier than rows before it.
 *
 * <p>A face-off blown dead at once is often not written, only the touches and the stoppage after
 * it; the next face-off then stands where the clock stood at the stoppage before, and that stoppage
 * is why it is where it is: play in between did not count. Otherwise the clock was mended at the
 * whistle, and rows that stand later than the face-off happened just before it. A stoppage or
 * penalty that alone stands a second before the rows around it is put level with the row before it.
 */
final class ClockSetBack {

  /** How far a clock is put back, s: 1 to 3 s in real sheets. */
  private static final double MOST_S = 3;

  /** How far it is put back where it is only mended, s. Assumed. */
  private static final double MENDED_S = 1;

  private final List<PlayRow> rows;
  private final int[] voidFrom;
  private final double[] elapsed;

  /**
   * Looks at the rows of a game.
   *
   * @param rows the rows in the sheet's order
   */
  ClockSetBack(List<PlayRow> rows) {
    this.rows = rows;
    this.voidFrom = new int[rows.size()];
    Arrays.fill(voidFrom, -1);
    this.elapsed = rows.stream().mapToDouble(PlayRow::elapsed).toArray();
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i).action() == Action.FACEOFF) {
        before(i);
      } else if (rows.get(i).action() == Action.STOPPAGE
          || rows.get(i).action() == Action.PENALTY) {
        atTheWhistle(i);
      }
    }
  }

  /**
   * A whistle up to a second before the row before it. Where the face-off after it stands as early,
   * the clock was set back for good, and the rows before the whistle happened no later than it.
   */
  private void atTheWhistle(int whistle) {
    double back = elapsed[whistle - 1] - elapsed[whistle];
    if (!samePeriod(whistle - 1, whistle) || back <= 0 || back > MENDED_S) {
      return;
    }
    int next = whistle + 1;
    boolean forGood =
        next < rows.size()
            && samePeriod(whistle, next)
            && rows.get(next).elapsed() < elapsed[whistle - 1];
    if (!forGood) {
      elapsed[whistle] = elapsed[whistle - 1];
      return;
    }
    for (int i = whistle - 1; i >= 0 && samePeriod(i, whistle); i--) {
      elapsed[i] = Math.min(elapsed[i], elapsed[whistle]);
    }
  }

  private boolean samePeriod(int i, int k) {
    return rows.get(i).period() == rows.get(k).period();
  }

  /** The row after which play up to the next face-off did not count; -1 for a row that counts. */
  int voidFrom(int row) {
    return voidFrom[row];
  }

  /** A row with its clock no later than that of the face-off that followed it. */
  PlayRow mended(int row) {
    PlayRow r = rows.get(row);
    return elapsed[row] == r.elapsed() ? r : r.at(elapsed[row]);
  }

  private void before(int faceoffAt) {
    PlayRow faceoff = rows.get(faceoffAt);
    double latest = faceoff.elapsed();
    int i = faceoffAt - 1;
    while (sinceFaceoff(i, faceoff) && rows.get(i).elapsed() > faceoff.elapsed()) {
      latest = Math.max(latest, rows.get(i).elapsed());
      i--;
    }
    double back = latest - faceoff.elapsed();
    if (i < 0 || back == 0 || back > MOST_S) {
      return;
    }
    int stoppage = i;
    while (sinceFaceoff(stoppage, faceoff)
        && rows.get(stoppage).action() != Action.STOPPAGE
        && rows.get(stoppage).elapsed() == faceoff.elapsed()) {
      stoppage--;
    }
    boolean goesOnEarlier =
        faceoffAt + 1 < rows.size() && rows.get(faceoffAt + 1).elapsed() < latest;
    if (sinceFaceoff(stoppage, faceoff) && rows.get(stoppage).action() == Action.STOPPAGE) {
      voidAfter(stoppage, faceoffAt);
    } else if (back > MENDED_S && goesOnEarlier) {
      voidAfter(i, faceoffAt);
    } else {
      Arrays.fill(elapsed, i + 1, faceoffAt, faceoff.elapsed());
    }
  }

  /** A penalty is served all the same. */
  private void voidAfter(int last, int faceoffAt) {
    for (int k = last + 1; k < faceoffAt; k++) {
      voidFrom[k] = rows.get(k).action() == Action.PENALTY ? -1 : last;
    }
  }

  private boolean sinceFaceoff(int i, PlayRow faceoff) {
    return i >= 0
        && rows.get(i).period() == faceoff.period()
        && rows.get(i).action() != Action.FACEOFF;
  }
}
