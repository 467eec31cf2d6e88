package twostrides.output;

import java.io.IOException;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * A single file that is written whole or not at all: beside its place, and moved there when it is
 * on the disk.
 */
public final class WholeFile {

  private WholeFile() {}

  /**
   * Writes a file.
   *
   * @param file its place, in a folder that exists
   * @param bytes what it shall hold
   * @param options how to move it there; without {@code REPLACE_EXISTING} a file that stands there
   *     stays
   * @throws IOException when the disk refuses; the place is as it was then
   */
  public static void write(Path file, byte[] bytes, CopyOption... options) throws IOException {
    Path half = file.resolveSibling(".two-strides-" + UUID.randomUUID() + ".part");
    try {
      Files.write(half, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      Files.move(half, file, options);
    } finally {
      Files.deleteIfExists(half);
    }
  }
}
