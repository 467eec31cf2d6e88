package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.game.SheetForms;
import twostrides.sheet.SheetMap;
import twostrides.sheet.ShippedMaps;
import twostrides.tracking.TrackForm;

/** Maps by name, and several maps in one run. */
class MapNamesTest {

  private static final Path OPEN =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  private static final Pattern SUM =
      Pattern.compile("(\\d+) rows read = (\\d+) rows used \\+ (\\d+) rows set aside\\.");

  @TempDir Path dir;

  @Test
  void everyMapOfTheDocsIsShippedAndCanBeRead() throws Exception {
    TreeSet<String> names = new TreeSet<>();
    for (ShippedMaps.Entry entry : ShippedMaps.all()) {
      names.add(entry.name() + ".toml");
      boolean track = entry.sheets().contains("-map)");
      SheetMap map = ShippedMaps.find(entry.name(), track ? TrackForm.ALL : SheetForms.ALL);
      assertEquals(entry.name(), map.name());
    }
    try (Stream<Path> docs = Files.list(Path.of("docs/maps"))) {
      List<String> files =
          docs.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".toml")).toList();
      assertEquals(new TreeSet<>(files), names);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "womens-2022-open-data, *.events.csv, 5295",
    "women-2018-19, women-2018-19/sheets, 7112",
    "women-2023, women-2023/sheets, 3710",
    "men-2024, men-2024/sheets, 3756",
    "women-league-2021, women-league-2021/sheets, 8759",
    "tracked-2023, tracked-2023/native, 5254"
  })
  void openSheetsAreReadByTheNameOfTheirMap(String map, String sheets, int rows) {
    assumeTrue(Files.isDirectory(OPEN), "no open games at " + OPEN);
    Run run = Run.of("check", OPEN + "/" + sheets, "--map", map);
    assertEquals(Main.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("Map: " + map + "\n"), run.out());
    Matcher sum = SUM.matcher(run.out());
    assertTrue(sum.find(), run.out());
    assertEquals(rows, Integer.parseInt(sum.group(1)));
    int aside = Integer.parseInt(sum.group(3));
    assertTrue(aside <= 0.005 * rows, () -> aside + " of " + rows + " set aside\n" + run.out());
  }

  /** The tracked games in their own columns, and what their README says of the native ones. */
  @Test
  void theRawTrackedSheetsAreReadThroughNumberedColumns() {
    assumeTrue(Files.isDirectory(OPEN), "no open games at " + OPEN);
    Run run = Run.of("check", OPEN + "/tracked-2023/raw", "--map", "tracked-2023-raw");
    assertEquals(Main.DONE, run.code(), run.err());
    Matcher sum = SUM.matcher(run.out());
    assertTrue(sum.find(), run.out());
    assertEquals(9699, Integer.parseInt(sum.group(1)));
    // 4,483 rows say that nobody has the puck, repeat a goal, or say where it crossed a line.
    int doubtful = Integer.parseInt(sum.group(3)) - 4483;
    assertEquals(17, doubtful, run.out());
    assertTrue(run.out().contains("Mended: 124 x skater up to 3 m outside the boards"), run.out());
    assertTrue(run.out().contains("faceoff 131, touch 28"), run.out());
    assertTrue(run.out().contains("stoppage 131"), run.out());
    assertFalse(run.out().contains("net_for_empty:"), run.out());
    assertFalse(run.out().contains("opponent_skaters:"), run.out());
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  @Test
  void severalMapsInOneRunEachForItsSheets() throws Exception {
    file("men-1.csv", "p,c,t,a\n1,10:00,A,recovery\n1,9:00,B,recovery\n");
    file("old-1.csv", "p;k;t;a\n1;2:00;C;recovery\n1;3:00;D;recovery\n");
    file("own.csv", "period,clock,team,action\n1,10:00,E,recovery\n1,9:00,F,recovery\n");
    String columns = "[columns]\nperiod = 'p'\nteam = 't'\naction = 'a'\n";
    Path men = file("men.toml", "sheet = 'play'\n" + columns + "clock = 'c'\n");
    Path old =
        file("old.toml", "sheet = 'play'\n" + columns + "clock = 'k'\n[clock]\ndirection = 'up'\n");
    Run run =
        Run.of(
            "check", dir, "--period-length", 20, "--map", "men-*=" + men, "--map", "old-?=" + old);
    assertEquals(Main.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("Map: men-*: men.toml, old-?: old.toml\n"), run.out());
    assertTrue(run.out().contains("6 rows read = 6 rows used + 0 rows set aside."), run.out());
    Run forAll =
        Run.of(
            "check",
            dir.resolve("men-1.csv"),
            dir.resolve("old-1.csv"),
            "--period-length",
            20,
            "--map",
            men,
            "--map",
            "old-*=" + old);
    assertEquals(Main.DONE, forAll.code(), forAll.err());
  }

  @Test
  void wrongNamesAndPatternsAreNamed() throws Exception {
    Path sheet = file("g.csv", "period,clock,team,action\n1,10:00,E,recovery\n");
    assertSays(
        Run.of("check", sheet, "--map", "mens-2024"),
        "mens-2024: found no map of this name, expected a map's file, or the name of a shipped map:"
            + " \"men-2024\", ");
    assertSays(Run.of("check", sheet, "--map", "[=men-2024"), "found \"[\" before the =");
    assertSays(Run.of("check", sheet, "--map", "=men-2024"), "found nothing before the =");
    assertSays(
        Run.of("check", sheet, "--map", "men-2024", "--map", "women-2023"),
        "women-2023: found a second map for every sheet, after men-2024");
  }

  private static void assertSays(Run run, String words) {
    assertEquals(Main.UNREADABLE, run.code(), run.err());
    assertTrue(run.err().contains(words), run.err());
  }
}
