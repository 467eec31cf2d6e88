package twostrides.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table written as CSV text, the same in every locale: columns by name, with how each is read
 * from a row.
 *
 * @param <T> what a row is about
 */
final class Csv<T> {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

  private final Map<String, Function<T, String>> columns = new LinkedHashMap<>();

  /** Adds a column to the right of the others. */
  Csv<T> column(String name, Function<T, String> cell) {
    columns.put(name, cell);
    return this;
  }

  /** Adds a column whose cells are empty where there is nothing. */
  <V> Csv<T> column(String name, Function<T, Optional<V>> value, Function<V, String> word) {
    return column(name, row -> value.apply(row).map(word).orElse(""));
  }

  /** The text: header first, lines ending in a line feed. */
  String text(List<T> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
      printer.printRecord(columns.keySet());
      for (T row : rows) {
        printer.printRecord(columns.values().stream().map(cell -> cell.apply(row)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory cannot fail", e);
    }
    return out.toString();
  }

  /** A number with a fixed count of decimals, 1 to 4; never a zero with a minus sign. */
  static String number(double value, int decimals) {
    long scaled = Math.round(Math.abs(value) * Math.pow(10, decimals));
    return BigDecimal.valueOf(value < 0 ? -scaled : scaled, decimals).toPlainString();
  }
}
