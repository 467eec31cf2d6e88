package twostrides.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads a sheet through a map: decodes it, splits it, and gives rows their columns.
 *
 * <p>Guaranteed: every row of the file ends up in {@link Sheet#rows} or in {@link Sheet#setAside},
 * once, in the file's order. A line that holds nothing but blanks and delimiters is no row.
 */
public final class SheetReader {
  private SheetReader() {}

  /**
   * The column names of a sheet that has no map, to choose a schema by; trimmed, in its order.
   *
   * @param file the sheet
   * @throws SheetException when the file cannot be read, or has no header or two columns alike
   */
  public static List<String> headers(Path file) throws SheetException {
    return names(split(file, FileSettings.PLAIN));
  }

  /**
   * The column names of a sheet that is written as a map says; trimmed, in its order.
   *
   * @param file the sheet
   * @param map the map
   * @throws SheetException when the file cannot be read, or has no header or two columns alike
   */
  public static List<String> headers(Path file, SheetMap map) throws SheetException {
    return names(split(file, map.file()));
  }

  /**
   * Reads a sheet.
   *
   * @param file the sheet
   * @param map where our columns are in it
   * @throws SheetException when it cannot be read at all: missing, not text in its charset, no
   *     header, a column that is required or named by the map missing, two columns alike, a quote
   *     that is not closed
   */
  public static Sheet read(Path file, SheetMap map) throws SheetException {
    return read(file, map, split(file, map.file()));
  }

  /**
   * Reads a sheet in one of our own formats.
   *
   * @param file the sheet
   * @param mapOf the plain map for its column names
   * @throws SheetException when it cannot be read at all, as with a map
   */
  public static Sheet readPlain(Path file, Function<List<String>, SheetMap> mapOf)
      throws SheetException {
    Records records = split(file, FileSettings.PLAIN);
    return read(file, mapOf.apply(names(records)), records);
  }

  private static Sheet read(Path file, SheetMap map, Records records) throws SheetException {
    List<String> headers = names(records);
    Records.Entry header = records.entries().get(0);
    Layout layout = new Layout(map, file, headers, header.raw(), header.line());
    RowCheck check = new RowCheck(layout);
    List<SheetRow> rows = new ArrayList<>();
    List<DoubtfulRow> setAside = new ArrayList<>();
    boolean looksAround = map.looksAround();
    for (int i = 1; i < records.entries().size(); i++) {
      Records.Entry entry = records.entries().get(i);
      List<String> around =
          looksAround
              ? RowCells.composed(Around.cells(records.entries(), i, headers.size()))
              : entry.cells();
      SheetRow row = layout.row(entry.line(), entry.raw(), entry.cells(), around);
      Optional<SheetRow> second = row.then();
      List<Problem> problems = new ArrayList<>(check.problems(row));
      second.ifPresent(s -> problems.addAll(check.problems(s)));
      if (problems.isEmpty()) {
        rows.add(row);
        second.ifPresent(rows::add);
      } else {
        setAside.add(new DoubtfulRow(row, problems));
      }
    }
    return new Sheet(
        file,
        Sheet.fileName(file),
        layout.columnsPresent(),
        headers,
        rows,
        setAside,
        records.entries().size() - 1);
  }

  private static Records split(Path file, FileSettings settings) throws SheetException {
    if (WorkbookRecords.isWorkbook(file)) {
      return WorkbookRecords.read(file, settings);
    }
    SheetText text = SheetText.read(file, settings.charset());
    return SheetFiles.isJson(file)
        ? JsonRecords.read(text, settings.rows(), SheetFiles.isJsonLines(file))
        : Records.split(text, settings.delimiter());
  }

  /** The column names in the first row, trimmed, no two alike. */
  static List<String> names(Records records) throws SheetException {
    if (records.entries().isEmpty()) {
      throw SheetException.ofFile(
          records.file(),
          "nothing but blank lines",
          "a header line with the names of the columns",
          "Save the sheet again, with its header line.");
    }
    Records.Entry header = records.entries().get(0);
    List<String> names = header.cells().stream().map(String::strip).toList();
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!name.isEmpty() && !seen.add(SheetMap.key(name))) {
        throw new SheetException(
            records.file(),
            OptionalLong.of(header.line()),
            "column \"" + name + "\"",
            "this column twice",
            "names that differ in more than capitals",
            "Rename one of the two, or take it out.");
      }
    }
    return names;
  }
}
