package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.output.OutputException;

/** The same number and seed give the same bytes; the sample season is what the generator writes. */
class DemoLeagueTest {
  private static final long SAMPLE_SEED = 16;
  private static final int SAMPLE_GAMES = 12;

  @Test
  void localeAndTimeZoneChangeNothing(@TempDir Path dir) throws Exception {
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

  /** Every game of a league: 32 teams, each 82 times, nobody twice on a day. */
  @Test
  void aWholeSeasonGivesEveryTeamItsGames() {
    League league = League.found();
    Map<Team, Integer> games = new HashMap<>();
    Map<Team, Integer> atHome = new HashMap<>();
    Set<String> busy = new HashSet<>();
    Set<String> pairs = new HashSet<>();
    for (int n = 1; n <= DemoLeague.MOST_GAMES; n++) {
      Fixture f = Fixture.of(league, n, DemoLeague.MOST_GAMES);
      atHome.merge(f.home(), 1, Integer::sum);
      for (Team team : List.of(f.home(), f.away())) {
        games.merge(team, 1, Integer::sum);
        assertTrue(busy.add(f.date() + team.code()), f.fileStem());
      }
      pairs.add(f.home().code() + f.away().code());
      assertTrue(f.date().isBefore(LocalDate.of(2032, 4, 7)), f.fileStem());
      boolean shown = f.home().equals(league.own()) || f.away().equals(league.own());
      assertEquals(n <= 82, shown, f.fileStem());
    }
    assertEquals(1312, DemoLeague.MOST_GAMES);
    assertEquals(32, games.size());
    assertEquals(Set.of(82), new HashSet<>(games.values()));
    atHome.forEach((team, n) -> assertTrue(n >= 33 && n <= 49, team.name() + " at home: " + n));
    assertTrue(pairs.size() >= 496, "each meets each: " + pairs.size());
  }

  /** Names sort by number; a number is the same game whether few or all are asked for. */
  @Test
  void aNumberIsTheSameGameHoweverManyAreAskedFor() {
    League league = League.found();
    for (int n = 1; n <= 99; n++) {
      Fixture few = Fixture.of(league, n, 99);
      Fixture all = Fixture.of(league, n, 1312);
      assertEquals(few.fileStem().substring(8), all.fileStem().substring(10));
      assertEquals(few.date(), all.date());
    }
    assertEquals("game-07-GLA-TAR", Fixture.of(league, 7, 99).fileStem());
    assertEquals("game-0007-GLA-TAR", Fixture.of(league, 7, 1312).fileStem());
  }

  @Test
  void aFileThatNoDemoWroteStays(@TempDir Path dir) throws Exception {
    Path mine = Files.createDirectories(dir.resolve("truth")).resolve("game-01-GLA-TAR.truth.csv");
    Files.writeString(mine, "mine");
    OutputException refused =
        assertThrows(OutputException.class, () -> DemoLeague.write(dir, 1, 4));
    assertTrue(refused.getMessage().contains("truth/game-01-GLA-TAR.truth.csv"));
    assertEquals(Map.of("truth/game-01-GLA-TAR.truth.csv", "mine"), files(dir));
  }

  @Test
  void anOwnFolderIsWrittenAgainAndItsListKeepsWhatElseItWrote(@TempDir Path dir) throws Exception {
    DemoLeague.write(dir, 2, 4);
    String second = Files.readString(dir.resolve("game-02-COP-GLA.csv"));
    DemoLeague.write(dir, 1, 5);
    assertEquals(second, Files.readString(dir.resolve("game-02-COP-GLA.csv")));
    DemoLeague.write(dir, 2, 6);
    assertNotEquals(second, Files.readString(dir.resolve("game-02-COP-GLA.csv")));
  }

  @Test
  void tooFewOrTooManyGamesAreRefusedInPlainWords() {
    IllegalArgumentException none =
        assertThrows(IllegalArgumentException.class, () -> DemoLeague.simulate(0, 1));
    assertEquals("A demo season has 1 to 1312 games, not 0.", none.getMessage());
    assertThrows(IllegalArgumentException.class, () -> DemoLeague.simulate(1313, 1));
  }

  @Test
  void sampleSeasonIsWhatTheGeneratorWrites(@TempDir Path dir) throws Exception {
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

  private static List<Integer> clocks(String sheet) {
    return Tables.parse(sheet).stream().map(Tables::elapsed).toList();
  }
}
