package twostrides.tag;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * The place of the sheet on the disk: it is written beside it, flushed, and moved there in one
 * step, so that whoever reads it finds the old sheet or the new one, never half of one.
 *
 * @param file the sheet
 */
record SheetPlace(Path file) {

  /** Digest of a sheet that is not there. */
  static final String NONE = "none";

  /** Where the sheet stands until it is moved. */
  Path writing() {
    return beside(".writing");
  }

  /** The journal. */
  Path journal() {
    return beside(".journal");
  }

  private Path beside(String ending) {
    return file.resolveSibling(file.getFileName() + ending);
  }

  /** Writes the text beside its place, down to the disk. */
  void write(String text) throws IOException {
    try (FileChannel out =
        FileChannel.open(
            writing(),
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
      while (bytes.hasRemaining()) {
        out.write(bytes);
      }
      out.force(true);
    }
  }

  /** Moves what was written to its place. */
  void move() throws IOException {
    try {
      Files.move(
          writing(), file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(writing(), file, StandardCopyOption.REPLACE_EXISTING);
    }
    flushFolder();
  }

  /** Takes away what was written and not moved. */
  void abandon() throws IOException {
    Files.deleteIfExists(writing());
  }

  /** Digest of the sheet as it stands. */
  String digest() throws IOException {
    return Files.exists(file) ? digest(Files.readAllBytes(file)) : NONE;
  }

  /** Digest of a text as it would be written. */
  static String digest(String text) {
    return digest(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String digest(byte[] bytes) {
    return DigestUtils.sha256Hex(bytes);
  }

  /** Not every system can flush a folder; the journal holds everything all the same. */
  private void flushFolder() {
    Path folder = file.toAbsolutePath().getParent();
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      return;
    }
  }
}
