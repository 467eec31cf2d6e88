package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import twostrides.game.Pressure;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.SheetsRead;
import twostrides.rulebook.Bookshelf;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/**
 * Every folder of {@code cases} is one case that a person who writes no Java can add: a sheet (with
 * a map, if it needs one) and the rows expected of it. Only the columns named in the expected file
 * are compared; every row is.
 */
class CaseFilesTest {

  private static Path root() throws URISyntaxException {
    return Path.of(CaseFilesTest.class.getResource("cases").toURI());
  }

  @TestFactory
  Stream<DynamicTest> cases() throws IOException, URISyntaxException {
    try (Stream<Path> folders = Files.list(root())) {
      return folders.filter(Files::isDirectory).sorted().toList().stream()
          .map(d -> DynamicTest.dynamicTest(d.getFileName().toString(), () -> holds(d)));
    }
  }

  @Test
  void thereAreCasesForEveryWayOutStrengthAndCause() throws IOException, URISyntaxException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.walk(root())) {
      for (Path p : files.filter(f -> f.endsWith("exits.csv")).toList()) {
        all.append(Files.readString(p));
      }
    }
    for (WayOut w : WayOut.values()) {
      assertTrue(all.toString().contains(w.label()), w.label());
    }
    for (AtCenter c : AtCenter.values()) {
      assertTrue(all.toString().contains("," + c.label() + ","), c.label());
    }
    for (RestartCause c : RestartCause.values()) {
      assertTrue(all.toString().contains("," + c.label()), c.label());
    }
    for (String s : List.of("even", "shorthanded", "power play", "unknown")) {
      assertTrue(all.toString().contains("," + s + ","), s);
    }
  }

  private static void holds(Path dir) throws IOException, SheetException {
    Path mapFile = dir.resolve("map.toml");
    Optional<SheetMap> map =
        Files.exists(mapFile)
            ? Optional.of(SheetMap.read(mapFile, SheetForms.ALL))
            : Optional.empty();
    SheetsRead season = SeasonReader.read(List.of(dir.resolve("sheet.csv")), map, false, n -> {});
    assertEquals(List.of(), season.setAside(), "rows set aside");
    twostrides.season.Season tables =
        twostrides.season.Season.of(
            season.games(), season.tagged(), settings(dir), SkatersAtRelease.NONE);
    compare(dir.resolve("exits.csv"), tables.exits());
    compare(dir.resolve("releases.csv"), tables.releases());
    compare(dir.resolve("restarts.csv"), tables.restarts());
    compare(dir.resolve("rulings.csv"), tables.rulings());
    compare(dir.resolve("manpower.csv"), tables.manpower());
    compare(dir.resolve("flags.csv"), tables.flags());
    compare(dir.resolve("kills.csv"), tables.kills());
    GameRecords game =
        season.games().isEmpty()
            ? TagReader.read(season.tagged().get(0), settings(dir))
            : GameReader.read(season.games().get(0), settings(dir));
    compare(dir.resolve("kill-events.csv"), killEvents(game));
    compare(dir.resolve("carries.csv"), carries(game));
    compare(dir.resolve("onward.csv"), onward(game));
  }

  /** What happens in kills, which no table of the book lists. */
  private static Table killEvents(GameRecords game) {
    IntColumn kill = IntColumn.create("kill");
    StringColumn what = StringColumn.create("what");
    DoubleColumn secondsIn = DoubleColumn.create("seconds_in");
    DoubleColumn video = DoubleColumn.create("video_s");
    for (Kill k : game.kills()) {
      for (Kill.Event e : k.events()) {
        kill.append(k.number());
        what.append(e.what().name());
        secondsIn.append(e.secondsIn());
        add(video, e.video());
      }
    }
    return Table.create("kill-events", kill, what, secondsIn, video);
  }

  /** From which the pace and the losses of carriers are taken. */
  private static Table carries(GameRecords game) {
    StringColumn pressure = StringColumn.create("pressure");
    DoubleColumn seconds = DoubleColumn.create("seconds");
    StringColumn lost = StringColumn.create("lost");
    DoubleColumn metres = DoubleColumn.create("metres_up_ice");
    for (Carries.Step step : game.carries().steps()) {
      add(pressure, step.pressure().map(Pressure::word));
      seconds.append(step.seconds());
      lost.append(String.valueOf(step.lost()));
      add(metres, step.metresUpIce());
    }
    return Table.create("carries", pressure, seconds, lost, metres);
  }

  /** What the lines of exits say of where the puck was going. */
  private static Table onward(GameRecords game) {
    IntColumn exit = IntColumn.create("exit");
    StringColumn receiver = StringColumn.create("receiver");
    DoubleColumn received = DoubleColumn.create("received_s");
    DoubleColumn x = DoubleColumn.create("end_x_m");
    DoubleColumn y = DoubleColumn.create("end_y_m");
    for (Exit e : game.exits()) {
      Onward to = e.at().onward();
      exit.append(e.number());
      add(receiver, to.receiver());
      add(received, to.received());
      add(x, to.end().map(p -> OptionalDouble.of(p.x())).orElse(OptionalDouble.empty()));
      add(y, to.end().map(p -> OptionalDouble.of(p.y())).orElse(OptionalDouble.empty()));
    }
    return Table.create("onward", exit, receiver, received, x, y);
  }

  private static void add(DoubleColumn column, OptionalDouble value) {
    value.ifPresentOrElse(column::append, column::appendMissing);
  }

  private static void add(StringColumn column, Optional<String> value) {
    value.ifPresentOrElse(column::append, column::appendMissing);
  }

  /** The default settings, or what the case's own settings.txt changes: one word a line. */
  private static Settings settings(Path dir) throws IOException {
    Path file = dir.resolve("settings.txt");
    Settings s = Settings.DEFAULT;
    if (!Files.exists(file)) {
      return s;
    }
    for (String line : Files.readAllLines(file)) {
      String value = line.substring(line.indexOf('=') + 1).strip();
      switch (line.substring(0, line.indexOf('=')).strip()) {
        case "rulebook" -> s = s.withBook(Bookshelf.book(value));
        case "compare" -> s = s.withOthers(List.of(Bookshelf.book(value)));
        case "manpower" ->
            s = s.withManpower(ManpowerSource.valueOf(value.toUpperCase(java.util.Locale.ROOT)));
        default -> throw new IllegalArgumentException(file + ": " + line);
      }
    }
    return s;
  }

  private static void compare(Path expectedFile, Table actual) throws IOException {
    if (!Files.exists(expectedFile)) {
      return;
    }
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(expectedFile, StandardCharsets.UTF_8, format)) {
      List<CSVRecord> expected = parser.getRecords();
      StringBuilder want = new StringBuilder();
      StringBuilder got = new StringBuilder();
      for (CSVRecord r : expected) {
        want.append(String.join(" | ", r.toList())).append('\n');
      }
      for (int i = 0; i < actual.rowCount(); i++) {
        int row = i;
        got.append(
                String.join(
                    " | ",
                    parser.getHeaderNames().stream().map(c -> cell(actual, c, row)).toList()))
            .append('\n');
      }
      assertEquals(want.toString(), got.toString(), expectedFile.getFileName().toString());
    }
  }

  /**
   * A cell as the expected files write it: metres with up to two decimals, seconds without needless
   * zeros.
   */
  static String cell(Table t, String column, int row) {
    if (t.column(column).isMissing(row)) {
      return "";
    }
    Object value = t.get(row, t.columnIndex(column));
    if (!(value instanceof Double d)) {
      return String.valueOf(value);
    }
    String rounded =
        java.math.BigDecimal.valueOf(d)
            .setScale(2, java.math.RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString();
    return column.endsWith("x_m") && !rounded.contains(".") ? rounded + ".0" : rounded;
  }
}
