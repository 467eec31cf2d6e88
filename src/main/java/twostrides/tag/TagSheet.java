package twostrides.tag;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.Usual;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;

/**
 * The tag sheet as text: its columns in the order of docs/sheets.md, then whatever columns of their
 * own a sheet had before.
 *
 * @param columns column names, in the order in which they are written
 */
record TagSheet(List<String> columns) {

  static final String PERIOD = "period";
  static final String CLOCK = "clock";
  static final String TEAM = "team";
  static final String WAY_OUT = "way_out";

  /** Our columns; every one is known to {@link SheetForms#TAG}. */
  static final List<String> OURS =
      List.of(
          "game",
          "date",
          "home",
          "away",
          PERIOD,
          CLOCK,
          TEAM,
          "player",
          "opponent",
          WAY_OUT,
          "at_center",
          "strength",
          "net_empty",
          "x_m",
          "y_m",
          "ended",
          "end_x_m",
          "end_y_m",
          "faceoff",
          "pressure",
          "video_s",
          "note");

  /** Columns without which a row is no exit. */
  static final Set<String> REQUIRED = Set.of(PERIOD, CLOCK, TEAM, WAY_OUT);

  /** A sheet of our columns only. */
  static final TagSheet NEW = new TagSheet(OURS);

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

  /** Copies the names. */
  TagSheet {
    columns = List.copyOf(columns);
  }

  /**
   * A sheet that was read.
   *
   * @param sheet its columns
   * @param rows its rows, numbered from 1 in its order
   */
  record Read(TagSheet sheet, List<TagRow> rows) {}

  /**
   * Reads a sheet that is to be gone on with. Every row has to be one that the review uses: a row
   * that is set aside could not be kept in its own words.
   *
   * @param file the sheet
   * @param usual rink and length of a regular period
   * @throws SheetException when it cannot be read, is no tag sheet, or has a doubtful row
   */
  static Read read(Path file, Usual usual) throws SheetException {
    SheetMap map = SeasonReader.plainMapFor(file);
    if (!map.schema().equals(SheetForms.TAG)) {
      throw SheetException.ofFile(
          file.toString(),
          "a sheet without a way_out column",
          "a tag sheet, one row an exit",
          "Name another file with --sheet; one that does not exist yet is made.");
    }
    Sheet read = SheetReader.read(file, map);
    Optional<DoubtfulRow> doubtful = doubtful(file, usual);
    if (doubtful.isPresent()) {
      throw SheetException.atLine(
          file.toString(),
          doubtful.get().row().line(),
          "a doubtful row (" + doubtful.get().problems().get(0).message() + ")",
          "rows that the review uses",
          "Correct it first; the command check lists every doubtful row.");
    }
    List<String> named = read.headers().stream().map(TagSheet::ourSpelling).toList();
    List<String> columns = new ArrayList<>(OURS);
    named.stream().filter(c -> !c.isEmpty() && !OURS.contains(c)).forEach(columns::add);
    List<TagRow> rows = new ArrayList<>();
    for (SheetRow row : read.rows()) {
      Map<String, String> cells = new LinkedHashMap<>();
      for (int i = 0; i < named.size(); i++) {
        String words = row.cells().get(i).strip();
        if (!words.isEmpty() && !named.get(i).isEmpty()) {
          cells.put(named.get(i), words);
        }
      }
      rows.add(new TagRow(rows.size() + 1, 0, cells));
    }
    return new Read(new TagSheet(columns), rows);
  }

  /**
   * The first row of a tag sheet that the review would set aside.
   *
   * @param file the sheet
   * @param usual rink and length of a regular period
   * @throws SheetException when the sheet cannot be read at all
   */
  static Optional<DoubtfulRow> doubtful(Path file, Usual usual) throws SheetException {
    return SeasonReader.read(List.of(file), Optional.empty(), false, usual, n -> {})
        .setAside()
        .stream()
        .findFirst();
  }

  /** A sheet that also has the columns of these rows: a sheet that is gone cannot name them. */
  TagSheet with(List<TagRow> rows) {
    Set<String> all = new LinkedHashSet<>(columns);
    rows.forEach(r -> all.addAll(r.cells().keySet()));
    return new TagSheet(List.copyOf(all));
  }

  /** The sheet's text: UTF-8, comma, LF. */
  String text(List<TagRow> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
      printer.printRecord(columns);
      for (TagRow row : rows) {
        printer.printRecord(columns.stream().map(c -> row.cells().getOrDefault(c, "")).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory cannot fail", e);
    }
    return out.toString();
  }

  private static String ourSpelling(String header) {
    String lower = header.strip().toLowerCase(Locale.ROOT);
    return OURS.contains(lower) ? lower : header.strip();
  }
}
