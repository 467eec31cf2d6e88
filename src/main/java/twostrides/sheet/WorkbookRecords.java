package twostrides.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * Rows of a spreadsheet's workbook (.xlsx), each cell as the text that a CSV file would hold: a
 * whole number without decimals, a date as 2031-10-04, a time as a clock.
 */
final class WorkbookRecords {

  /** Bytes of a workbook when unpacked; one of a season of touches has 200 MB. Assumed. */
  static final long LARGEST = 500_000_000;

  /** Digits of a number that a spreadsheet keeps. */
  private static final MathContext SHOWN = new MathContext(15);

  private static final int DAY = 86_400;

  /** Numbers of formats that every workbook knows: days, times, both. */
  private static final Map<Integer, String> BUILT_IN =
      Map.of(
          14,
          "yyyy-mm-dd",
          15,
          "d-mmm-yy",
          16,
          "d-mmm",
          17,
          "mmm-yy",
          20,
          "h:mm",
          21,
          "h:mm:ss",
          22,
          "yyyy-mm-dd h:mm",
          45,
          "mm:ss",
          46,
          "[h]:mm:ss",
          47,
          "mm:ss.0");

  /** What stands in a format for itself: quoted, escaped, in brackets but for running hours. */
  private static final Pattern LITERAL =
      Pattern.compile("\"[^\"]*\"|\\\\.|_.|\\*.|\\[(?![hms]+\\])[^\\]]*\\]|General|;.*");

  private final String file;
  private final char decimalMark;

  private WorkbookRecords(String file, char decimalMark) {
    this.file = file;
    this.decimalMark = decimalMark;
  }

  /** Whether a sheet is a workbook by its name. */
  static boolean isWorkbook(Path file) {
    return Packed.unpackedName(twostrides.sheet.Sheet.fileName(file))
        .toLowerCase(Locale.ROOT)
        .endsWith(".xlsx");
  }

  /**
   * Reads the rows of a workbook.
   *
   * @param path the workbook
   * @param settings which of its sheets, where several have rows, and its decimal mark
   * @throws SheetException when it is none, or it does not say which of its sheets
   */
  static Records read(Path path, FileSettings settings) throws SheetException {
    String file = SheetText.display(path);
    byte[] bytes = SheetText.bytes(path, file);
    try {
      refuseBomb(file, bytes);
      try (ReadableWorkbook book = open(bytes)) {
        return new WorkbookRecords(file, settings.decimalMark()).records(book, settings.rows());
      }
    } catch (IOException | RuntimeException e) {
      throw SheetException.ofFile(
          file,
          "a workbook that cannot be read",
          "a workbook (.xlsx) without a password",
          "Open it in the spreadsheet and save it again, or save it as CSV (UTF-8).");
    }
  }

  /** With the formats of cells, where the workbook has any. */
  private static ReadableWorkbook open(byte[] bytes) throws IOException {
    try {
      return new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true));
    } catch (ExcelReaderException e) {
      return new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(false, true));
    }
  }

  private static void refuseBomb(String file, byte[] bytes) throws IOException, SheetException {
    byte[] buffer = new byte[1 << 16];
    long all = 0;
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      while (in.getNextEntry() != null) {
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
          all += n;
          if (all > LARGEST) {
            throw SheetException.ofFile(
                file,
                "a workbook of more than " + LARGEST / 1_000_000 + " MB when unpacked",
                "at most that",
                "Look whether it is the right file; if it is, save it as CSV (UTF-8).");
          }
        }
      }
    }
  }

  private Records records(ReadableWorkbook book, Optional<String> named)
      throws IOException, SheetException {
    Map<String, List<Records.Entry>> tables = new LinkedHashMap<>();
    for (Sheet table : book.getSheets().toList()) {
      if (named.isEmpty() || named.get().equalsIgnoreCase(table.getName())) {
        tables.put(table.getName(), rows(table));
      }
    }
    if (tables.isEmpty()) {
      throw SheetException.ofFile(
          file,
          "no sheet \"" + named.orElse("") + "\" in the workbook",
          "one of: " + Wording.list(book.getSheets().map(Sheet::getName).toList()),
          "Correct rows under [file] in the sheet map.");
    }
    List<String> filled = tables.keySet().stream().filter(t -> !tables.get(t).isEmpty()).toList();
    if (filled.size() > 1) {
      throw SheetException.ofFile(
          file,
          "several sheets with rows in the workbook: " + Wording.list(filled),
          "one that holds the rows",
          "Name it in a sheet map, under [file]: rows = \"" + filled.get(0) + "\".");
    }
    return new Records(file, filled.isEmpty() ? List.of() : tables.get(filled.get(0)));
  }

  private List<Records.Entry> rows(Sheet table) throws IOException {
    List<Records.Entry> entries = new ArrayList<>();
    try (Stream<Row> rows = table.openStream()) {
      for (Row row : (Iterable<Row>) rows::iterator) {
        int width = entries.isEmpty() ? 0 : entries.get(0).cells().size();
        List<String> cells = cells(row, width);
        if (cells.stream().anyMatch(c -> !c.isBlank())) {
          String raw = CSVFormat.DEFAULT.format(cells.toArray());
          entries.add(new Records.Entry(row.getRowNum(), raw, cells));
        }
      }
    }
    return entries;
  }

  /** The cells of a row, as many as the header has; more where more are filled. */
  private List<String> cells(Row row, int width) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < row.getCellCount(); i++) {
      cells.add(row.getOptionalCell(i).map(this::text).orElse(""));
    }
    while (cells.size() > width && cells.get(cells.size() - 1).isBlank()) {
      cells.remove(cells.size() - 1);
    }
    cells.addAll(Collections.nCopies(Math.max(0, width - cells.size()), ""));
    return cells;
  }

  private String text(Cell cell) {
    String raw = cell.getRawValue();
    boolean number =
        cell.getType() == CellType.NUMBER || (cell.getType() == CellType.FORMULA && isNumber(raw));
    if (cell.getType() == CellType.BOOLEAN) {
      return raw.equals("1") ? "TRUE" : "FALSE";
    }
    if (!number) {
      return cell.getType() == CellType.FORMULA || cell.getType() == CellType.ERROR
          ? Optional.ofNullable(raw).orElse("")
          : cell.getText();
    }
    String format =
        LITERAL
            .matcher(
                Optional.ofNullable(cell.getDataFormatId())
                    .map(BUILT_IN::get)
                    .or(() -> Optional.ofNullable(cell.getDataFormatString()))
                    .orElse(""))
            .replaceAll("")
            .toLowerCase(Locale.ROOT);
    boolean time = format.contains("h") || format.contains("s");
    boolean day = format.contains("y") || format.contains("d") || (!time && format.contains("m"));
    if (day) {
      String date = cell.asDate().toLocalDate().toString();
      return time ? date + " " + clock(Double.parseDouble(raw) % 1, "hh:mm") : date;
    }
    return time
        ? clock(Double.parseDouble(raw), format)
        : new BigDecimal(raw)
            .round(SHOWN)
            .stripTrailingZeros()
            .toPlainString()
            .replace('.', decimalMark);
  }

  private static boolean isNumber(String raw) {
    try {
      return raw != null && Double.isFinite(Double.parseDouble(raw));
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /**
   * A time of day as the clock that was typed: 13:07, which a spreadsheet may keep as seven minutes
   * past one, is 13:07, and so is 0:13:07.
   */
  private String clock(double days, String format) {
    double all = days * DAY;
    long tenths = Math.round(all * 10);
    long s = tenths / 10;
    long part = tenths % 10;
    String rest = part == 0 ? "" : decimalMark + Long.toString(part);
    boolean minutes = !format.contains("h") || s < 3600;
    if (minutes) {
      return String.format(Locale.ROOT, "%02d:%02d", s / 60, s % 60) + rest;
    }
    String hours = String.format(Locale.ROOT, "%02d:%02d", s / 3600, s / 60 % 60);
    return s % 60 == 0 && part == 0
        ? hours
        : hours + String.format(Locale.ROOT, ":%02d", s % 60) + rest;
  }
}
