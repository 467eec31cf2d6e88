package twostrides.sanity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.SheetForms;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/** A true sheet made untrue in one way at a time: src/test/resources/twostrides/sanity. */
class UntrueSheetsTest {

  private static final Path SAMPLE = Path.of("sample-data/game-01-GLA-TAR.csv");
  private static final String HOME = "Glasswater Herons";
  private static final Pattern FIGURE = Pattern.compile("\\d");
  private static final CSVFormat CSV =
      CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

  /** What is done to a row. */
  private interface Change extends Consumer<Map<String, String>> {}

  private static final Map<String, Change> CHANGES = changes();

  @TempDir Path dir;

  private static Map<String, Change> changes() {
    Map<String, Change> c = new HashMap<>();
    c.put("none", r -> {});
    c.put("every place seen by the home team", r -> turn(r, !home(r)));
    c.put(
        "every place fixed to the rink, home attacks +x in 1 and 3",
        r -> turn(r, home(r) == period(r, "2")));
    c.put(
        "every place fixed to the rink, home attacks +x in 2",
        r -> turn(r, home(r) != period(r, "2")));
    c.put("every place fixed to the rink", r -> turn(r, home(r) != period(r, "2")));
    c.put("every place mirrored", r -> turn(r, true));
    c.put("period 2 mirrored", r -> turn(r, period(r, "2")));
    c.put("period 2 mirrored for the home team", r -> turn(r, home(r) && period(r, "2")));
    c.put("metres read as feet", r -> {});
    c.put("places 2 m too far along", r -> places(r, 2, 1));
    c.put(
        "x and y exchanged",
        r -> {
          exchange(r, "x_m", "y_m");
          exchange(r, "to_x_m", "to_y_m");
        });
    c.put("complete and missed exchanged", r -> words(r, "complete", "missed"));
    c.put("regained and lost exchanged", r -> words(r, "regained", "lost"));
    c.put("carried and dumped exchanged", r -> words(r, "carried", "dumped"));
    c.put("receivers and passers exchanged", UntrueSheetsTest::players);
    c.put(
        "first and second place exchanged",
        r -> {
          if (!r.get("to_x_m").isEmpty()) {
            exchange(r, "x_m", "to_x_m");
            exchange(r, "y_m", "to_y_m");
          }
        });
    c.put("skaters of home first", r -> skaters(r, !home(r)));
    c.put("skaters exchanged", r -> skaters(r, true));
    c.put("no goals", r -> r.computeIfPresent("outcome", (k, o) -> o.replace("goal", "on_net")));
    c.put("every shot a goal", r -> when(r, "action", "shot", "outcome", "goal"));
    c.put("no releases", r -> when(r, "action", "release", "action", "touch", "outcome", ""));
    c.put("recoveries read as passes", r -> when(r, "action", "recovery", "action", "pass"));
    c.put("every pass complete", r -> when(r, "action", "pass", "outcome", "complete"));
    c.put("an id that puts the home team away", r -> r.put("game", "2031-10-04 Herons at Wolves"));
    c.put("an id that puts the home team at home", r -> r.put("game", "Wolves @ Herons, 1"));
    c.put("takeaways read as recoveries", r -> {});
    c.put("a name in capitals", r -> inPeriodTwo(r, "9 ELKE PELLANOST"));
    c.put("a name with a double blank", r -> inPeriodTwo(r, "9  Elke Pellanost"));
    c.put("a number with a leading zero", r -> inPeriodTwo(r, "09 Elke Pellanost"));
    c.put("a number with two names", r -> inPeriodTwo(r, "9 Elka Pellanost"));
    c.put("a name without a number and with a letter more", r -> inPeriodTwo(r, "Elke Pellanostt"));
    c.put("the same name with two letters exchanged", r -> inPeriodTwo(r, "Elke Pelalnost"));
    return c;
  }

  private static boolean home(Map<String, String> r) {
    return r.get("team").equals(HOME);
  }

  private static boolean period(Map<String, String> r, String period) {
    return r.get("period").equals(period);
  }

  private static void turn(Map<String, String> r, boolean turned) {
    if (turned) {
      places(r, 0, -1);
    }
  }

  private static void places(Map<String, String> r, double along, double scale) {
    for (String column : List.of("x_m", "y_m", "to_x_m", "to_y_m")) {
      double shift = column.contains("x") ? along : 0;
      r.computeIfPresent(
          column,
          (k, n) -> n.isEmpty() ? n : String.valueOf(Double.parseDouble(n) * scale + shift));
    }
  }

  private static void exchange(Map<String, String> r, String one, String other) {
    String first = r.put(one, r.get(other));
    r.put(other, first);
  }

  private static void words(Map<String, String> r, String one, String other) {
    String o = r.get("outcome");
    r.put("outcome", o.equals(one) ? other : o.equals(other) ? one : o);
  }

  private static void players(Map<String, String> r) {
    if (!r.get("other_player").isEmpty()) {
      exchange(r, "player", "other_player");
    }
  }

  private static void skaters(Map<String, String> r, boolean exchanged) {
    if (exchanged) {
      exchange(r, "skaters_for", "skaters_against");
    }
  }

  private static void when(Map<String, String> r, String column, String word, String... sets) {
    if (r.get(column).equals(word)) {
      for (int i = 0; i < sets.length; i += 2) {
        r.put(sets[i], sets[i + 1]);
      }
    }
  }

  private static void inPeriodTwo(Map<String, String> r, String name) {
    if (r.get("player").equals("9 Elke Pellanost")) {
      String most = FIGURE.matcher(name).find() ? r.get("player") : "Elke Pellanost";
      r.put("player", period(r, "2") ? name : most);
    }
  }

  private List<Doubt> doubts(String change) throws IOException, SheetException {
    boolean few = change.endsWith(", 60 rows");
    Change how = CHANGES.get(few ? change.replace(", 60 rows", "") : change);
    Path sheet = dir.resolve("sheet.csv");
    try (CSVParser in = CSVParser.parse(SAMPLE, StandardCharsets.UTF_8, CSV);
        CSVPrinter out = new CSVPrinter(Files.newBufferedWriter(sheet), CSVFormat.DEFAULT)) {
      // Skaters' places of their own would have to be turned as well.
      List<String> columns =
          in.getHeaderNames().stream().filter(c -> !c.endsWith("_skaters")).toList();
      out.printRecord(columns);
      for (CSVRecord r : few ? in.getRecords().subList(0, 60) : in.getRecords()) {
        Map<String, String> row = new LinkedHashMap<>();
        columns.forEach(c -> row.put(c, r.get(c)));
        how.accept(row);
        out.printRecord(row.values());
      }
    }
    Optional<SheetMap> map = Optional.of(SheetMap.read(map(change), SheetForms.ALL));
    return Doubts.of(List.of(sheet), map);
  }

  private Path map(String change) throws IOException {
    String unit = change.equals("metres read as feet") ? "ft" : "m";
    String words =
        change.startsWith("takeaways") ? "[values.action]\nTakeaway = \"recovery\"\n" : "";
    return Files.writeString(
        dir.resolve("map.toml"), "sheet = \"play\"\n[place]\nunit = \"" + unit + "\"\n" + words);
  }

  @TestFactory
  Stream<DynamicTest> everyChangeIsAnswered() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    try (CSVParser cases =
        CSVParser.parse(
            Path.of("src/test/resources/twostrides/sanity/untrue.csv"),
            StandardCharsets.UTF_8,
            CSV)) {
      for (CSVRecord c : cases) {
        tests.add(
            DynamicTest.dynamicTest(
                c.get("change"), () -> answered(c.get("change"), c.get("answer"), c.get("words"))));
      }
    }
    return tests.stream();
  }

  private void answered(String change, String answer, String words)
      throws IOException, SheetException {
    List<Doubt> doubts = doubts(change);
    String all = String.join("\n", doubts.stream().map(Doubt::message).toList());
    if (answer.equals("nothing")) {
      assertEquals("", all);
      return;
    }
    assertTrue(all.contains(words), all);
    assertEquals(answer.equals("stops"), doubts.stream().anyMatch(Doubt::stops), all);
  }

  /** Short sheets, odd ones too: no case of the pipeline is a false alarm. */
  @TestFactory
  Stream<DynamicTest> noCaseIsDoubted() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("src/test/resources/twostrides/exits/cases"))) {
      return all.filter(Files::isDirectory).sorted().toList().stream()
          .map(d -> DynamicTest.dynamicTest(String.valueOf(d.getFileName()), () -> undoubted(d)));
    }
  }

  private static void undoubted(Path folder) throws SheetException {
    Path map = folder.resolve("map.toml");
    Optional<SheetMap> used =
        Files.exists(map) ? Optional.of(SheetMap.read(map, SheetForms.ALL)) : Optional.empty();
    List<Doubt> doubts = Doubts.of(List.of(folder.resolve("sheet.csv")), used);
    assertFalse(doubts.stream().anyMatch(Doubt::stops), doubts.toString());
    assertEquals(List.of(), doubts);
  }

  @TestFactory
  Stream<DynamicTest> noSampleGameIsDoubted() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("sample-data"))) {
      return all.filter(f -> f.toString().endsWith(".csv")).sorted().toList().stream()
          .map(
              f ->
                  DynamicTest.dynamicTest(
                      String.valueOf(f.getFileName()),
                      () -> assertEquals(List.of(), Doubts.of(List.of(f), Optional.empty()))));
    }
  }
}
