package twostrides.league;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Measures a review of a league's season against a column database that reads the same files, in
 * turn, and writes medians into docs/speed.md: DEVELOPERS.md says how to run it.
 */
public final class LeagueBenchmark {
  private static final Pattern ROWS = Pattern.compile("(\\d+) rows read = ");
  private static final String QUERY = "DuckDB, the query alone";

  private final Path target;
  private final int turns;
  private final List<String> options;
  private final String team;
  private final String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
  private final StringBuilder table = new StringBuilder();

  private LeagueBenchmark(Path target, int turns, List<String> options, String team) {
    this.target = target;
    this.turns = turns;
    this.options = options;
    this.team = team;
  }

  /**
   * Measures and writes.
   *
   * @param args the folder target, the page, sizes as numbers of games with commas between, how
   *     often, and what the review is given besides
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path page = Path.of(args[1]);
    int[] sizes = Arrays.stream(args[2].split(",", -1)).mapToInt(Integer::parseInt).toArray();
    List<String> options = Stream.of(args[4].split(" ", -1)).filter(o -> !o.isEmpty()).toList();
    LeagueBenchmark benchmark =
        new LeagueBenchmark(
            Path.of(args[0]), Integer.parseInt(args[3]), options, "Glasswater Herons");
    String load = Page.load();
    int most = Arrays.stream(sizes).max().orElseThrow();
    Path season = benchmark.season(most);
    for (int size : sizes) {
      benchmark.measure(size, benchmark.first(season, size));
    }
    String text = benchmark.text(load);
    System.out.print(text);
    Page.put(page, "league", text);
  }

  /** The season, made once. */
  private Path season(int games) throws IOException, InterruptedException {
    Path season = target.resolve("league/season-" + games);
    if (!Files.exists(season.resolve("demo-files.sha256"))) {
      String number = Integer.toString(games);
      run(jar("demo", "--games", number, "--seed", "16", "--out", season.toString()));
    }
    return season;
  }

  /** The first games of a season, in a folder of their own. */
  private Path first(Path season, int size) throws IOException {
    Path folder = target.resolve("league/first-" + size);
    Files.createDirectories(folder);
    try (Stream<Path> files = Files.list(season)) {
      List<Path> sheets = files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
      for (Path sheet : sheets.subList(0, size)) {
        Path here = folder.resolve(sheet.getFileName());
        if (!Files.exists(here)) {
          Files.createLink(here, sheet);
        }
      }
    }
    return folder;
  }

  private void measure(int size, Path sheets) throws IOException, InterruptedException {
    String out = target.resolve("league/book").toString();
    List<String> review = new ArrayList<>(List.of("review", sheets.toString(), "--out", out));
    review.addAll(options);
    review.addAll(List.of("--team", team));
    String[] words = review.toArray(String[]::new);
    List<String> scripted = new ArrayList<>(List.of(target.resolve("two-strides").toString()));
    scripted.addAll(review);
    String name = "`review " + String.join(" ", options) + "`";
    String path = System.getProperty("java.class.path");
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put(
        "DuckDB, the whole process",
        List.of(java, "-cp", path, WindowQuery.class.getName(), sheets.toString()));
    commands.put(name + ", start script", scripted);
    List<String> cached = new ArrayList<>(scripted);
    cached.addAll(List.of("--cache", target.resolve("league/kept").toString()));
    run(cached);
    commands.put(name + ", start script, all games in the cache", cached);
    commands.put(name + ", plain jar", jar(words));
    commands.put(name + ", plain jar, one core", onOneCore(jar(words)));
    Map<String, List<Run>> runs = new LinkedHashMap<>();
    long rows = 0;
    for (int turn = 0; turn < turns; turn++) {
      for (Map.Entry<String, List<String>> command : commands.entrySet()) {
        Run run = run(command.getValue());
        System.out.printf(
            Locale.ROOT,
            "%d games, %s: %.1f s, %.1f of processor, %.0f MB%n",
            size,
            command.getKey(),
            run.seconds(),
            run.processor(),
            run.peakMb());
        runs.computeIfAbsent(command.getKey(), k -> new ArrayList<>()).add(run);
        Matcher ours = ROWS.matcher(run.output());
        if (ours.find()) {
          same(rows, Long.parseLong(ours.group(1)));
        } else {
          String[] told = run.output().strip().split(" ", -1);
          rows = Long.parseLong(told[0]);
          Run alone = new Run(Double.parseDouble(told[3]), run.processor(), run.peakMb(), "");
          runs.computeIfAbsent(QUERY, k -> new ArrayList<>()).add(alone);
        }
      }
    }
    double query = median(runs.get(QUERY), Run::seconds);
    double processor = median(runs.get(QUERY), Run::processor);
    for (Map.Entry<String, List<Run>> one : runs.entrySet()) {
      List<Run> all = one.getValue();
      table.append(
          String.format(
              Locale.ROOT,
              "| %,d | %,d | %s | %.1f (%.1f to %.1f) | %.1f | %.1f | %.1f | %.0f |%n",
              size,
              rows,
              one.getKey(),
              median(all, Run::seconds),
              all.stream().mapToDouble(Run::seconds).min().orElseThrow(),
              all.stream().mapToDouble(Run::seconds).max().orElseThrow(),
              median(all, Run::seconds) / query,
              median(all, Run::processor),
              median(all, Run::processor) / processor,
              median(all, Run::peakMb)));
    }
  }

  private static void same(long theirs, long ours) {
    if (theirs != ours) {
      throw new IllegalStateException(
          "not the same rows: " + theirs + " in the query, " + ours + " in the review");
    }
  }

  private List<String> jar(String... words) {
    List<String> command = new ArrayList<>(List.of(java, "-jar"));
    command.add(target.resolve("two-strides.jar").toString());
    command.addAll(List.of(words));
    return command;
  }

  private static List<String> onOneCore(List<String> command) {
    return Stream.concat(Stream.of("taskset", "-c", "0"), command.stream()).toList();
  }

  private Run run(List<String> command) throws IOException, InterruptedException {
    return Run.of(command, target.resolve("league-run.txt"));
  }

  private static double median(List<Run> runs, ToDoubleFunction<Run> value) {
    double[] sorted = runs.stream().mapToDouble(value).sorted().toArray();
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }

  private String text(String load) throws IOException {
    return String.format(
            Locale.ROOT,
            "Medians of %d, in turn, each a process of its own; least and most in brackets. ",
            turns)
        + Page.machine(load)
        + "\n\n| games | rows | what | s by the clock | of the query | processor s | of the query's |"
        + " peak MB |\n|---|---|---|---|---|---|---|---|\n"
        + table;
  }
}
