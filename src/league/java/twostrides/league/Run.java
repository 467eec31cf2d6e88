package twostrides.league;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A whole process, measured from outside: from its start to its end.
 *
 * @param seconds by the clock
 * @param processor processor seconds
 * @param peakMb most memory at once, MB; 0 where the system does not say (it is read from /proc)
 * @param output what it printed
 */
record Run(double seconds, double processor, double peakMb, String output) {
  private static final int LOOKS_MS = 10;
  private static final String PEAK = "VmHWM:";

  /**
   * Runs a command to its end.
   *
   * @param log file for what it prints
   * @throws IllegalStateException when it fails, with what it printed
   */
  static Run of(List<String> command, Path log) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    Duration processor = Duration.ZERO;
    long peak = 0;
    do {
      processor = process.info().totalCpuDuration().orElse(processor);
      peak = Math.max(peak, peakKb(process.pid()));
    } while (!process.waitFor(LOOKS_MS, TimeUnit.MILLISECONDS));
    double seconds = (System.nanoTime() - start) / 1e9;
    String output = Files.readString(log, StandardCharsets.UTF_8);
    if (process.exitValue() != 0) {
      throw new IllegalStateException(String.join(" ", command) + "\n" + output);
    }
    return new Run(seconds, processor.toMillis() / 1e3, peak / 1024.0, output);
  }

  private static long peakKb(long pid) {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return lines
          .filter(line -> line.startsWith(PEAK))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException | java.io.UncheckedIOException e) {
      return 0; // It has just ended, or this system has no /proc.
    }
  }
}
