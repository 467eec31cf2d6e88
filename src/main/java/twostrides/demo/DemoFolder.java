package twostrides.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.codec.digest.DigestUtils;
import twostrides.output.OutputException;
import twostrides.output.WholeFile;

/**
 * A folder that a demo season is written to. It carries the list of the files that were written
 * there, each with its SHA-256 sum; a file that is not on the list, or has changed since, is never
 * replaced.
 */
final class DemoFolder {
  /** The list, in the folder: one file a line, in the form of {@code sha256sum}. */
  static final String LIST = "demo-files.sha256";

  private static final String BETWEEN = "  ";
  private static final int MOST_NAMED = 5;

  private final Path folder;
  private final SortedMap<String, Set<String>> sums = new TreeMap<>();

  private DemoFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Opens a folder, or makes it.
   *
   * @param folder where to write
   * @param planned paths that will be written, in the folder, with forward slashes
   * @throws OutputException when one of them is there and was not written by a demo run, or has
   *     changed since; nothing was written then
   * @throws IOException when the disk refuses
   */
  static DemoFolder at(Path folder, List<String> planned) throws OutputException, IOException {
    DemoFolder opened = new DemoFolder(folder);
    opened.readList();
    List<String> foreign = new ArrayList<>();
    for (String path : planned) {
      if (!opened.mayWrite(path)) {
        foreign.add(path);
      }
    }
    if (!foreign.isEmpty()) {
      throw new OutputException(
          "The folder "
              + folder
              + " holds files that demo would write over and did not write, or that have changed"
              + " since: "
              + foreign.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
              + (foreign.size() > MOST_NAMED ? " and more" : "")
              + ". Move them away, or name another folder with --out. Nothing was written.");
    }
    return opened;
  }

  private void readList() throws IOException {
    Path list = folder.resolve(LIST);
    if (Files.exists(list)) {
      for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
        int between = line.indexOf(BETWEEN);
        if (between > 0) {
          sums.computeIfAbsent(line.substring(between + BETWEEN.length()), p -> new TreeSet<>())
              .add(line.substring(0, between));
        }
      }
    }
  }

  private boolean mayWrite(String path) throws IOException {
    Path file = folder.resolve(path);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && sums.getOrDefault(path, Set.of())
            .contains(DigestUtils.sha256Hex(Files.readAllBytes(file)));
  }

  /**
   * Writes a file.
   *
   * @param path in the folder, with forward slashes
   * @throws IOException when the disk refuses
   */
  void put(String path, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    // Listed first: a run that is stopped right here must know the file for its own later.
    String line = "\n" + DigestUtils.sha256Hex(bytes) + BETWEEN + path + "\n";
    Files.writeString(
        folder.resolve(LIST), line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    WholeFile.write(file, bytes, StandardCopyOption.REPLACE_EXISTING);
    sums.put(path, Set.of(DigestUtils.sha256Hex(bytes)));
  }

  /**
   * Writes the list anew, a line a file. Until then it has the file's earlier sums, too.
   *
   * @throws IOException when the disk refuses
   */
  void writeList() throws IOException {
    String text =
        sums.entrySet().stream()
            .flatMap(file -> file.getValue().stream().map(s -> s + BETWEEN + file.getKey() + "\n"))
            .collect(Collectors.joining());
    WholeFile.write(
        folder.resolve(LIST),
        text.getBytes(StandardCharsets.UTF_8),
        StandardCopyOption.REPLACE_EXISTING);
  }
}
