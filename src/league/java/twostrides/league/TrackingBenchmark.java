package twostrides.league;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Measures a review with tracking at 30 frames a second, one game and then several, under a limit
 * on Java's heap, and writes what came of it into docs/speed.md.
 */
public final class TrackingBenchmark {
  private static final int[] GAMES = {1, 4};
  private static final int[] HEAPS_MB = {128, 256, 1024};

  private TrackingBenchmark() {}

  /**
   * Measures and writes.
   *
   * @param args the folder target, the page, a folder with sheets of the demo, and what the review
   *     is given besides
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path target = Path.of(args[0]);
    Path folder = target.resolve("league/tracking");
    List<Path> sheets;
    try (Stream<Path> files = Files.list(Path.of(args[2]))) {
      sheets = files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
    String load = Page.load();
    StringBuilder table = new StringBuilder();
    table.append("| games | tracking rows | heap at most, MB | s by the clock | processor s |");
    table.append(" peak MB |\n|---|---|---|---|---|---|\n");
    for (int games : GAMES) {
      List<String> plays = new ArrayList<>();
      List<String> tracks = new ArrayList<>();
      long rows = 0;
      for (Path sheet : sheets.subList(0, games)) {
        Path track = folder.resolve(sheet.getFileName());
        rows += TrackingSheet.write(sheet, track);
        plays.add(sheet.toString());
        tracks.addAll(List.of("--tracking", track.toString()));
      }
      for (int heap : HEAPS_MB) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx" + heap + "m", "-jar"));
        command.add(target.resolve("two-strides.jar").toString());
        command.add("review");
        command.addAll(plays);
        command.addAll(tracks);
        command.addAll(List.of("--out", target.resolve("league/tracked").toString()));
        command.addAll(Stream.of(args[3].split(" ", -1)).filter(o -> !o.isEmpty()).toList());
        Path log = target.resolve("league-run.txt");
        String figures;
        try {
          Run run = Run.of(command, log);
          run.output().lines().filter(l -> l.startsWith("Tracking")).forEach(System.out::println);
          figures =
              String.format(
                  Locale.ROOT, "%.0f | %.0f | %.0f", run.seconds(), run.processor(), run.peakMb());
        } catch (IllegalStateException e) {
          if (!e.getMessage().contains("memory")) {
            throw e;
          }
          figures = "not enough | | ";
        }
        table.append(String.format(Locale.ROOT, "| %d | %,d | %d | ", games, rows, heap));
        table.append(figures).append(" |\n");
        System.out.print(table);
      }
    }
    Page.put(Path.of(args[1]), "tracking", Page.machine(load) + "\n\n" + table);
  }
}
