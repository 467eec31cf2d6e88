package twostrides.sheet;

import java.nio.charset.Charset;
import java.util.Optional;

/**
 * How a sheet's file is written.
 *
 * @param delimiter between cells; empty means found from the header line
 * @param charset of the bytes; empty means by byte order mark, else UTF-8
 * @param decimalMark between a number's whole and decimal digits, {@code .} or {@code ,}
 * @param rows of JSON: the list whose objects are the rows; of a workbook: the sheet that holds
 *     them; empty means the only one
 */
record FileSettings(
    Optional<Character> delimiter,
    Optional<Charset> charset,
    char decimalMark,
    Optional<String> rows) {
  /** What holds without a map. */
  static final FileSettings PLAIN =
      new FileSettings(Optional.empty(), Optional.empty(), '.', Optional.empty());

  FileSettings {
    if (decimalMark != '.' && decimalMark != ',') {
      throw new IllegalArgumentException("decimal mark: " + decimalMark);
    }
  }
}
