package twostrides.output;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.LockSupport;

/**
 * One run at a time in a folder. The lock is the operating system's, on a file that names its
 * holder: it ends with the process that holds it, however that ends, so a file that was left behind
 * holds nobody off.
 */
final class OutputLock implements Closeable {

  /** The file, in the folder that is locked. */
  static final String NAME = ".two-strides-lock";

  /** Locks of this process: the system's hold off other processes only. */
  private static final Set<Path> HERE = ConcurrentHashMap.newKeySet();

  /** The byte that is locked, far behind the words, which others may then read on any system. */
  private static final long LOCKED = Long.MAX_VALUE - 1;

  /** Longest words of a holder that are read, in bytes. */
  private static final int LONGEST = 400;

  /** How often the file may vanish under our hands before we give up; each time a run ended. */
  private static final int TRIES = 100;

  /** Nanoseconds between two looks at a file. */
  private static final long A_MOMENT = 20_000_000;

  private final Path file;
  private final FileChannel channel;

  private OutputLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Locks a folder.
   *
   * @param folder the folder, which exists
   * @param shown its name for messages
   * @throws OutputException when another run holds it, or the disk knows no locks
   * @throws IOException when nothing can be written there
   */
  static OutputLock take(Path folder, Path shown) throws OutputException, IOException {
    Path file = folder.toRealPath().resolve(NAME);
    if (!HERE.add(file)) {
      throw held(shown, holder());
    }
    FileChannel channel = null;
    try {
      for (int i = 0; i < TRIES && channel == null; i++) {
        channel = attempt(file, shown);
      }
      if (channel == null) {
        throw held(shown, "");
      }
      return new OutputLock(file, channel);
    } finally {
      if (channel == null) {
        HERE.remove(file);
      }
    }
  }

  /** Null when the file was taken away by the run before, which ended meanwhile. */
  private static FileChannel attempt(Path file, Path shown) throws OutputException, IOException {
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException e) {
      // Another run's, or left behind by one that was stopped: the lock will tell.
    }
    FileChannel channel = null;
    boolean ours = false;
    try {
      Object before = key(file);
      channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
      if (!locked(channel, shown)) {
        throw held(shown, words(channel));
      }
      ours = Objects.equals(before, key(file));
      if (ours) {
        name(channel);
      }
      return ours ? channel : null;
    } catch (NoSuchFileException e) {
      return null;
    } finally {
      if (!ours && channel != null) {
        channel.close();
      }
    }
  }

  /** On a full disk the lock holds all the same; only who holds it is not said. */
  private static void name(FileChannel channel) {
    try {
      channel.truncate(0);
      channel.write(ByteBuffer.wrap((holder() + "\n").getBytes(StandardCharsets.UTF_8)), 0);
    } catch (IOException e) {
      // What comes next needs more room than these words and will say so.
    }
  }

  private static boolean locked(FileChannel channel, Path shown)
      throws OutputException, IOException {
    try {
      FileLock lock = channel.tryLock(LOCKED, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    } catch (IOException e) {
      throw new OutputException(
          "The disk of the folder "
              + shown
              + " knows no locks ("
              + e.getMessage()
              + "), so two runs could mix their books there. Name a folder on another disk with"
              + " --out.");
    }
  }

  /** Which file a name stands for; null on systems that do not say. */
  private static Object key(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
  }

  /** What the holder wrote, which it does right after locking: a moment later at the latest. */
  private static String words(FileChannel channel) throws IOException {
    String words = "";
    for (int i = 0; i < TRIES && words.isEmpty(); i++) {
      if (i > 0) {
        LockSupport.parkNanos(A_MOMENT);
      }
      ByteBuffer bytes = ByteBuffer.allocate(LONGEST);
      channel.read(bytes, 0);
      words = new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8).strip();
    }
    return words;
  }

  private static OutputException held(Path shown, String holder) {
    return new OutputException(
        "Another run is writing into the folder "
            + shown
            + (holder.isEmpty() ? "" : ": " + holder)
            + ". Wait until it has ended, or name another folder with --out. Nothing was written.");
  }

  /** This process, in words. */
  private static String holder() {
    ProcessHandle me = ProcessHandle.current();
    return "process "
        + me.pid()
        + " on "
        + host()
        + me.info()
            .startInstant()
            .map(t -> ", started " + t.truncatedTo(ChronoUnit.SECONDS))
            .orElse("");
  }

  /** The machine's name as it stands on the machine; a look-up might ask the network. */
  private static String host() {
    try {
      String windows = System.getenv("COMPUTERNAME");
      return windows != null ? windows : Files.readString(Path.of("/etc/hostname")).strip();
    } catch (IOException e) {
      return "an unnamed machine";
    }
  }

  /** The file goes first: who opens it in between finds that it is no longer there. */
  @Override
  public void close() throws IOException {
    try {
      Files.deleteIfExists(file);
    } finally {
      channel.close();
      HERE.remove(file);
    }
  }
}
