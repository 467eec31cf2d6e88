package twostrides.season;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import twostrides.output.ParallelFiles.Part;
import twostrides.sheet.CsvOut;

/**
 * Writes a table as CSV or JSON Lines: metres with two decimals, seconds with up to two and no
 * needless zeros, true and false, missing as an empty cell or no key.
 */
public final class TableFile {

  private static final JsonFactory JSON = new JsonFactory();

  private TableFile() {}

  /**
   * What writes tables, each to a file of its name; each is made when it is written.
   *
   * @param tables the tables
   * @param folder where to
   */
  public static List<Part> parts(List<Supplier<Table>> tables, Path folder) {
    return tables.stream()
        .<Part>map(
            made ->
                () -> {
                  Table table = made.get();
                  write(table, folder.resolve(table.name() + ".csv"));
                })
        .toList();
  }

  /**
   * Writes a table.
   *
   * @param table the table
   * @param file where to
   * @throws IOException when it cannot be written
   */
  public static void write(Table table, Path file) throws IOException {
    try (CsvOut out = new CsvOut(file)) {
      out.row(table.columnNames());
      for (int i = 0; i < table.rowCount(); i++) {
        List<String> cells = new ArrayList<>();
        for (Column<?> c : table.columns()) {
          cells.add(cell(c, i));
        }
        out.row(cells);
      }
    }
  }

  /**
   * Writes tables as JSON Lines, each to a file of its name: an object a row, numbers as in CSV, no
   * key for what is missing.
   *
   * @param tables the tables
   * @param folder where to
   * @throws IOException when a file cannot be written
   */
  public static void writeLines(List<Table> tables, Path folder) throws IOException {
    for (Table t : tables) {
      try (JsonGenerator json =
          JSON.createGenerator(Files.newBufferedWriter(folder.resolve(t.name() + ".jsonl")))) {
        json.setRootValueSeparator(new SerializedString(""));
        for (int i = 0; i < t.rowCount(); i++) {
          json.writeStartObject();
          for (Column<?> c : t.columns()) {
            value(c, i, json);
          }
          json.writeEndObject();
          json.writeRaw('\n');
        }
      }
    }
  }

  private static void value(Column<?> column, int row, JsonGenerator json) throws IOException {
    if (column.isMissing(row)) {
      return;
    }
    json.writeFieldName(column.name());
    if (column instanceof StringColumn) {
      json.writeString(cell(column, row));
    } else {
      json.writeRawValue(cell(column, row));
    }
  }

  private static String cell(Column<?> column, int row) {
    if (column.isMissing(row)) {
      return "";
    }
    if (column instanceof DoubleColumn numbers) {
      BigDecimal exact =
          BigDecimal.valueOf(numbers.getDouble(row))
              .setScale(decimals(column.name()), RoundingMode.HALF_EVEN);
      BigDecimal shown = column.name().endsWith("_m") ? exact : exact.stripTrailingZeros();
      return shown.signum() == 0 ? shown.abs().toPlainString() : shown.toPlainString();
    }
    return String.valueOf(column.get(row));
  }

  /** Chances and costs in ten-thousandths, metres and seconds in hundredths. */
  private static int decimals(String column) {
    return column.startsWith("p_") || column.startsWith("cost_") ? 4 : 2;
  }
}
