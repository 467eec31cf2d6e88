package twostrides.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import twostrides.sheet.SheetException;

/**
 * A clip of a written list.
 *
 * @param line its line
 * @param game game id
 * @param start second of the video
 * @param end second of the video, after the start
 * @param title what is to be seen
 */
record ListedClip(long line, String game, double start, double end, String title) {

  private static final List<String> COLUMNS = List.of("game", "start_s", "end_s", "title");

  /** Reads a list; a row that cannot be cut refuses it. */
  static List<ListedClip> read(Path list) throws IOException, SheetException {
    List<ListedClip> clips = new ArrayList<>();
    if (!Files.isRegularFile(list)) {
      throw SheetException.ofFile(
          list.toString(), "no such file", "a clip list", "Check the spelling.");
    }
    try (Reader in = Files.newBufferedReader(list)) {
      CSVFormat form = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
      for (CSVRecord row : form.parse(in)) {
        long line = row.getRecordNumber() + 1;
        for (String column : COLUMNS) {
          if (!row.isSet(column)) {
            throw SheetException.ofFile(
                list + ", line " + line,
                "no cell in the column " + column,
                "the columns " + String.join(", ", COLUMNS),
                "Save the list anew from the book.");
          }
        }
        double start = number(list, line, row, "start_s");
        double end = number(list, line, row, "end_s");
        if (!(start >= 0 && end > start)) {
          throw SheetException.ofFile(
              list + ", line " + line,
              "start_s " + row.get("start_s") + ", end_s " + row.get("end_s"),
              "a start of 0 or more and an end after it",
              "Correct the row.");
        }
        // The guard against spreadsheets is no part of a game's id.
        clips.add(
            new ListedClip(
                line,
                row.get("game").replaceAll("'(?=[=+\\-@])", ""),
                start,
                end,
                row.get("title")));
      }
    } catch (IllegalArgumentException | IllegalStateException | java.io.UncheckedIOException e) {
      throw SheetException.ofFile(
          list.toString(),
          "a file that is no CSV",
          "the columns " + String.join(", ", COLUMNS),
          "Save the list anew from the book.");
    }
    if (clips.isEmpty()) {
      throw SheetException.ofFile(
          list.toString(), "no clip", "a row a clip", "Save a list with clips.");
    }
    return clips;
  }

  private static double number(Path list, long line, CSVRecord row, String column)
      throws SheetException {
    try {
      return Double.parseDouble(row.get(column));
    } catch (NumberFormatException e) {
      throw SheetException.ofFile(
          list + ", line " + line,
          column + " \"" + row.get(column) + "\"",
          "seconds, such as 128.5",
          "Correct the row.");
    }
  }
}
