package twostrides.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import twostrides.book.Format;
import twostrides.cache.CacheFolder;
import twostrides.cache.RecordBytes;
import twostrides.output.OutputException;

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

  private String key(List<String> about) {
    return CacheFolder.key(Stream.concat(words.stream(), about.stream()).toList());
  }

  /**
   * What an earlier run found; asked on any thread.
   *
   * @param about what decides it
   */
  Optional<T> find(List<String> about) {
    asked.incrementAndGet();
    Optional<T> found = folder.flatMap(f -> f.get(key(about))).flatMap(bytes::read);
    found.ifPresent(f -> known.incrementAndGet());
    return found;
  }

  /**
   * Keeps it for later runs; told on any thread. This run needs it no more, so that a disk that
   * refuses is only said.
   *
   * @param about what decides it
   * @param what what was found
   */
  void keep(List<String> about, T what) {
    if (folder.isPresent()) {
      try {
        folder.get().put(key(about), bytes.write(what));
      } catch (IOException e) {
        refused.compareAndSet(null, OutputException.reason(e));
      }
    }
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
