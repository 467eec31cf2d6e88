package twostrides.cache;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * A folder of bytes by keys. A file is whole or it is not there: it is written beside and moved,
 * and begins with the hash of what it holds. Files of others in the folder are left alone; ours can
 * be deleted at any time.
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
    MessageDigest digest = digest();
    for (String word : words) {
      byte[] utf8 = word.getBytes(StandardCharsets.UTF_8);
      digest.update((utf8.length + ":").getBytes(StandardCharsets.UTF_8));
      digest.update(utf8);
    }
    return HexFormat.of().formatHex(digest.digest());
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
      return Arrays.equals(file, 0, HASH, digest().digest(bytes), 0, HASH)
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
    packed.write(digest().digest(bytes));
    Deflater fast = new Deflater(Deflater.BEST_SPEED);
    try (DeflaterOutputStream out = new DeflaterOutputStream(packed, fast)) {
      out.write(bytes);
    } finally {
      fast.end();
    }
    Path beside = Files.createTempFile(dir, key, ENDING);
    try {
      Files.write(beside, packed.toByteArray());
      Files.move(
          beside, file(key), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private Path file(String key) {
    return dir.resolve(key + ENDING);
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
