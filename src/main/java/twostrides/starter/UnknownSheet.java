package twostrides.starter;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;
import twostrides.sheet.SheetSchema;

/**
 * A sheet that nobody has described.
 *
 * @param name its file name
 * @param columns its columns, in its order
 * @param rows its rows of cells, those with as many cells as the header
 */
record UnknownSheet(String name, List<Column> columns, List<List<String>> rows) {

  /** A sheet of which nothing is asked. */
  private static final SheetSchema ANY = new SheetSchema("any", List.of(), List.of());

  static UnknownSheet read(Path file) throws SheetException {
    Sheet sheet = SheetReader.read(file, SheetMap.plain(ANY));
    List<List<String>> rows = sheet.rows().stream().map(SheetRow::cells).toList();
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < sheet.headers().size(); i++) {
      if (!sheet.headers().get(i).isEmpty()) {
        columns.add(Column.of(i, sheet.headers().get(i), rows));
      }
    }
    return new UnknownSheet(sheet.name(), List.copyOf(columns), rows);
  }

  /** The column of a name, as the sheet spells it. */
  Optional<Column> column(String header) {
    return columns.stream().filter(c -> c.header().equalsIgnoreCase(header)).findFirst();
  }
}
