package twostrides.league;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;

/** A page whose measured parts stand between marks, and the machine that they were measured on. */
final class Page {
  private Page() {}

  /** Replaces what stands between the marks of a name. */
  static void put(Path page, String name, String text) throws IOException {
    String begin = "<!-- " + name + ": begin -->\n";
    String end = "<!-- " + name + ": end -->";
    String whole = Files.readString(page);
    int from = whole.indexOf(begin);
    int to = whole.indexOf(end);
    if (from < 0 || to < from) {
      throw new IllegalStateException("no marks " + begin.strip() + " and " + end + " in " + page);
    }
    Files.writeString(page, whole.substring(0, from + begin.length()) + text + whole.substring(to));
  }

  /**
   * The machine, in a sentence.
   *
   * @param before what {@link #load} said before the measuring
   */
  static String machine(String before) throws IOException {
    return String.format(
        Locale.ROOT,
        "%s; %d cores, %d GB; Java %s. Processes that wanted a core: %s before, %s after.",
        about("/proc/cpuinfo", "model name"),
        Runtime.getRuntime().availableProcessors(),
        Long.parseLong(about("/proc/meminfo", "MemTotal").replaceAll("\\D", "")) >> 20,
        System.getProperty("java.version"),
        before,
        load());
  }

  /** How many processes want a core, as a mean over a minute. */
  static String load() throws IOException {
    return Files.readString(Path.of("/proc/loadavg")).split(" ", 2)[0];
  }

  private static String about(String file, String key) throws IOException {
    try (Stream<String> lines = Files.lines(Path.of(file))) {
      return lines
          .filter(line -> line.startsWith(key))
          .map(line -> line.substring(line.indexOf(':') + 1).strip())
          .findFirst()
          .orElse("0");
    }
  }
}
