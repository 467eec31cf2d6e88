package twostrides.sheet;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A sheet that was read.
 *
 * @param file the file, as the user named it
 * @param name the file's name, with its extension
 * @param columnsPresent our columns that this sheet can fill, in declared order
 * @param headers the sheet's own column names, trimmed, in its order; an unnamed column is empty
 * @param rows the readable rows, in the sheet's order
 * @param setAside rows that are doubtful before anyone asks what their cells mean: a wrong number
 *     of cells, no rule of the map that fits, a rule that skips them, a pattern that does not fit
 * @param rowsRead how many rows the sheet holds: rows and those set aside; blank lines are no rows
 */
public record Sheet(
    Path file,
    String name,
    Set<String> columnsPresent,
    List<String> headers,
    List<SheetRow> rows,
    List<DoubtfulRow> setAside,
    int rowsRead) {
  /** Checks that every row is somewhere and copies the lists. */
  public Sheet {
    columnsPresent = Collections.unmodifiableSet(new LinkedHashSet<>(columnsPresent));
    headers = List.copyOf(headers);
    rows = List.copyOf(rows);
    setAside = List.copyOf(setAside);
    if (rowsRead != rows.stream().filter(r -> !r.second()).count() + setAside.size()) {
      throw new IllegalArgumentException(
          rowsRead + " rows read, but " + rows.size() + " kept and " + setAside.size() + " not");
    }
  }

  /** The file's name without its extension; {@code .csv.gz} is one. */
  public String stem() {
    return stem(file);
  }

  public static String fileName(Path path) {
    Path last = path.getFileName();
    return last == null ? path.toString() : last.toString();
  }

  /**
   * A file's name without its ending, which is the id of its game where no row names one.
   *
   * @param path the file
   */
  public static String stem(Path path) {
    String name = Packed.unpackedName(fileName(path));
    int dot = name.lastIndexOf('.');
    return Records.composed(dot > 0 ? name.substring(0, dot) : name);
  }
}
