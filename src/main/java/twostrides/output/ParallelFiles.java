package twostrides.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;

/**
 * Files that do not depend on each other, written on two threads; what is in them does not depend
 * on that.
 */
public final class ParallelFiles {

  private static final int THREADS = 2;

  /** What writes a file, or a few. */
  public interface Part {

    /**
     * Writes.
     *
     * @throws IOException when a file cannot be written
     */
    void write() throws IOException;
  }

  private ParallelFiles() {}

  /**
   * Writes all parts, the first first. When this returns nothing is written any more, after a
   * failure either.
   *
   * @param parts what is to be written
   * @param progress told how many parts are written
   * @throws IOException when a file cannot be written
   */
  public static void write(List<Part> parts, IntConsumer progress) throws IOException {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<?>> written = new ArrayList<>();
      for (Part p : parts) {
        written.add(
            threads.submit(
                () -> {
                  p.write();
                  return null;
                }));
      }
      for (int i = 0; i < written.size(); i++) {
        written.get(i).get();
        progress.accept(i + 1);
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException io) {
        throw io;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("writing was interrupted", e);
    } finally {
      end(threads);
    }
  }

  private static void end(ExecutorService threads) {
    threads.shutdownNow();
    boolean interrupted = false;
    boolean ended = false;
    while (!ended) {
      try {
        ended = threads.awaitTermination(1, TimeUnit.MINUTES);
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
