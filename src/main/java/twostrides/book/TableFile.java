package twostrides.book;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * Writes a table as CSV: metres with two decimals, seconds with up to two and no needless zeros,
 * true and false, missing as an empty cell. Text that a spreadsheet would run gets an apostrophe
 * before it.
 */
public final class TableFile {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

  private TableFile() {}

  static void write(Table table, Path file) throws IOException {
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
      printer.printRecord(table.columnNames());
      for (int row = 0; row < table.rowCount(); row++) {
        for (Column<?> column : table.columns()) {
          printer.print(cell(column, row));
        }
        printer.println();
      }
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
    if (column instanceof StringColumn words) {
      return guarded(words.get(row));
    }
    return String.valueOf(column.get(row));
  }

  /** Chances and costs in ten-thousandths, metres and seconds in hundredths. */
  private static int decimals(String column) {
    return column.startsWith("p_") || column.startsWith("cost_") ? 4 : 2;
  }

  /**
   * Text safe to open in a spreadsheet, which runs a cell that begins with one of these.
   *
   * @param text untrusted text
   */
  public static String guarded(String text) {
    return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
