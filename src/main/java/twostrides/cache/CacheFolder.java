package twostrides.cache;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.apache.commons.codec.digest.DigestUtils;
import twostrides.output.WholeFile;

/**
 * A folder of bytes by keys. A file is whole or it is not there: it begins with the hash of what it
 * holds. Files of others in the folder are left alone; ours can be deleted at any time.
 */
public final class CacheFolder {

  private static final String ENDING = ".kept";

  private static final int HASH = 32;

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
      if (file.length <= HASH) {
        return Optional.empty();
      }
      byte[] bytes =
          new InflaterInputStream(new ByteArrayInputStream(file, HASH, file.length - HASH))
              .readAllBytes();
      return Arrays.equals(file, 0, HASH, DigestUtils.sha256(bytes), 0, HASH)
          ? Optional.of(bytes)
          : Optional.empty();
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
    packed.write(DigestUtils.sha256(bytes));
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

  private Path file(String key) {
    return dir.resolve(key + ENDING);
  }
}
