package twostrides.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Files of a folder. A folder that we wrote carries the list of its own files, in UTF-8, one path a
 * line; whatever is not on it is somebody else's.
 *
 * @param paths paths inside the folder, with forward slashes
 */
record FileList(NavigableSet<String> paths) {

  /** The list, in the folder. */
  static final String NAME = "book-files.txt";

  private static final String HEADER =
      "# Files that two-strides wrote into this folder. A later run replaces these and no others.";

  /** Copies and sorts the paths. */
  FileList {
    paths = Collections.unmodifiableNavigableSet(new TreeSet<>(paths));
  }

  FileList(Collection<String> paths) {
    this(new TreeSet<>(paths));
  }

  /** Every file below a folder; links are not followed. */
  static FileList below(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return new FileList(
          all.filter(f -> !isFolder(f))
              .map(f -> folder.relativize(f).toString().replace('\\', '/'))
              .toList());
    }
  }

  /**
   * Reads a list.
   *
   * @param file the list
   * @throws OutputException when a line leads out of the folder
   */
  static FileList read(Path file) throws OutputException, IOException {
    List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    NavigableSet<String> paths = new TreeSet<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (!line.isBlank() && !line.startsWith("#")) {
        if (!staysInside(line)) {
          throw new OutputException(
              file
                  + ", line "
                  + (i + 1)
                  + ": found \""
                  + line
                  + "\", expected the path of a file inside the folder. Nothing was written. Name"
                  + " another folder with --out, or move this one away.");
        }
        paths.add(line);
      }
    }
    return new FileList(paths);
  }

  /** Whether a path names something inside the folder that it is put to. */
  static boolean staysInside(String path) {
    try {
      Path p = Path.of(path);
      boolean plain = Stream.of(path.split("/", -1)).noneMatch(List.of("", ".", "..")::contains);
      return plain && path.indexOf('\\') < 0 && p.getRoot() == null;
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** Writes the list. */
  void write(Path file) throws IOException {
    Files.writeString(file, HEADER + "\n" + lines(""), StandardCharsets.UTF_8);
  }

  /** The paths, one a line, each after the same words. */
  String lines(String before) {
    return paths.stream().map(p -> before + p + "\n").collect(Collectors.joining());
  }

  /** This list with one more path. */
  FileList with(String path) {
    NavigableSet<String> more = new TreeSet<>(paths);
    more.add(path);
    return new FileList(more);
  }

  /**
   * Those that are there as plain files in plain folders. Where somebody put a link or a folder in
   * a file's place, that is not ours.
   *
   * @param folder the folder that carries this list
   */
  FileList present(Path folder) {
    return new FileList(
        paths.stream()
            .filter(p -> Files.isRegularFile(folder.resolve(p), LinkOption.NOFOLLOW_LINKS))
            .filter(p -> folders(p).stream().allMatch(d -> isFolder(folder.resolve(d))))
            .toList());
  }

  /**
   * What stands in a folder where these files shall come to stand.
   *
   * @param folder the folder
   * @param own files of the folder that may be replaced
   * @return paths in the folder, sorted
   */
  NavigableSet<String> inTheWay(Path folder, FileList own) {
    NavigableSet<String> foreign = new TreeSet<>();
    for (String path : paths) {
      if (exists(folder.resolve(path)) && !own.paths.contains(path)) {
        foreign.add(path);
      }
      for (String d : folders(path)) {
        Path at = folder.resolve(d);
        if (exists(at) && !isFolder(at) && !own.paths.contains(d)) {
          foreign.removeIf(f -> f.startsWith(d + "/"));
          foreign.add(d);
          break;
        }
      }
    }
    return foreign;
  }

  /** The folders that these files stand in, the deepest first. */
  List<String> folders() {
    NavigableSet<String> all = new TreeSet<>(Collections.reverseOrder());
    paths.forEach(p -> all.addAll(folders(p)));
    return List.copyOf(all);
  }

  /** The folders of a path, the outermost first. */
  private static List<String> folders(String path) {
    List<String> folders = new ArrayList<>();
    for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
      folders.add(path.substring(0, slash));
    }
    return folders;
  }

  static boolean exists(Path file) {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static boolean isFolder(Path file) {
    return Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS);
  }
}
