package twostrides.sheet;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/** A row's cells in one text, unchangeable: a league's season has a hundred million of them. */
final class RowCells extends AbstractList<String> implements RandomAccess {
  private final String text;
  private final int[] ends;

  private RowCells(String text, int[] ends) {
    this.text = text;
    this.ends = ends;
  }

  /**
   * Packs cells, their accents composed.
   *
   * @param cells the cells
   */
  static RowCells composed(List<String> cells) {
    StringBuilder text = new StringBuilder();
    int[] ends = new int[cells.size()];
    for (int i = 0; i < ends.length; i++) {
      ends[i] = text.append(Records.composed(cells.get(i))).length();
    }
    return new RowCells(text.toString(), ends);
  }

  @Override
  public String get(int i) {
    return text.substring(i == 0 ? 0 : ends[i - 1], ends[i]);
  }

  @Override
  public int size() {
    return ends.length;
  }
}
