package twostrides.output;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A run in a process of its own that is stopped dead after a step: no finally, no hook, as by a
 * kill or a power cut.
 */
final class Halting {

  /** Exit code of a run that was stopped. */
  static final int STOPPED = 9;

  /** Exit code of a run that was refused. */
  static final int REFUSED = 4;

  private Halting() {}

  /**
   * Writes a book.
   *
   * @param args the folder, the book's letter, and the number of the step after which to stop, or
   *     "wait" to stay in the first until somebody writes a line
   */
  public static void main(String[] args) throws Exception {
    AtomicInteger steps = new AtomicInteger();
    boolean waits = args[2].equals("wait");
    int stop = waits ? 1 : Integer.parseInt(args[2]);
    Swap.Step step =
        what -> {
          if (steps.incrementAndGet() != stop) {
            return;
          }
          System.out.println(what);
          if (!waits) {
            Runtime.getRuntime().halt(STOPPED);
          }
          if (System.in.read() < 0) {
            throw new IOException("nobody wrote");
          }
        };
    try {
      Book.write(Path.of(args[0]), args[1], List.of(), step);
    } catch (OutputException e) {
      System.exit(REFUSED);
    }
  }

  static Process start(Path out, String letter, String stop) throws IOException {
    String path =
        place(OutputFolder.class) + System.getProperty("path.separator") + place(Halting.class);
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-Xshare:auto",
            "-cp",
            path,
            Halting.class.getName(),
            out.toString(),
            letter,
            stop)
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** Runs to the end or to the step: its exit code. */
  static int run(Path out, String letter, int stop) throws IOException, InterruptedException {
    Process process = start(out, letter, String.valueOf(stop));
    if (!process.waitFor(2, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IOException("the run did not end");
    }
    return process.exitValue();
  }

  private static Path place(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
