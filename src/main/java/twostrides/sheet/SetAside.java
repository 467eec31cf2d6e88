package twostrides.sheet;

import java.io.IOException;
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
import java.util.TreeSet;

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
    Map<String, List<RowWords>> bySheet = new TreeMap<>();
    for (DoubtfulRow doubtful : rows) {
      bySheet.computeIfAbsent(doubtful.row().file(), f -> new ArrayList<>()).add(doubtful.row());
    }
    Set<String> taken = new HashSet<>(Set.of(PROBLEMS));
    for (Map.Entry<String, List<RowWords>> sheet : bySheet.entrySet()) {
      StringBuilder text = new StringBuilder();
      text.append(sheet.getValue().get(0).headerLine()).append('\n');
      sheet.getValue().forEach(row -> text.append(row.raw()).append('\n'));
      Files.writeString(dir.resolve(freeName(sheet.getKey(), taken)), text, StandardCharsets.UTF_8);
    }
    writeProblems(dir.resolve(PROBLEMS), rows, files);
  }

  private static void writeProblems(Path file, List<DoubtfulRow> rows, List<SheetException> broken)
      throws IOException {
    try (CsvOut out = new CsvOut(file)) {
      out.row("file", "line", "column", "value", "expected", "what_to_do");
      Map<String, String> names = names(rows, broken);
      for (SheetException e : broken) {
        String line = e.line().isPresent() ? Long.toString(e.line().getAsLong()) : "";
        out.row(names.get(e.file()), line, e.place(), e.found(), e.expected(), e.toDo());
      }
      for (DoubtfulRow row : rows) {
        for (Problem p : row.problems()) {
          out.row(names.get(p.file()), p.line(), p.column(), p.value(), p.expected(), p.toDo());
        }
      }
    }
  }

  /**
   * What sheets are called: by the end of their paths, no longer than it takes to tell them apart,
   * so that the place of a folder on this machine does not travel with the book.
   */
  private static Map<String, String> names(List<DoubtfulRow> rows, List<SheetException> broken) {
    Set<String> files = new TreeSet<>();
    broken.forEach(e -> files.add(e.file()));
    rows.forEach(row -> row.problems().forEach(p -> files.add(p.file())));
    Map<String, String> names = new TreeMap<>();
    for (int parts = 1; names.size() < files.size(); parts++) {
      Map<String, List<String>> alike = new TreeMap<>();
      for (String file : files) {
        alike.computeIfAbsent(end(file, parts), n -> new ArrayList<>()).add(file);
      }
      for (Map.Entry<String, List<String>> name : alike.entrySet()) {
        String longer = name.getKey();
        int more = parts + 1;
        if (name.getValue().size() == 1
            || name.getValue().stream().allMatch(f -> end(f, more).equals(longer))) {
          name.getValue().forEach(file -> names.putIfAbsent(file, name.getKey()));
        }
      }
    }
    return names;
  }

  private static String end(String file, int parts) {
    Path whole = Path.of(file).toAbsolutePath().normalize();
    int count = whole.getNameCount();
    return SheetText.display(whole.subpath(Math.max(0, count - parts), count));
  }

  /** The sheet's file name made safe for every system, numbered when another sheet took it. */
  private static String freeName(String file, Set<String> taken) {
    String given = Packed.unpackedName(file.substring(file.lastIndexOf('/') + 1));
    // Rows of JSON are written as cells.
    String name = SheetFiles.isJson(Path.of(given)) ? Sheet.stem(Path.of(given)) + ".csv" : given;
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
