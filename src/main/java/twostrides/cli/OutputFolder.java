package twostrides.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.stream.Stream;

/**
 * An output folder that is written beside its place and moved there when it is whole, so that a run
 * that stops half way leaves the last book as it was. A folder that holds something else is never
 * replaced.
 */
final class OutputFolder {

  /** The file by which a folder is known as one of ours. */
  static final String MARK = "run.json";

  private final Path target;
  private final Path writing;

  private OutputFolder(Path target, Path writing) {
    this.target = target;
    this.writing = writing;
  }

  /**
   * Prepares a folder.
   *
   * @param target where the output shall be
   * @throws OutputException when the place holds something that is not ours
   * @throws IOException when the folder cannot be made
   */
  static OutputFolder at(Path target) throws OutputException, IOException {
    Path absolute = target.toAbsolutePath().normalize();
    if (Files.exists(absolute) && !Files.isDirectory(absolute)) {
      throw new OutputException(
          "The output "
              + target
              + " is a file. Name a folder with --out, one that does not exist yet or an old book.");
    }
    if (Files.isDirectory(absolute)
        && !Files.exists(absolute.resolve(MARK))
        && !isEmpty(absolute)) {
      throw new OutputException(
          "The folder "
              + target
              + " holds files that are no review book. Name another folder with --out, or empty it yourself.");
    }
    Path writing = absolute.resolveSibling(absolute.getFileName() + ".writing");
    delete(writing);
    Files.createDirectories(writing);
    return new OutputFolder(absolute, writing);
  }

  /** Where to write until {@link #finish}. */
  Path writing() {
    return writing;
  }

  /** Moves what was written to its place. */
  Path finish() throws IOException {
    Path old = target.resolveSibling(target.getFileName() + ".old");
    delete(old);
    if (Files.exists(target)) {
      Files.move(target, old);
    }
    Files.move(writing, target);
    delete(old);
    return target;
  }

  /** Throws away what was written so far. */
  void abandon() throws IOException {
    delete(writing);
  }

  private static boolean isEmpty(Path dir) throws IOException {
    try (Stream<Path> files = Files.list(dir)) {
      return files.findAny().isEmpty();
    }
  }

  private static void delete(Path dir) throws IOException {
    if (!Files.exists(dir)) {
      return;
    }
    Files.walkFileTree(
        dir,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path d, IOException e) throws IOException {
            if (e != null) {
              throw e;
            }
            Files.delete(d);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
