package twostrides.game;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the rows that stand against the clock: the fewest rows whose removal leaves a clock that
 * never runs backward. One row with a wrong clock is then one row set aside, not everything after
 * it.
 *
 * <p>Longest non-decreasing subsequence by patience sorting, O(n log n).
 */
final class OrderOfPlay {
  private OrderOfPlay() {}

  /**
   * Which entries stand against the order.
   *
   * @param times instants in the sheet's order
   * @return true for each entry to be set aside
   */
  static boolean[] against(double[] times) {
    int n = times.length;
    int[] tails = new int[n];
    int[] before = new int[n];
    int length = 0;
    for (int i = 0; i < n; i++) {
      int at = firstGreater(tails, length, times, times[i]);
      before[i] = at > 0 ? tails[at - 1] : -1;
      tails[at] = i;
      length = Math.max(length, at + 1);
    }
    boolean[] against = new boolean[n];
    Arrays.fill(against, true);
    int i = length > 0 ? tails[length - 1] : -1;
    while (i >= 0) {
      against[i] = false;
      i = before[i];
    }
    return against;
  }

  private static int firstGreater(int[] tails, int length, double[] times, double value) {
    int low = 0;
    int high = length;
    while (low < high) {
      int mid = (low + high) >>> 1;
      if (times[tails[mid]] > value) {
        high = mid;
      } else {
        low = mid + 1;
      }
    }
    return low;
  }

  /**
   * The last kept entry before one, to say what a clock ran backward from.
   *
   * @param against what {@link #against} found
   * @param i the entry
   */
  static List<Integer> keptAround(boolean[] against, int i) {
    List<Integer> kept = new ArrayList<>();
    for (int k = i - 1; k >= 0 && kept.isEmpty(); k--) {
      if (!against[k]) {
        kept.add(k);
      }
    }
    for (int k = i + 1; k < against.length; k++) {
      if (!against[k]) {
        kept.add(k);
        break;
      }
    }
    return kept;
  }
}
