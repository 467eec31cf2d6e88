package twostrides.output;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An output folder. A run writes aside and puts its files into their places when they are whole; a
 * run that stops half way leaves the last book as it was. Only files on the folder's own list are
 * replaced or removed; all others stay where they are. A link to a folder stays a link.
 */
public final class OutputFolder implements AutoCloseable {

  /** Foreign files that a message names. */
  private static final int MOST_NAMED = 5;

  /** How often the folder may vanish while we enter it; each time a run gave up. */
  private static final int TRIES = 100;

  private final Path target;
  private final Path folder;
  private final Path existed;
  private final OutputLock lock;
  private final Swap swap;
  private final FileList own;

  private OutputFolder(
      Path target, Path folder, Path existed, OutputLock lock, Swap swap, FileList own) {
    this.target = target;
    this.folder = folder;
    this.existed = existed;
    this.lock = lock;
    this.swap = swap;
    this.own = own;
  }

  /**
   * Locks a folder, puts back what a run left that was stopped there, and prepares a new one.
   *
   * @param target where the output shall be, as the user named it
   * @param inputs what the run reads
   * @throws OutputException when the place cannot be used; nothing was changed then
   * @throws IOException when the disk refuses
   */
  public static OutputFolder at(Path target, List<Path> inputs)
      throws OutputException, IOException {
    return at(target, inputs, s -> {});
  }

  static OutputFolder at(Path target, List<Path> inputs, Swap.Step step)
      throws OutputException, IOException {
    Path folder = place(target);
    Path existed = existing(folder);
    OutputLock lock = null;
    boolean begun = false;
    try {
      refuseEarly(target, folder);
      lock = lock(target, folder);
      step.done("locked");
      recover(folder, step);
      FileList own = refuseUnlessOurs(target, folder).present(folder);
      refuseInputs(target, folder, own, inputs);
      Swap swap = Swap.begin(folder, step);
      begun = true;
      return new OutputFolder(target, folder, existed, lock, swap, own);
    } catch (IOException e) {
      throw unusable(target, e);
    } finally {
      if (!begun) {
        if (lock != null) {
          lock.close();
        }
        removeMade(folder, existed);
      }
    }
  }

  /** The system's reading of a way that turns back, unless it leads over what is not there. */
  private static Path place(Path target) {
    Path folder = target.toAbsolutePath();
    Path parent = folder.getParent();
    return parent == null || Files.exists(parent) ? folder : folder.normalize();
  }

  /** Where to write until {@link #finish}. */
  public Path writing() {
    return swap.fresh();
  }

  /**
   * Puts what was written into its place, and takes away what the last run wrote.
   *
   * @return the folder
   * @throws OutputException when foreign files are in the way or a file cannot be moved; the folder
   *     is as it was before then
   * @throws IOException when the list of what was written cannot be
   */
  public Path finish() throws OutputException, IOException {
    FileList written = FileList.below(swap.fresh()).with(FileList.NAME);
    written.write(swap.fresh().resolve(FileList.NAME));
    NavigableSet<String> foreign = written.inTheWay(folder, own);
    if (!foreign.isEmpty()) {
      throw new OutputException(
          "Files in the folder "
              + target
              + " that are not the book's own stand where the new book has files: "
              + some(foreign)
              + ". Move them away, or name another folder with --out. Nothing was changed.");
    }
    try {
      swap.run(own, written);
    } catch (IOException e) {
      throw new OutputException(
          "The new book could not be put into the folder "
              + target
              + " ("
              + OutputException.reason(e)
              + "). "
              + takenBack()
              + " Close programs that have files of the book open, look that the disk is not full,"
              + " and run again.");
    }
    Path plain = folder.normalize();
    return Files.isSameFile(plain, folder) ? plain : folder;
  }

  private String takenBack() throws OutputException {
    try {
      if (swap.isUnderWay()) {
        swap.undo();
      }
      return "The folder is as it was before.";
    } catch (IOException e) {
      return "Nor could the last book be put back ("
          + OutputException.reason(e)
          + "); the next run does that first.";
    }
  }

  /** Takes away what was written and not finished, and lets the next run in. */
  @Override
  public void close() throws IOException {
    try {
      if (!swap.isUnderWay()) {
        swap.clear();
      }
    } catch (IOException e) {
      // What is left over here is in nobody's way, and the next run takes it away.
    } finally {
      lock.close();
      removeMade(folder, existed);
    }
  }

  /** The part of the way to a folder that is there. */
  private static Path existing(Path folder) {
    Path at = folder;
    while (!Files.exists(at) && at.getParent() != null) {
      at = at.getParent();
    }
    return at;
  }

  /** Another run that gives up takes away the folder that it made, perhaps while we enter it. */
  private static OutputLock lock(Path target, Path folder) throws OutputException, IOException {
    for (int i = 1; ; i++) {
      Files.createDirectories(folder);
      try {
        return OutputLock.take(folder, target);
      } catch (NoSuchFileException e) {
        if (i == TRIES) {
          throw e;
        }
      }
    }
  }

  /** Before the lock is taken: what another run takes away meanwhile is for the lock to tell. */
  private static void refuseEarly(Path target, Path folder) throws OutputException, IOException {
    try {
      refuseUnlessOurs(target, folder);
    } catch (NoSuchFileException e) {
      // The other run holds the folder or has just given it up.
    }
  }

  /**
   * The list of our files in a folder; empty where the folder is, or none is there.
   *
   * @throws OutputException when the folder holds something and no such list
   */
  private static FileList refuseUnlessOurs(Path target, Path folder)
      throws OutputException, IOException {
    if (!Files.exists(folder)) {
      if (Files.isSymbolicLink(folder)) {
        throw new OutputException(
            "The output "
                + target
                + " is a link to "
                + Files.readSymbolicLink(folder)
                + ", which does not exist. Make that folder, or name another one with --out.");
      }
      return new FileList(List.of());
    }
    if (!Files.isDirectory(folder)) {
      throw new OutputException(
          "The output "
              + target
              + " is a file. Name a folder with --out, one that does not exist yet or an old book.");
    }
    Path list = folder.resolve(FileList.NAME);
    if (Files.isRegularFile(list)) {
      return FileList.read(list);
    }
    NavigableSet<String> names = new TreeSet<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.map(f -> String.valueOf(f.getFileName())).forEach(names::add);
    }
    names.remove(OutputLock.NAME);
    if (names.isEmpty() || !Swap.leftIn(folder, s -> {}).isEmpty()) {
      return new FileList(List.of());
    }
    boolean old = names.contains("run.json") && names.contains("index.html");
    throw new OutputException(
        old
            ? "The folder "
                + target
                + " holds a book of an older version, which kept no list of its own files ("
                + FileList.NAME
                + "), so they cannot be told from yours. Move your files out and delete the folder"
                + " yourself, or name another folder with --out. Nothing was written."
            : "The folder "
                + target
                + " holds files that are no review book: "
                + some(names)
                + ". Name another folder with --out, or empty it yourself. Nothing was written.");
  }

  /** Ends what a run began that was stopped: its new files go, the last book's come back. */
  private static void recover(Path folder, Swap.Step step) throws OutputException, IOException {
    for (Swap left : Swap.leftIn(folder, step)) {
      if (left.isUnderWay()) {
        left.undo();
      }
      left.clear();
    }
  }

  private static void refuseInputs(Path target, Path folder, FileList own, List<Path> inputs)
      throws OutputException, IOException {
    for (Path input : inputs) {
      Optional<String> path = Files.exists(input) ? inside(folder, input) : Optional.empty();
      if (path.filter(own.paths()::contains).isPresent()) {
        throw new OutputException(
            "The input "
                + input
                + " is a file of the last book in "
                + target
                + ", which this run would replace. Copy it to another folder and read it there, or"
                + " name another folder with --out. Nothing was written.");
      }
    }
  }

  private static Optional<String> inside(Path folder, Path input) throws IOException {
    Path real = input.toRealPath();
    Path base = folder.toRealPath();
    return real.startsWith(base)
        ? Optional.of(base.relativize(real).toString().replace('\\', '/'))
        : Optional.empty();
  }

  /** Takes away the folders that this run made, where nothing stands in them. */
  private static void removeMade(Path folder, Path existed) throws IOException {
    for (Path at = folder; !at.equals(existed); at = at.getParent()) {
      try {
        if (Files.isDirectory(at, LinkOption.NOFOLLOW_LINKS)) {
          Files.deleteIfExists(at);
        }
      } catch (DirectoryNotEmptyException e) {
        return;
      }
    }
  }

  /** The first few of some names. */
  static String some(Collection<String> names) {
    int more = names.size() - MOST_NAMED;
    return names.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  private static OutputException unusable(Path target, IOException e) {
    return new OutputException(
        "The folder "
            + target
            + " cannot be made or written to ("
            + OutputException.reason(e)
            + "). Name another folder with --out.");
  }
}
