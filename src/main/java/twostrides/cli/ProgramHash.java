package twostrides.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipFile;
import twostrides.cache.CacheFolder;

/**
 * Which program this is, to the byte: what another build kept is none of ours. A version alone does
 * not tell, as it stays while the program is worked on.
 */
final class ProgramHash {
  private ProgramHash() {}

  /** Alike for programs that are alike. */
  static String get() {
    try {
      Path program =
          Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return CacheFolder.key(Files.isDirectory(program) ? ofFolder(program) : ofJar(program));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A jar says the sum of each of its files without their being read. */
  private static List<String> ofJar(Path jar) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      return zip.stream().map(e -> e.getName() + " " + e.getCrc()).sorted().toList();
    }
  }

  private static List<String> ofFolder(Path classes) throws IOException {
    List<String> sums = new ArrayList<>();
    try (Stream<Path> files = Files.walk(classes)) {
      for (Path f : files.filter(Files::isRegularFile).sorted().toList()) {
        CRC32 sum = new CRC32();
        sum.update(Files.readAllBytes(f));
        sums.add(classes.relativize(f) + " " + sum.getValue());
      }
    }
    return sums;
  }
}
