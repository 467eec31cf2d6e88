package twostrides.tag;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.sheet.CsvOut;
import twostrides.sheet.SheetException;

/**
 * The places sheet that clicks are added to: the rows of one icing at a time, the sheet replaced in
 * one step, so that whoever reads it finds all of them or none. What stood there stays, byte for
 * byte.
 */
public final class PlacesFile {

  /** Columns of a new sheet. */
  private static final List<String> NEW =
      List.of(
          "game",
          "period",
          "clock",
          "line",
          "team",
          "carrier",
          "x_m",
          "y_m",
          "later_x_m",
          "later_y_m",
          "error_m");

  /** The column of rows that say how far off they are; a sheet made before had none. */
  private static final String ERROR = "error_m";

  /** Columns without which clicks could not be kept. */
  private static final List<String> NEEDED =
      NEW.stream().filter(c -> !List.of("line", "game", ERROR).contains(c)).toList();

  private final SheetPlace place;
  private List<String> columns;
  private final Deque<String> before = new ArrayDeque<>();

  private PlacesFile(SheetPlace place, List<String> columns) {
    this.place = place;
    this.columns = columns;
  }

  /**
   * Opens a sheet, or begins one.
   *
   * @param file the sheet
   * @throws SheetException when it has columns that clicks do not fit in
   * @throws IOException when the disk refuses
   */
  public static PlacesFile open(Path file) throws SheetException, IOException {
    SheetPlace place = new SheetPlace(file.toAbsolutePath().normalize());
    if (!Files.exists(file)) {
      Files.createDirectories(place.file().getParent());
      place.write(String.join(",", NEW) + "\n");
      place.move();
    }
    List<String> columns = columns(Files.readString(file));
    if (!columns.containsAll(NEEDED)) {
      throw SheetException.atLine(
          file.toString(),
          1,
          "\"" + String.join(",", columns) + "\"",
          "the columns " + String.join(", ", NEEDED) + ", with commas between them",
          "Give --places a file that does not exist yet; it may be given several times, and the last is"
              + " written to.");
    }
    return new PlacesFile(place, columns);
  }

  private static List<String> columns(String sheet) {
    String header = sheet.lines().findFirst().orElse("").replace("\uFEFF", "");
    return Arrays.asList(header.strip().split("\\s*,\\s*", -1));
  }

  /**
   * Adds the rows of an icing; they are on the disk when this returns. Where one says its error and
   * the sheet has no column for it, the sheet gets one at its end, empty in the rows that stood
   * there.
   *
   * @param rows the rows, column to words
   */
  synchronized void add(List<Map<String, String>> rows) throws IOException {
    String before = Files.readString(place.file());
    String now = before;
    if (!columns.contains(ERROR) && rows.stream().anyMatch(r -> r.containsKey(ERROR))) {
      now = wider(before);
      columns = Stream.concat(columns.stream(), Stream.of(ERROR)).toList();
    }
    String more =
        rows.stream()
            .map(
                r ->
                    columns.stream()
                            .map(c -> cell(r.getOrDefault(c, "")))
                            .collect(Collectors.joining(","))
                        + "\n")
            .collect(Collectors.joining());
    put(now + (now.endsWith("\n") ? "" : "\n") + more);
    this.before.push(before);
  }

  /** The sheet with one more column: a comma before the end of each row, quoted ends left alone. */
  private static String wider(String sheet) {
    StringBuilder out = new StringBuilder();
    boolean quoted = false;
    int from = 0;
    for (int i = 0; i <= sheet.length(); i++) {
      boolean end = i == sheet.length() || sheet.charAt(i) == '\n';
      quoted ^= !end && sheet.charAt(i) == '"';
      if (end && !quoted) {
        String row = sheet.substring(from, i);
        String bare = row.endsWith("\r") ? row.substring(0, row.length() - 1) : row;
        out.append(bare)
            .append(bare.isBlank() ? "" : from == 0 ? "," + ERROR : ",")
            .append(row, bare.length(), row.length())
            .append(i < sheet.length() ? "\n" : "");
        from = i + 1;
      }
    }
    return out.toString();
  }

  private static String cell(String words) {
    String safe = words.matches("-?[0-9.:]*") ? words : CsvOut.guarded(words);
    return safe.matches("[^,\";\\n]*") ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
  }

  /** Takes the rows added last out again; false when there are none. */
  synchronized boolean undo() throws IOException {
    if (before.isEmpty()) {
      return false;
    }
    put(before.peek());
    columns = columns(before.pop());
    return true;
  }

  private void put(String text) throws IOException {
    place.write(text);
    place.move();
  }
}
