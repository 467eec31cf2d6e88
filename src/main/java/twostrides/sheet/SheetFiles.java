package twostrides.sheet;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.codec.digest.DigestUtils;

/** Finds the sheets that a command line names. */
public final class SheetFiles {
  private static final List<String> EXTENSIONS =
      List.of(".csv", ".tsv", ".txt", ".jsonl", ".ndjson");
  private static final String JSON = ".json";

  /** Characters that make an argument a pattern. */
  private static final String PATTERN_CHARACTERS = "*?[{";

  /** What stands for letters that cannot be said. */
  private static final char UNSPEAKABLE = '\uFFFD';

  private SheetFiles() {}

  /**
   * The sheets that arguments name: a file; a folder, for its own files that end in .csv, .tsv,
   * .txt, .jsonl or .ndjson (or the same with .gz behind) and do not begin with a dot; or a pattern
   * such as {@code games/*.csv}, in which {@code **} reaches into folders. A zip file stands for
   * the sheets in it.
   *
   * @param args the arguments
   * @return each file once, in the order of file names, those of the same name in the order of
   *     their paths
   * @throws SheetException when an argument names nothing
   */
  public static List<Path> find(List<String> args) throws SheetException {
    Map<Path, Path> found = new LinkedHashMap<>();
    for (String arg : args) {
      List<Path> files;
      try {
        files = named(arg);
      } catch (IOException e) {
        throw nothing(arg, "a folder that cannot be read");
      }
      if (files.isEmpty()) {
        refuseUnspeakable(arg, arg);
        throw nothing(arg, "no sheet by that name");
      }
      for (Path file : files) {
        refuseUnspeakable(file);
        for (Path sheet : unpacked(arg, file)) {
          found.putIfAbsent(identity(sheet), sheet);
        }
      }
    }
    List<Path> sorted = new ArrayList<>(found.values());
    sorted.sort(Comparator.comparing(Sheet::fileName).thenComparing(SheetText::display));
    return List.copyOf(sorted);
  }

  /** The sheets in a zip file, or the file itself. */
  private static List<Path> unpacked(String arg, Path file) throws SheetException {
    if (!Packed.isZip(file)) {
      return List.of(file);
    }
    List<Path> sheets;
    try {
      MessageDigest digest = DigestUtils.getSha256Digest();
      try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
        in.transferTo(OutputStream.nullOutputStream());
      }
      FilesRead.whole(file, digest);
      sheets =
          Packed.inside(file).stream()
              .filter(f -> isSheet(f) || isJson(f) || WorkbookRecords.isWorkbook(f))
              .toList();
    } catch (IOException | RuntimeException e) {
      throw nothing(arg, "a zip file that cannot be unpacked");
    }
    if (sheets.isEmpty()) {
      throw nothing(arg, "a zip file with no sheet in it");
    }
    return sheets;
  }

  /** Whether a sheet is JSON by its name: objects instead of lines of cells. */
  static boolean isJson(Path file) {
    return lowerName(file).endsWith(JSON) || isJsonLines(file);
  }

  /** Whether it has an object on each line by its name. */
  static boolean isJsonLines(Path file) {
    return lowerName(file).endsWith(".jsonl") || lowerName(file).endsWith(".ndjson");
  }

  private static String lowerName(Path file) {
    return Packed.unpackedName(Sheet.fileName(file).toLowerCase(Locale.ROOT));
  }

  /**
   * A sheet as messages call it: its path with forward slashes, in a zip file behind that file's.
   *
   * @param file the sheet
   */
  public static String display(Path file) {
    return SheetText.display(file);
  }

  /**
   * The files on the disk that hold sheets: zip files instead of what is in them.
   *
   * @param files sheets
   */
  public static List<Path> onDisk(List<Path> files) {
    FileSystem disk = FileSystems.getDefault();
    return files.stream()
        .map(f -> f.getFileSystem() == disk ? f : Path.of(f.getFileSystem().toString()))
        .distinct()
        .toList();
  }

  /** A name that came out as other letters would stand in the book as those. */
  private static void refuseUnspeakable(Path file) throws SheetException {
    refuseUnspeakable(SheetText.display(file), Sheet.fileName(file));
  }

  private static void refuseUnspeakable(String shown, String name) throws SheetException {
    if (name.indexOf(UNSPEAKABLE) >= 0) {
      throw SheetException.ofFile(
          shown,
          "a name with letters that the character set of this machine, "
              + System.getProperty("sun.jnu.encoding", "which is unknown")
              + ", does not have",
          "a name in its letters",
          "Rename the file in plain letters, or use UTF-8 (on Linux: LC_ALL=C.UTF-8).");
    }
  }

  private static SheetException nothing(String arg, String found) {
    return SheetException.ofFile(
        arg,
        found,
        "a file, a folder with .csv, .tsv or .txt files, or a pattern in quotes such as"
            + " \"games/*.csv\"",
        "Check the spelling, and the folder that you are in.");
  }

  private static List<Path> named(String arg) throws IOException {
    Optional<Path> literal = path(arg);
    if (literal.isPresent() && Files.isRegularFile(literal.get())) {
      return List.of(literal.get());
    }
    if (literal.isPresent() && Files.isDirectory(literal.get())) {
      try (Stream<Path> files = Files.list(literal.get())) {
        return files.filter(SheetFiles::isSheet).toList();
      }
    }
    return matching(arg);
  }

  private static boolean isSheet(Path file) {
    String name = lowerName(file);
    return Files.isRegularFile(file)
        && !name.startsWith(".")
        && EXTENSIONS.stream().anyMatch(name::endsWith);
  }

  private static List<Path> matching(String arg) throws IOException {
    String pattern = File.separatorChar == '\\' ? arg.replace('\\', '/') : arg;
    int first = 0;
    while (first < pattern.length() && PATTERN_CHARACTERS.indexOf(pattern.charAt(first)) < 0) {
      first++;
    }
    int slash = pattern.substring(0, first).lastIndexOf('/');
    Optional<Path> base = path(pattern.substring(0, slash + 1));
    String rest = pattern.substring(slash + 1);
    if (first == pattern.length() || base.isEmpty() || !Files.isDirectory(base.get())) {
      return List.of();
    }
    PathMatcher matcher;
    try {
      matcher = FileSystems.getDefault().getPathMatcher("glob:" + rest);
    } catch (IllegalArgumentException e) {
      return List.of();
    }
    int depth = rest.contains("**") ? Integer.MAX_VALUE : rest.split("/", -1).length;
    try (Stream<Path> files = Files.walk(base.get(), depth)) {
      return files
          .filter(f -> Files.isRegularFile(f) && !Sheet.fileName(f).startsWith("."))
          .filter(f -> matcher.matches(base.get().relativize(f)))
          .toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static Optional<Path> path(String text) {
    try {
      return Optional.of(Path.of(text));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static Path identity(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      return file.toAbsolutePath().normalize();
    }
  }
}
