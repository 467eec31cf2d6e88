package twostrides.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import twostrides.demo.DemoGame;
import twostrides.demo.DemoLeague;
import twostrides.exits.Settings;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;

/**
 * What no table of right answers is needed for: the same games told in another way give the same
 * exits, releases and restarts, moved as the telling was.
 */
class MetamorphicTest {

  /** Where a row stands, which another telling changes. */
  private static final Set<String> PLACE_IN_SHEET = Set.of("sheet", "line");

  /** What one game's rows say with the help of all games: chances, and what is made of them. */
  private static final Set<String> OF_THE_SEASON =
      Set.of(
          "sheet",
          "line",
          "p_gain_center",
          "p_gain_low",
          "p_gain_high",
          "p_avoid",
          "flagged",
          "reason",
          "evidence",
          "seconds_to_center");

  /** A game's kills are numbered the home team's first. */
  private static final Set<String> HOME_FIRST =
      Stream.concat(OF_THE_SEASON.stream(), Stream.of("kill")).collect(Collectors.toSet());

  @TempDir static Path dir;

  private static List<String> sheets;
  private static twostrides.season.Season asTold;
  private static int told;

  @BeforeAll
  static void simulate() throws Exception {
    sheets = DemoLeague.simulate(4, 20311004).games().stream().map(DemoGame::sheetCsv).toList();
    asTold = read(sheets);
  }

  private static twostrides.season.Season read(List<String> texts) throws Exception {
    Path folder = Files.createDirectory(dir.resolve("told-" + ++told));
    List<Path> files = new ArrayList<>();
    for (String text : texts) {
      files.add(Files.writeString(folder.resolve("s" + files.size() + ".csv"), text));
    }
    SheetsRead read = SeasonReader.read(files, Optional.empty(), false, n -> {});
    assertEquals(List.of(), read.setAside());
    return twostrides.season.Season.of(
        read.games(), read.tagged(), Settings.DEFAULT, SkatersAtRelease.NONE);
  }

  /** The rows of a table, each with the names of its columns. */
  private static List<Map<String, String>> rows(Table table, Set<String> without) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (int i = 0; i < table.rowCount(); i++) {
      Map<String, String> row = new LinkedHashMap<>();
      for (Column<?> c : table.columns()) {
        if (!without.contains(c.name())) {
          row.put(c.name(), c.getString(i));
        }
      }
      rows.add(row);
    }
    return rows;
  }

  private static void assertSame(
      twostrides.season.Season other,
      Set<String> without,
      UnaryOperator<Map<String, String>> moved) {
    List<Table> before = List.of(asTold.exits(), asTold.releases(), asTold.restarts());
    List<Table> after = List.of(other.exits(), other.releases(), other.restarts());
    for (int t = 0; t < before.size(); t++) {
      assertTrue(before.get(t).rowCount() > 40, before.get(t).rowCount() + " rows");
      assertAlike(
          rows(before.get(t), without).stream().map(moved).toList(), rows(after.get(t), without));
    }
  }

  /** Row by row, so that a difference is named and not looked for. */
  private static void assertAlike(
      List<Map<String, String>> expected, List<Map<String, String>> found) {
    for (int i = 0; i < Math.min(expected.size(), found.size()); i++) {
      Map<String, String> unlike = new LinkedHashMap<>(expected.get(i));
      unlike.entrySet().removeAll(found.get(i).entrySet());
      assertEquals(expected.get(i), found.get(i), "row " + (i + 1) + " should have " + unlike);
    }
    assertEquals(expected.size(), found.size());
  }

  /** A sheet with other words in each row's cells, by the names of the columns. */
  private static String told(String sheet, UnaryOperator<Map<String, String>> cells)
      throws IOException {
    StringBuilder out = new StringBuilder();
    try (CSVParser in =
            CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(sheet));
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.DEFAULT)) {
      printer.printRecord(in.getHeaderNames());
      for (CSVRecord r : in) {
        Map<String, String> row = cells.apply(new LinkedHashMap<>(r.toMap()));
        printer.printRecord(in.getHeaderNames().stream().map(row::get).toList());
      }
    }
    return out.toString();
  }

  private static List<String> told(UnaryOperator<Map<String, String>> cells) throws IOException {
    List<String> all = new ArrayList<>();
    for (String sheet : sheets) {
      all.add(told(sheet, cells));
    }
    return all;
  }

  @Test
  void theOrderOfTheSheetsDoesNotMatter() throws Exception {
    List<String> turned = new ArrayList<>(sheets);
    Collections.reverse(turned);
    assertSame(read(turned), PLACE_IN_SHEET, r -> r);
  }

  @Test
  void allGamesInOneSheetAreTheSameGames() throws Exception {
    String header = sheets.get(0).lines().findFirst().orElseThrow();
    String one =
        sheets.stream()
            .flatMap(s -> s.lines().skip(1))
            .collect(Collectors.joining("\n", header + "\n", "\n"));
    assertSame(read(List.of(one)), PLACE_IN_SHEET, r -> r);
  }

  @Test
  void aGameInASheetAPeriodIsTheSameGame() throws Exception {
    List<String> split = new ArrayList<>();
    for (String sheet : sheets) {
      List<String> lines = sheet.lines().toList();
      int period = Arrays.asList(lines.get(0).split(",", -1)).indexOf("period");
      Map<String, List<String>> periods =
          lines.stream().skip(1).collect(Collectors.groupingBy(l -> l.split(",", -1)[period]));
      periods.values().forEach(p -> split.add(lines.get(0) + "\n" + String.join("\n", p) + "\n"));
    }
    assertTrue(split.size() >= 3 * sheets.size(), split.size() + " sheets");
    assertSame(read(split), PLACE_IN_SHEET, r -> r);
  }

  /** One game more changes what is said of the season, and no other game's own rows. */
  @Test
  void aGameMoreChangesNoOtherGame() throws Exception {
    twostrides.season.Season fewer = read(sheets.subList(0, 3));
    Set<String> known =
        rows(fewer.exits(), Set.of()).stream().map(r -> r.get("game")).collect(Collectors.toSet());
    assertEquals(3, known.size());
    for (List<Table> pair :
        List.of(
            List.of(asTold.exits(), fewer.exits()),
            List.of(asTold.releases(), fewer.releases()),
            List.of(asTold.restarts(), fewer.restarts()))) {
      assertAlike(
          rows(pair.get(0), OF_THE_SEASON).stream()
              .filter(r -> known.contains(r.get("game")))
              .toList(),
          rows(pair.get(1), OF_THE_SEASON));
    }
  }

  private static String negative(String number) {
    if (number.isEmpty() || Double.parseDouble(number) == 0) {
      return number;
    }
    return number.startsWith("-") ? number.substring(1) : "-" + number;
  }

  /** Of each skater the second number, and the fourth where there is one. */
  private static String mirrored(String skaters) {
    return Stream.of(skaters.split("; ?", -1))
        .map(
            s -> {
              String[] n = s.split(" ", -1);
              for (int i = 1; i < n.length; i += 2) {
                n[i] = negative(n[i]);
              }
              return String.join(" ", n);
            })
        .collect(Collectors.joining("; "));
  }

  @Test
  void leftAndRightAreAlike() throws Exception {
    twostrides.season.Season other =
        read(
            told(
                r -> {
                  r.replaceAll(
                      (column, v) ->
                          column.endsWith("y_m")
                              ? negative(v)
                              : column.endsWith("_skaters") ? mirrored(v) : v);
                  return r;
                }));
    assertSame(
        other,
        OF_THE_SEASON,
        r -> {
          r.replaceAll(
              (column, v) ->
                  column.endsWith("y_m")
                      ? negative(v)
                      : !column.equals("side")
                          ? v
                          : v.equals("left") ? "right" : v.equals("right") ? "left" : v);
          return r;
        });
  }

  /** Places are seen by the acting team, so that nothing but the venue turns round. */
  @Test
  void homeAndAwayAreAlike() throws Exception {
    twostrides.season.Season other =
        read(
            told(
                r -> {
                  String home = r.get("home");
                  r.put("home", r.get("away"));
                  r.put("away", home);
                  return r;
                }));
    assertSame(
        other,
        HOME_FIRST,
        r -> {
          r.computeIfPresent(
              "venue", (k, v) -> v.equals("home") ? "away" : v.equals("away") ? "home" : v);
          return r;
        });
  }
}
