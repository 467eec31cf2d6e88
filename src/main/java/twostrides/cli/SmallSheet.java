package twostrides.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import twostrides.sheet.Cell;
import twostrides.sheet.ColumnSpec;
import twostrides.sheet.DoubtfulCellException;
import twostrides.sheet.Problem;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;
import twostrides.sheet.SheetSchema;

/** A list beside a book, of few rows and columns, where one doubtful row refuses the whole. */
final class SmallSheet {
  private SmallSheet() {}

  /**
   * Reads a list.
   *
   * @param name what it is, a word
   * @param columns its columns, each of them required
   * @throws SheetException when it cannot be read, or holds a row that cannot be used
   */
  static List<SheetRow> read(Path file, String name, String... columns) throws SheetException {
    List<ColumnSpec> specs = Stream.of(columns).map(c -> new ColumnSpec(c, true, "")).toList();
    Sheet sheet = SheetReader.read(file, SheetMap.plain(new SheetSchema(name, specs, List.of())));
    if (!sheet.setAside().isEmpty()) {
      throw SheetException.of(sheet.setAside().get(0).problems().get(0));
    }
    return sheet.rows();
  }

  /** The words of a cell, without the guard against spreadsheets; empty where it is. */
  static String words(SheetRow row, String column) {
    return row.cell(column).map(Cell::text).orElse("").replaceAll("^'(?=[=+\\-@])", "");
  }

  /**
   * A number of 0 or more.
   *
   * @throws SheetException when it is none
   */
  static double number(SheetRow row, String column) throws SheetException {
    Cell cell = row.cell(column).orElse(null);
    if (cell == null) {
      throw SheetException.of(
          new Problem(row.file(), row.line(), column, "", "a number", "Fill in the cell."));
    }
    try {
      return cell.number(0, Double.POSITIVE_INFINITY);
    } catch (DoubtfulCellException e) {
      throw SheetException.of(e.problem());
    }
  }
}
