package twostrides.game;

import java.nio.file.Path;
import java.util.List;
import twostrides.sheet.DoubtfulRow;

/**
 * A sheet in its rows.
 *
 * @param file the sheet
 * @param name its file name
 * @param rowsRead its rows, used or not
 * @param frame how it writes clock and places
 * @param rows rows that can be used
 * @param doubtful rows that cannot
 * @param mended what was put right
 * @param <R> play row or tagged exit
 */
record RowsOfSheet<R>(
    Path file,
    String name,
    int rowsRead,
    Frame frame,
    List<ReadRow<R>> rows,
    List<DoubtfulRow> doubtful,
    List<Mend> mended) {

  /** The same, its rows forgotten. */
  RowsOfSheet<R> forgotten() {
    return new RowsOfSheet<>(file, name, rowsRead, frame, List.of(), doubtful, mended);
  }
}
