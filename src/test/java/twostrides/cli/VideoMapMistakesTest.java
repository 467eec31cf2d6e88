package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import twostrides.checks.Printed;

/**
 * Each key of a map of places sheets and of one of sync sheets wrong in each plausible way, and the
 * wrong map given to {@code review} with the sample season: it is refused, or what it does is said,
 * or it is on the list of those that nothing can find. A map that gives the same tables is no
 * mistake.
 */
class VideoMapMistakesTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path SAMPLE = Path.of("sample-data");
  private static final CSVFormat CSV =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  @TempDir Path dir;

  private static List<CSVRecord> rows(Path csv) throws IOException {
    try (CSVParser in = CSVParser.parse(csv, StandardCharsets.UTF_8, CSV)) {
      return in.getRecords();
    }
  }

  @Test
  void noWrongMapOfPlacesPassesSilently() throws IOException {
    List<Path> sheets =
        Stream.of("game-02-COP-GLA.csv", "game-10-MER-GLA.csv", "game-11-GLA-ASH.csv")
            .map(SAMPLE::resolve)
            .toList();
    List<String> clicks =
        Files.readAllLines(SAMPLE.resolve("places/places.csv")).stream()
            .filter(l -> l.matches("2031-(10-08|11-09|11-13) .*"))
            .toList();
    Path places =
        Files.writeString(
            dir.resolve("places.csv"),
            "Game,Per,Clock,By,Side,Puck,X,Y,X2,Y2\n" + String.join("\n", clicks));
    String right =
        """
        sheet = "places"
        [columns]
        game = "Game"
        period = "Per"
        clock = "Clock"
        let_go_by = "By"
        team = "Side"
        carrier = "Puck"
        x_m = "X"
        y_m = "Y"
        later_x_m = "X2"
        later_y_m = "Y2"
        [place]
        unit = "m"
        """;
    noMistakePasses("places", right, MapMistakes.ofPlaces(right), sheets, places);
  }

  @Test
  void noWrongMapOfSyncPassesSilently() throws IOException {
    Path sheet = dir.resolve("game.csv");
    Path sync = dir.resolve("sync.csv");
    List<CSVRecord> rows = rows(SAMPLE.resolve("game-01-GLA-TAR.csv"));
    try (CSVPrinter played = new CSVPrinter(Files.newBufferedWriter(sheet), CSVFormat.DEFAULT);
        CSVPrinter pairs = new CSVPrinter(Files.newBufferedWriter(sync), CSVFormat.DEFAULT)) {
      List<String> kept =
          rows.get(0).toMap().keySet().stream().filter(c -> !c.equals("video_s")).toList();
      List<String> columns = List.copyOf(kept);
      played.printRecord(columns);
      pairs.printRecord("Game", "Per", "Clock", "Second", "Frame", "Thousandths", "Minutes");
      for (CSVRecord r : rows) {
        played.printRecord(columns.stream().map(r::get).toList());
        if (r.get("action").equals("faceoff")) {
          double s = Double.parseDouble(r.get("video_s"));
          pairs.printRecord(
              r.get("game"),
              r.get("period"),
              r.get("clock"),
              Math.round(s),
              Math.round(30 * s),
              Math.round(1000 * s),
              String.format(Locale.ROOT, "%.2f", s / 60));
        }
      }
    }
    String right =
        """
        sheet = "sync"
        [columns]
        game = "Game"
        period = "Per"
        clock = "Clock"
        video_s = "Second"
        """;
    noMistakePasses("sync", right, MapMistakes.ofSync(right), List.of(sheet), sync);
  }

  /** What a run says, and its tables. */
  private record Answer(int code, Set<String> said, Map<String, String> tables) {}

  private void noMistakePasses(
      String kind, String right, Map<String, String> mistakes, List<Path> sheets, Path sheet)
      throws IOException {
    Answer baseline = review(kind, right, sheets, sheet);
    assertEquals(Main.DONE, baseline.code());
    assertEquals(
        List.of(),
        baseline.said().stream().filter(l -> l.startsWith("Look") || l.startsWith("Set")).toList());
    int refused = 0;
    int said = 0;
    List<String> missed = new ArrayList<>();
    for (Map.Entry<String, String> mistake : mistakes.entrySet()) {
      Answer wrong = review(kind, mistake.getValue(), sheets, sheet);
      Set<String> more = new TreeSet<>(wrong.said());
      more.removeAll(baseline.said());
      if (wrong.code() != Main.DONE) {
        assertEquals(Main.UNREADABLE, wrong.code(), mistake.getKey());
        refused++;
      } else if (!more.isEmpty()) {
        said++;
      } else if (!wrong.tables().equals(baseline.tables())) {
        missed.add(mistake.getKey());
      }
    }
    FIGURES.say(
        "%s: %d mistakes, %d refused, %d said, %d missed",
        kind, refused + said + missed.size(), refused, said, missed.size());
    missed.forEach(m -> FIGURES.say("missed: %s", m));
    String page = Files.readString(Path.of("docs/checks.md"));
    assertEquals(
        List.of(),
        missed.stream().filter(m -> !page.contains("| " + m + " | " + kind + " |")).toList(),
        "missed, and docs/checks.md does not say why");
    assertTrue(refused + said >= 15, refused + said + " found");
  }

  private Answer review(String kind, String map, List<Path> sheets, Path sheet) throws IOException {
    Path book = dir.resolve("book");
    List<Object> words = new ArrayList<>(List.of("review"));
    words.addAll(sheets);
    words.addAll(List.of("--tables-only", "--simulations", 100, "--out", book));
    words.addAll(List.of("--" + kind, sheet, "--" + kind + "-map"));
    words.add(Files.writeString(dir.resolve("map.toml"), map));
    Run run = Run.of(words.toArray());
    if (run.code() != Main.DONE) {
      return new Answer(run.code(), Set.of(), Map.of());
    }
    Set<String> said =
        run.lines().stream()
            .filter(l -> l.matches("(Look at this|Set aside|Doubtful|Video): .*"))
            .map(l -> l.replaceAll("\\d+", "#"))
            .collect(Collectors.toSet());
    try (Stream<Path> tables = Files.list(book.resolve("data"))) {
      return new Answer(
          run.code(),
          said,
          tables.collect(
              Collectors.toMap(t -> t.getFileName().toString(), VideoMapMistakesTest::text)));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
