package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same number and seed give the same bytes; the sample season is what the generator writes. */
class DemoLeagueTest {
  private static final long SAMPLE_SEED = 16;
  private static final int SAMPLE_GAMES = 12;

  @Test
  void localeAndTimeZoneChangeNothing(@TempDir Path dir) throws IOException {
    DemoLeague.write(dir.resolve("here"), 2, 11);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      DemoLeague.write(dir.resolve("there"), 2, 11);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertEquals(files(dir.resolve("here")), files(dir.resolve("there")));
  }

  @Test
  void gameIsTheSameHoweverManyAreAskedFor() {
    DemoSeason few = DemoLeague.simulate(3, 5);
    DemoSeason more = DemoLeague.simulate(6, 5);
    for (int i = 0; i < 3; i++) {
      assertEquals(few.games().get(i).sheetCsv(), more.games().get(i).sheetCsv());
      assertEquals(few.games().get(i).exitTruthCsv(), more.games().get(i).exitTruthCsv());
    }
  }

  @Test
  void otherSeedsAndOtherGamesDiffer() {
    DemoSeason one = DemoLeague.simulate(7, 5);
    assertNotEquals(
        one.games().get(0).exitTruthCsv(), DemoLeague.simulate(1, 6).games().get(0).exitTruthCsv());
    // Games 1 and 7 are the same pairing; their dates differ, and so must their play.
    assertNotEquals(clocks(one.games().get(0).sheetCsv()), clocks(one.games().get(6).sheetCsv()));
  }

  @Test
  void oneTeamPlaysEveryGameAgainstSixOthers() {
    DemoSeason season = DemoLeague.simulate(12, 3);
    assertEquals("Glasswater Herons", season.team());
    long home =
        season.games().stream().filter(g -> g.team(Side.HOME).name().equals(season.team())).count();
    long away =
        season.games().stream().filter(g -> g.team(Side.AWAY).name().equals(season.team())).count();
    assertEquals(6, home);
    assertEquals(6, away);
    assertEquals(
        7,
        season.games().stream()
            .flatMap(g -> Stream.of(g.team(Side.HOME).code(), g.team(Side.AWAY).code()))
            .distinct()
            .count());
  }

  @Test
  void tooFewOrTooManyGamesAreRefusedInPlainWords() {
    IllegalArgumentException none =
        assertThrows(IllegalArgumentException.class, () -> DemoLeague.simulate(0, 1));
    assertEquals("A demo season has 1 to 99 games, not 0.", none.getMessage());
    assertThrows(IllegalArgumentException.class, () -> DemoLeague.simulate(100, 1));
  }

  @Test
  void sampleSeasonIsWhatTheGeneratorWrites(@TempDir Path dir) throws IOException {
    DemoLeague.write(dir, SAMPLE_GAMES, SAMPLE_SEED);
    Map<String, String> kept = files(Path.of("sample-data"));
    kept.remove("README.md");
    Map<String, String> made = files(dir);
    assertEquals(made.keySet(), kept.keySet());
    for (Map.Entry<String, String> file : made.entrySet()) {
      assertEquals(file.getValue(), kept.get(file.getKey()), file.getKey());
    }
  }

  private static Map<String, String> files(Path root) throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(root)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        String name = root.relativize(path).toString().replace('\\', '/');
        found.put(name, Files.readString(path, StandardCharsets.UTF_8));
      }
    }
    return found;
  }

  private static java.util.List<Integer> clocks(String sheet) {
    return Tables.parse(sheet).stream().map(Tables::elapsed).toList();
  }
}
