package twostrides.output;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Puts new files in the place of old ones, all or none, file by file, so that what else stands in
 * the folder never moves. It works in a folder of its own, inside, where every move is a renaming:
 *
 * <ol>
 *   <li>the new files are written to {@code new};
 *   <li>a plan of all moves is written and, when it is on the disk, renamed to {@code plan.txt};
 *   <li>the old files move to {@code old}, the new ones to their places;
 *   <li>{@code plan.txt} is deleted: from here on the new files count;
 *   <li>what is left of the work folder goes.
 * </ol>
 *
 * <p>Wherever that stops: with a plan the moves are taken back, without one the work folder holds
 * nothing that anybody needs.
 */
final class Swap {

  /** Told of each step; a test stops the machine there. */
  interface Step {
    /**
     * A step is done.
     *
     * @param what the step
     */
    void done(String what) throws IOException;
  }

  private static final String WORK = ".two-strides-";
  private static final Pattern OURS = Pattern.compile(Pattern.quote(WORK) + "[0-9a-f]{16}");
  private static final int RANDOM_BYTES = 8;
  private static final Set<PosixFilePermission> OWNER_WRITES =
      EnumSet.of(
          PosixFilePermission.OWNER_READ,
          PosixFilePermission.OWNER_WRITE,
          PosixFilePermission.OWNER_EXECUTE);
  private static final String OLD = "old ";
  private static final String NEW = "new ";

  private final Path folder;
  private final Path work;
  private final Step step;

  private Swap(Path folder, Path work, Step step) {
    this.folder = folder;
    this.work = work;
    this.step = step;
  }

  /** Makes a work folder that nobody else has. */
  static Swap begin(Path folder, Step step) throws IOException {
    byte[] random = new byte[RANDOM_BYTES];
    new SecureRandom().nextBytes(random);
    Swap swap = new Swap(folder, folder.resolve(WORK + HexFormat.of().formatHex(random)), step);
    Files.createDirectory(swap.work);
    Files.createDirectory(swap.fresh());
    step.done("work folder made");
    return swap;
  }

  /** What earlier runs that were stopped left in a folder. */
  static List<Swap> leftIn(Path folder, Step step) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> OURS.matcher(String.valueOf(f.getFileName())).matches())
          .filter(f -> Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS))
          .sorted()
          .map(f -> new Swap(folder, f, step))
          .toList();
    }
  }

  /** Where the new files are written. */
  Path fresh() {
    return work.resolve("new");
  }

  private Path kept() {
    return work.resolve("old");
  }

  private Path plan() {
    return work.resolve("plan.txt");
  }

  /** Whether files are on their way, which have to be taken back before anything else. */
  boolean isUnderWay() {
    return FileList.exists(plan());
  }

  /**
   * Moves the old files out and the new ones in.
   *
   * @param old files of the folder
   * @param next files below {@link #fresh}
   * @throws IOException when a move fails; {@link #undo} then takes all of them back
   */
  void run(FileList old, FileList next) throws IOException {
    Path draft = work.resolve("plan.draft");
    try (FileChannel out =
        FileChannel.open(draft, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer text =
          ByteBuffer.wrap((old.lines(OLD) + next.lines(NEW)).getBytes(StandardCharsets.UTF_8));
      while (text.hasRemaining()) {
        out.write(text);
      }
      out.force(true);
    }
    step.done("plan drafted");
    Files.move(draft, plan(), StandardCopyOption.ATOMIC_MOVE);
    step.done("plan made");
    for (String path : old.paths()) {
      move(path, folder, kept());
      step.done("kept " + path);
    }
    removeEmpty(folder, old, next);
    step.done("old folders removed");
    for (String path : next.paths()) {
      move(path, fresh(), folder);
      step.done("placed " + path);
    }
    Files.delete(plan());
    step.done("plan deleted");
  }

  /**
   * Takes back every move, as far as it came; can itself be stopped and begun again.
   *
   * @throws OutputException when a file cannot go back to its place, since something stands there
   * @throws IOException when the disk refuses
   */
  void undo() throws OutputException, IOException {
    List<String> lines = Files.readAllLines(plan(), StandardCharsets.UTF_8);
    FileList old = planned(lines, OLD);
    FileList next = planned(lines, NEW);
    for (String path : next.paths()) {
      boolean placed = !FileList.exists(fresh().resolve(path));
      if (placed && Files.isRegularFile(folder.resolve(path), LinkOption.NOFOLLOW_LINKS)) {
        move(path, folder, fresh());
        step.done("taken back " + path);
      }
    }
    removeEmpty(folder, next, old);
    List<String> blocked = new ArrayList<>();
    for (String path : old.paths()) {
      if (!FileList.exists(kept().resolve(path))) {
        continue;
      }
      if (new FileList(List.of(path)).inTheWay(folder, new FileList(List.of())).isEmpty()) {
        move(path, kept(), folder);
        step.done("put back " + path);
      } else {
        blocked.add(path);
      }
    }
    if (!blocked.isEmpty()) {
      throw new OutputException(
          "Files of the last book could not go back to their places in "
              + folder
              + ", since something else stands there: "
              + OutputFolder.some(blocked)
              + ". They lie in "
              + kept()
              + ". Move what stands in their places away, and run again.");
    }
    Files.delete(plan());
    step.done("plan deleted");
  }

  private FileList planned(List<String> lines, String kind) throws OutputException {
    List<String> paths =
        lines.stream()
            .filter(l -> l.startsWith(kind))
            .map(l -> l.substring(kind.length()))
            .toList();
    if (!paths.stream().allMatch(FileList::staysInside)) {
      throw new OutputException(
          plan()
              + ": found a path that leads out of the folder, which this program did not write."
              + " Move "
              + work
              + " away, and run again.");
    }
    return new FileList(paths);
  }

  /** Takes the work folder away; only when nothing is under way. */
  void clear() throws IOException {
    Files.walkFileTree(
        work,
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
    step.done("work folder removed");
  }

  /** Never over another file: what stands there stays. */
  private static void move(String path, Path from, Path to) throws IOException {
    Path source = from.resolve(path);
    Path target = to.resolve(path);
    Files.createDirectories(target.getParent());
    try {
      Files.move(source, target);
    } catch (AccessDeniedException e) {
      try (Opened left = new Opened(source.getParent());
          Opened entered = new Opened(target.getParent())) {
        if (!left.changed() && !entered.changed()) {
          throw e;
        }
        Files.move(source, target);
      }
    }
  }

  /**
   * A folder of the book that its owner may only read: it is opened for one move and closed again,
   * or the book could never be replaced.
   */
  private static final class Opened implements Closeable {
    private final Path folder;
    private final Optional<Set<PosixFilePermission>> before;

    Opened(Path folder) throws IOException {
      this.folder = folder;
      if (Files.isWritable(folder)
          || !Files.getFileStore(folder).supportsFileAttributeView("posix")) {
        before = Optional.empty();
        return;
      }
      before = Optional.of(Files.getPosixFilePermissions(folder));
      Set<PosixFilePermission> open = EnumSet.copyOf(before.get());
      open.addAll(OWNER_WRITES);
      Files.setPosixFilePermissions(folder, open);
    }

    boolean changed() {
      return before.isPresent();
    }

    @Override
    public void close() throws IOException {
      if (before.isPresent()) {
        Files.setPosixFilePermissions(folder, before.get());
      }
    }
  }

  /**
   * Folders that only these files stood in; one that holds something else stays, and so does one
   * that other files are about to stand in, with whoever may enter it.
   */
  private static void removeEmpty(Path folder, FileList files, FileList others) throws IOException {
    for (String path : files.folders()) {
      Path d = folder.resolve(path);
      try {
        if (!others.folders().contains(path) && Files.isDirectory(d, LinkOption.NOFOLLOW_LINKS)) {
          Files.delete(d);
        }
      } catch (DirectoryNotEmptyException | NoSuchFileException e) {
        // Somebody's file stands in it, or it is gone already: either way it is done.
      }
    }
  }
}
