package twostrides.cache;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.apache.commons.codec.digest.DigestUtils;
import twostrides.output.WholeFile;

/**
 * A folder of bytes by keys. A file is whole or it is not there: it begins with the CRC-32C of what
 * it holds. Files of others in the folder are left alone; ours can be deleted at any time.
 */
public final class CacheFolder {

  private static final String ENDING = ".kept";

  /** Bytes of the sum at the beginning. */
  private static final int SUM = Long.BYTES;

  private final Path dir;

  /**
   * A folder, made when missing.
   *
   * @param dir the folder
   * @throws IOException when it cannot be made or written to
   */
  public CacheFolder(Path dir) throws IOException {
    this.dir = Files.createDirectories(dir);
    Files.delete(Files.createTempFile(dir, "probe", ENDING));
  }

  /**
   * A key: alike for words that are alike.
   *
   * @param words whatever the bytes depend on
   */
  public static String key(List<String> words) {
    StringBuilder text = new StringBuilder();
    words.forEach(w -> text.append(w.length()).append(':').append(w));
    return DigestUtils.sha256Hex(text.toString());
  }

  /**
   * The bytes of a key; empty where there are none, or they are damaged.
   *
   * @param key a key
   */
  public Optional<byte[]> get(String key) {
    try {
      byte[] file = Files.readAllBytes(file(key));
      if (file.length <= SUM) {
        return Optional.empty();
      }
      byte[] bytes =
          new InflaterInputStream(new ByteArrayInputStream(file, SUM, file.length - SUM))
              .readAllBytes();
      return ByteBuffer.wrap(file).getLong() == sum(bytes) ? Optional.of(bytes) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * Keeps bytes.
   *
   * @param key their key
   * @param bytes the bytes
   * @throws IOException when they cannot be written; nothing is half-written then
   */
  public void put(String key, byte[] bytes) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    packed.write(ByteBuffer.allocate(SUM).putLong(sum(bytes)).array());
    Deflater fast = new Deflater(Deflater.BEST_SPEED);
    try (DeflaterOutputStream out = new DeflaterOutputStream(packed, fast)) {
      out.write(bytes);
    } finally {
      fast.end();
    }
    WholeFile.write(
        file(key),
        packed.toByteArray(),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  private static long sum(byte[] bytes) {
    CRC32C sum = new CRC32C();
    sum.update(bytes);
    return sum.getValue();
  }

  private Path file(String key) {
    return dir.resolve(key + ENDING);
  }
}
