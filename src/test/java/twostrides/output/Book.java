package twostrides.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Small books: the same few files, some of them named by the book's letter. */
final class Book {

  private static final List<String> FILES =
      List.of("index.html", "run.json", "data/exits.csv", "clips/flags.csv");

  private Book() {}

  /** The files of a book, without its list. */
  static List<String> files(String letter) {
    return Stream.concat(FILES.stream(), Stream.of("players/" + letter + "-berg.html")).toList();
  }

  /** Writes a book by the way that is tested, foreign files or not. */
  static void write(Path out, String letter, List<Path> inputs, Swap.Step step)
      throws OutputException, IOException {
    try (OutputFolder folder = OutputFolder.at(out, inputs, step)) {
      for (String f : files(letter)) {
        put(folder.writing().resolve(f), "book " + letter);
      }
      folder.finish();
    }
  }

  static void write(Path out, String letter) throws OutputException, IOException {
    write(out, letter, List.of(), s -> {});
  }

  /** A file with its folders. */
  static Path put(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  /** Everything below a folder: files with their text, links with their target, folders. */
  static SortedMap<String, String> tree(Path top) throws IOException {
    SortedMap<String, String> tree = new TreeMap<>();
    try (Stream<Path> all = Files.walk(top)) {
      all.filter(p -> !p.equals(top)).forEach(p -> tree.put(top.relativize(p).toString(), say(p)));
    }
    return tree;
  }

  private static String say(Path p) {
    try {
      if (Files.isSymbolicLink(p)) {
        return "link to " + Files.readSymbolicLink(p);
      }
      return Files.isDirectory(p, LinkOption.NOFOLLOW_LINKS) ? "folder" : Files.readString(p);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
