package twostrides.cli;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.codec.binary.Hex;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * The program's classes as Java has read them, for the processes that tests start: one that reviews
 * a sheet saves a second of a processor. They are of a jar, as Java keeps no classes of a folder,
 * and are made once for all processes of a build.
 */
final class KeptClasses {

  /**
   * Words that tell Java where the program, its libraries and the tests are, seen from anywhere.
   */
  static final List<String> OPTIONS = options();

  private KeptClasses() {}

  private static List<String> options() {
    try {
      Path program =
          Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      Path folder = Files.createDirectories(program.resolveSibling("kept-for-tests"));
      Path jar = folder.resolve("program.jar");
      Path kept = folder.resolve("program.jsa");
      // What is kept is of a class path that begins like the present one: folders come last.
      List<Path> path =
          Stream.concat(Stream.of(jar), classPath().filter(p -> !p.equals(program)))
              .sorted(Comparator.comparing(Files::isDirectory))
              .toList();
      try (FileChannel channel =
              FileChannel.open(
                  folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          FileLock held = channel.lock()) {
        Path sum = folder.resolve("program.sum");
        String now = sum(program);
        if (held.isValid() && !(Files.exists(sum) && Files.readString(sum).equals(now))) {
          make(program, jar, path.stream().filter(p -> !Files.isDirectory(p)).toList(), kept);
          Files.writeString(sum, now);
        }
      }
      return List.of(
          "-XX:SharedArchiveFile=" + kept,
          "-Xlog:disable",
          "-Xlog:all=error:stderr",
          "-cp",
          joined(path));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Stream<Path> classPath() {
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    return Stream.of(path.split(File.pathSeparator)).map(p -> Path.of(p).toAbsolutePath());
  }

  private static String joined(List<Path> path) {
    return path.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
  }

  /** Changes with every class. */
  private static String sum(Path program) throws IOException {
    MessageDigest sum = DigestUtils.getSha256Digest();
    try (Stream<Path> files = Files.walk(program)) {
      for (Path f : files.filter(Files::isRegularFile).sorted().toList()) {
        sum.update(program.relativize(f).toString().getBytes(StandardCharsets.UTF_8));
        sum.update(Files.readAllBytes(f));
      }
    }
    return Hex.encodeHexString(sum.digest());
  }

  private static void make(Path program, Path jar, List<Path> path, Path kept)
      throws IOException, InterruptedException {
    ToolProvider packer = ToolProvider.findFirst("jar").orElseThrow();
    List<String> words = List.of("-c", "-f", jar.toString(), "-C", program.toString(), ".");
    int packed = packer.run(System.out, System.err, words.toArray(String[]::new));
    Path book = Files.createTempDirectory("two-strides-kept");
    List<String> line = new ArrayList<>(Child.start());
    line.addAll(List.of("-XX:ArchiveClassesAtExit=" + kept, "-Xlog:disable", "-cp", joined(path)));
    line.addAll(List.of(Main.class.getName(), "review", SampleBook.games().get(0).toString()));
    line.addAll(List.of("--out", book.resolve("book").toString()));
    Child run = Child.run(line);
    SampleBook.remove(book);
    if (packed != 0 || run.code() != 0) {
      throw new IOException("no classes kept: " + run.said());
    }
  }
}
