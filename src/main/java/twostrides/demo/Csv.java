package twostrides.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** CSV text and numbers, the same in every locale. */
final class Csv {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

  private Csv() {}

  static String text(List<String> header, List<List<String>> lines) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
      printer.printRecord(header);
      printer.printRecords(lines);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory cannot fail", e);
    }
    return out.toString();
  }

  /** A number with a fixed count of decimals, 1 to 4; never a zero with a minus sign. */
  static String number(double value, int decimals) {
    long scale = 1;
    for (int i = 0; i < decimals; i++) {
      scale *= 10;
    }
    long scaled = Math.round(Math.abs(value) * scale);
    String fraction = Long.toString(scale + scaled % scale).substring(1);
    String sign = value < 0 && scaled > 0 ? "-" : "";
    return sign + scaled / scale + "." + fraction;
  }
}
