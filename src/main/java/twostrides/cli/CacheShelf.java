package twostrides.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import twostrides.book.Format;
import twostrides.cache.CacheFolder;
import twostrides.cache.RecordBytes;
import twostrides.output.OutputException;
import twostrides.sheet.FilesRead;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;

/**
 * What earlier runs found of one kind. It is found by the words of everything that decides it, so
 * that a run that finds it gives what it would give without.
 *
 * @param <T> the kind
 */
final class CacheShelf<T> {

  private final Optional<CacheFolder> folder;
  private final List<String> words;
  private final RecordBytes<T> bytes;
  private final AtomicInteger asked = new AtomicInteger();
  private final AtomicInteger known = new AtomicInteger();
  private final AtomicReference<String> refused = new AtomicReference<>();

  /**
   * A shelf.
   *
   * @param folder where it is; without one nothing is kept
   * @param words what decides, besides what is asked for
   * @param bytes how the kind is written
   */
  CacheShelf(Optional<CacheFolder> folder, List<String> words, RecordBytes<T> bytes) {
    this.folder = folder;
    this.words = words;
    this.bytes = bytes;
  }

  /** Whether anything is kept. */
  boolean open() {
    return folder.isPresent();
  }

  /** Finds out what no earlier run found. */
  interface Finding<T> {
    T find() throws SheetException;
  }

  /**
   * The key of what is found in files; empty where nothing is kept, or one of them cannot be read
   * and says why as it is read.
   *
   * @param about what decides it besides
   * @param files the files
   * @throws SheetException when the run read other bytes from one before
   */
  Optional<String> key(List<String> about, List<Path> files) throws SheetException {
    List<String> all = new ArrayList<>(words);
    all.addAll(about);
    for (Path file : folder.isPresent() ? files : List.<Path>of()) {
      Optional<String> hash = FilesRead.hashed(file);
      if (hash.isEmpty()) {
        return Optional.empty();
      }
      all.addAll(List.of(SheetFiles.display(file), hash.get()));
    }
    return folder.map(f -> CacheFolder.key(all));
  }

  /**
   * What an earlier run found; asked on any thread.
   *
   * @param key its key
   */
  Optional<T> known(Optional<String> key) {
    asked.incrementAndGet();
    Optional<T> found = key.flatMap(k -> folder.orElseThrow().get(k)).flatMap(bytes::read);
    found.ifPresent(f -> known.incrementAndGet());
    return found;
  }

  /**
   * Keeps it for later runs; told on any thread. This run needs it no more, so that a disk that
   * refuses, or a type that nobody registered, is only said.
   *
   * @param key its key
   * @param what what was found
   */
  void keep(Optional<String> key, T what) {
    if (key.isPresent()) {
      try {
        folder.orElseThrow().put(key.get(), bytes.write(what));
      } catch (IllegalArgumentException e) {
        refused.compareAndSet(null, e.getMessage());
      } catch (IOException e) {
        refused.compareAndSet(null, OutputException.reason(e));
      }
    }
  }

  /**
   * What an earlier run found, or what is found now and kept.
   *
   * @param about what decides it besides the files
   * @param files the files
   * @param finding finds it
   * @throws SheetException when a file cannot be read
   */
  T get(List<String> about, List<Path> files, Finding<T> finding) throws SheetException {
    Optional<String> key = key(about, files);
    Optional<T> known = known(key);
    if (known.isPresent()) {
      return known.get();
    }
    T found = finding.find();
    keep(key, found);
    return found;
  }

  /**
   * How much of what was asked for was known, and why something could not be kept.
   *
   * @param one what was asked for, one of it
   */
  String count(String one) {
    return known
        + " of "
        + Format.count(asked.get(), one)
        + Optional.ofNullable(refused.get())
            .map(r -> " (not all could be kept: " + r + ")")
            .orElse("");
  }

  /** Whether anything was asked for. */
  boolean wasAsked() {
    return asked.get() > 0;
  }
}
