package twostrides.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.apache.commons.codec.binary.Hex;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * Which bytes a run read, by their SHA-256. Every sheet and every map is hashed as it is read, so
 * that the hash belongs to what was counted and not to what stands in the file later. A file that a
 * run reads twice, once for its header and once for its rows, or once a game, has to hold the same
 * bytes each time.
 *
 * <p>It belongs to the thread that began it, and to those that read for it ({@link #shared});
 * without one nothing is kept.
 */
public final class FilesRead {
  private static final ThreadLocal<FilesRead> RUN = new ThreadLocal<>();

  private final Map<Path, String> sums = new ConcurrentHashMap<>();

  private FilesRead() {}

  /**
   * Keeps what this thread reads while something runs.
   *
   * @param run what runs; it gives back what it likes
   */
  public static <T> T during(Supplier<T> run) {
    FilesRead outer = RUN.get();
    RUN.set(new FilesRead());
    try {
      return run.get();
    } finally {
      RUN.set(outer);
    }
  }

  /**
   * What reads for this thread's run, on whatever thread.
   *
   * @param reading what reads
   */
  public static <T> Supplier<T> shared(Supplier<T> reading) {
    FilesRead run = RUN.get();
    return () -> {
      FilesRead outer = RUN.get();
      RUN.set(run);
      try {
        return reading.get();
      } finally {
        RUN.set(outer);
      }
    };
  }

  /**
   * The SHA-256 of the bytes that this thread's run read from a file, in hex; empty when it read
   * none, or not to the end.
   *
   * @param file the file
   */
  public static Optional<String> sha256(Path file) {
    return Optional.ofNullable(RUN.get()).map(run -> run.sums.get(identity(file)));
  }

  /**
   * The SHA-256 of a file's bytes as this thread's run read them; a file not read yet is read for
   * it. Empty where it is no file that can be read to its end.
   *
   * @param file the file
   * @throws SheetException when the run read other bytes from it before
   */
  public static Optional<String> hashed(Path file) throws SheetException {
    Optional<String> before = sha256(file);
    if (before.isPresent()) {
      return before;
    }
    MessageDigest digest = DigestUtils.getSha256Digest();
    try {
      if (!Files.isRegularFile(file)) {
        return Optional.empty();
      }
      try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
        in.transferTo(OutputStream.nullOutputStream());
      }
    } catch (IOException e) {
      return Optional.empty();
    }
    return whole(file, digest);
  }

  /**
   * The SHA-256 of each of some files, as {@link #hashed}; a file that has none is an empty text.
   *
   * @param files the files
   * @throws SheetException when the run read other bytes from one before
   */
  public static List<String> hashes(List<Path> files) throws SheetException {
    List<String> hashes = new ArrayList<>();
    for (Path file : files) {
      hashes.add(hashed(file).orElse(""));
    }
    return hashes;
  }

  /**
   * A file was read to its end.
   *
   * @param file the file
   * @param digest what its bytes were put through
   * @return its SHA-256 in hex; empty without a run that keeps it
   * @throws SheetException when the run read other bytes from it before
   */
  static Optional<String> whole(Path file, MessageDigest digest) throws SheetException {
    FilesRead run = RUN.get();
    if (run == null) {
      return Optional.empty();
    }
    String sum = Hex.encodeHexString(digest.digest());
    String before = run.sums.putIfAbsent(identity(file), sum);
    if (before != null && !before.equals(sum)) {
      throw SheetException.ofFile(
          SheetText.display(file),
          "other bytes than a moment ago",
          "a file that stays as it is while it is read",
          "Wait until it is saved, or copy it to a folder of your own, and run again.");
    }
    return Optional.of(sum);
  }

  private static Path identity(Path file) {
    return file.toAbsolutePath().normalize();
  }
}
