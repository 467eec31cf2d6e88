package twostrides.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * The program in a process of its own, ended.
 *
 * @param code exit code
 * @param said what it printed, errors too
 */
record Child(int code, String said) {

  /** The words that start Java as the start script does, to be followed by a class path. */
  static List<String> start() {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    return List.of(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");
  }

  /**
   * A command line that starts a program, to which more may be added.
   *
   * @param words its class and what it is told
   */
  static List<String> java(Object... words) {
    List<String> line = new ArrayList<>(start());
    line.addAll(KeptClasses.OPTIONS);
    Stream.of(words).map(String::valueOf).forEach(line::add);
    return line;
  }

  /** A command line of the program. */
  static List<String> program(Object... args) {
    return java(Stream.concat(Stream.of(Main.class.getName()), Stream.of(args)).toArray());
  }

  /** Runs a command line to its end. */
  static Child run(List<String> line) throws IOException, InterruptedException {
    return ended(new ProcessBuilder(line).redirectErrorStream(true).start());
  }

  /** Waits for the end. */
  static Child ended(Process process) throws IOException, InterruptedException {
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (!process.waitFor(5, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IOException("the program did not end: " + said);
    }
    return new Child(process.exitValue(), said);
  }

  /**
   * Whether this machine lets a process have disks of its own, which go when it ends; says aloud
   * where not.
   */
  static boolean mayMount() throws InterruptedException {
    try {
      Path probe = Files.createTempDirectory("two-strides-disk");
      Child asked =
          run(List.of("unshare", "-rm", "mount", "-t", "tmpfs", "none", probe.toString()));
      Files.delete(probe);
      if (asked.code == 0) {
        return true;
      }
      System.err.println("SKIPPED: this machine lets nobody mount a small disk: " + asked.said);
    } catch (IOException e) {
      System.err.println("SKIPPED: no small disk without unshare: " + e.getMessage());
    }
    return false;
  }
}
