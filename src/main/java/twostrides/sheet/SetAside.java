package twostrides.sheet;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes what was not used: for each sheet a file with the sheet's own header line and the rows in
 * their own words, so that they can be corrected and read again, and {@code problems.csv} with the
 * reasons. UTF-8, lines end with LF between rows.
 */
public final class SetAside {
  /** The file with the reasons. */
  public static final String PROBLEMS = "problems.csv";

  /** Longest name of a file written here, in characters, without number and extension. Assumed. */
  private static final int LONGEST_NAME = 100;

  private SetAside() {}

  /**
   * Writes the folder. Files of an earlier run that carry other names are left alone.
   *
   * @param dir the folder, made when missing
   * @param rows the rows, in the order in which {@code problems.csv} lists them
   * @param files the files that could not be read at all
   * @throws IOException when the folder cannot be written
   */
  public static void write(Path dir, List<DoubtfulRow> rows, List<SheetException> files)
      throws IOException {
    Files.createDirectories(dir);
    Map<String, List<SheetRow>> bySheet = new TreeMap<>();
    for (DoubtfulRow doubtful : rows) {
      bySheet.computeIfAbsent(doubtful.row().file(), f -> new ArrayList<>()).add(doubtful.row());
    }
    Set<String> taken = new HashSet<>(Set.of(PROBLEMS));
    for (Map.Entry<String, List<SheetRow>> sheet : bySheet.entrySet()) {
      StringBuilder text = new StringBuilder();
      text.append(sheet.getValue().get(0).headerLine()).append('\n');
      sheet.getValue().forEach(row -> text.append(row.raw()).append('\n'));
      Files.writeString(dir.resolve(freeName(sheet.getKey(), taken)), text, StandardCharsets.UTF_8);
    }
    writeProblems(dir.resolve(PROBLEMS), rows, files);
  }

  private static void writeProblems(Path file, List<DoubtfulRow> rows, List<SheetException> broken)
      throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        CSVPrinter printer = new CSVPrinter(out, format)) {
      printer.printRecord("file", "line", "column", "value", "expected", "what_to_do");
      for (SheetException e : broken) {
        printer.printRecord(
            guarded(e.file()),
            e.line().isPresent() ? Long.toString(e.line().getAsLong()) : "",
            guarded(e.place()),
            guarded(e.found()),
            guarded(e.expected()),
            guarded(e.toDo()));
      }
      for (DoubtfulRow row : rows) {
        for (Problem problem : row.problems()) {
          printer.printRecord(
              guarded(problem.file()),
              problem.line(),
              guarded(problem.column()),
              guarded(problem.value()),
              guarded(problem.expected()),
              guarded(problem.toDo()));
        }
      }
    }
  }

  /** A spreadsheet runs a cell that begins with one of these; an apostrophe keeps it text. */
  private static String guarded(String text) {
    boolean runs = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    return runs && !text.matches("[+-]\\d+(\\.\\d+)?") ? "'" + text : text;
  }

  /** The sheet's file name made safe for every system, numbered when another sheet took it. */
  private static String freeName(String file, Set<String> taken) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    int dot = name.lastIndexOf('.');
    String stem = safe(dot > 0 ? name.substring(0, dot) : name);
    String extension = dot > 0 ? "." + safe(name.substring(dot + 1)) : ".csv";
    String free = stem + extension;
    for (int n = 2; !taken.add(free.toLowerCase(Locale.ROOT)); n++) {
      free = stem + "-" + n + extension;
    }
    return free;
  }

  private static String safe(String name) {
    StringBuilder out = new StringBuilder();
    name.codePoints()
        .limit(LONGEST_NAME)
        .map(c -> Character.isLetterOrDigit(c) || "-_. ".indexOf(c) >= 0 ? c : '_')
        .forEach(out::appendCodePoint);
    String text = out.toString().strip();
    return text.isEmpty() || text.startsWith(".") ? "_" + text : text;
  }
}
