package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code check} and {@code review} say of sheets that are not as they should be. */
class CheckWordsTest {

  private static final String HEAD = "Period,clock,who,what,x_m,y_m\n";

  private static final String MAP =
      """
      sheet = "play"
      [columns]
      team = "who"
      [[rules]]
      when = { what = "got" }
      set = { action = "recovery" }
      [[rules]]
      when = { what = "hit" }
      skip = "hits are not used"
      [[rules]]
      when = { what = "called" }
      set = { action = "penalty" }
      """;

  @TempDir Path dir;

  private Run check(String rows) throws IOException {
    Path sheet = Files.writeString(dir.resolve("g.csv"), HEAD + rows);
    Path map = Files.writeString(dir.resolve("map.toml"), MAP);
    return Run.of("check", "--map", map, sheet);
  }

  private static String rows(int from, int n, String what, String x) {
    StringBuilder rows = new StringBuilder();
    for (int i = from; i < from + n; i++) {
      String clock = "%d:%02d".formatted(19 - i / 60, 59 - i % 60);
      rows.append("1,%s,%s,%s,%s,1\n".formatted(clock, i % 2 == 0 ? "A" : "B", what, x));
    }
    return rows.toString();
  }

  @Test
  void causesAreOneLineEachAndTheWorstIsFirst() throws Exception {
    Run run =
        check(
            rows(0, 3, "got", "99")
                + rows(3, 20, "got", "1")
                + rows(23, 9, "dribble", "1")
                + rows(32, 7, "hit", "1")
                + rows(39, 1, "juggle", "1"));
    List<String> lines =
        run.lines().stream()
            .filter(l -> l.startsWith("Set aside") || l.startsWith("Skipped"))
            .toList();
    assertEquals(4, lines.size(), run.out());
    assertTrue(lines.get(0).startsWith("Set aside: 9 rows (22.5 %), the first: "), run.out());
    assertTrue(lines.get(0).contains("line 25") && lines.get(0).contains("dribble"), run.out());
    assertTrue(lines.get(1).startsWith("Set aside: 3 rows (7.5 %)"), run.out());
    assertTrue(lines.get(2).contains("juggle") && !lines.get(2).contains("rows ("), run.out());
    assertEquals("Skipped as the map says: 7 (hits are not used).", lines.get(3));
    assertTrue(run.out().contains("40 rows read = 20 rows used + 20 rows set aside."), run.out());
  }

  @Test
  void icingIsNotSaidToBeLostWhereItIsInferred() throws Exception {
    Run run = check(rows(0, 20, "got", "1"));
    assertFalse(run.out().contains("icing is not inferred"), run.out());
    assertTrue(run.out().contains("strength is read from penalty rows"), run.out());
  }

  @Test
  void penaltiesWithoutTheirKindAreCounted() throws Exception {
    Run run = check(rows(0, 20, "got", "1") + rows(20, 2, "called", "1"));
    assertTrue(
        run.out().contains("penalty in 2 of 2 penalty rows: each counts as a minor"), run.out());
  }

  @Test
  void aMirroredRinkStopsCheckAndReview() throws Exception {
    Path map =
        Files.writeString(
            dir.resolve("map.toml"),
            "sheet = \"play\"\n[place]\nview = \"rink_fixed\"\nhome_attacks_plus_x_in = [1, 3]\n");
    Path sheet = Path.of("sample-data/game-01-GLA-TAR.csv").toAbsolutePath();
    Run run = Run.of("check", "--map", map, sheet);
    assertEquals(Main.UNREADABLE, run.code(), run.out());
    assertTrue(run.err().contains("view = \"acting_team\""), run.err());
    assertTrue(run.err().contains("at the wrong end"), run.err());
    Path book = dir.resolve("book");
    Run review = Run.of("review", "--map", map, sheet, "--out", book);
    assertEquals(Main.UNREADABLE, review.code(), review.err());
    assertFalse(Files.exists(book));
    Run trusted = Run.of("check", "--map", map, sheet, "--trust-sheets");
    assertEquals(Main.DONE, trusted.code(), trusted.err());
    assertTrue(trusted.out().contains("Look at this: "), trusted.out());
  }

  private String review(String season, String... more) throws IOException {
    String text =
        Files.readString(Path.of("sample-data/game-01-GLA-TAR.csv"))
            .replace("2031-10-04,", season.isEmpty() ? "," : season + ",");
    Path sheet = Files.writeString(dir.resolve("s.csv"), text);
    List<Object> args =
        new java.util.ArrayList<>(
            List.of("review", sheet, "--rulebook", "usah-youth-14u", "--out", dir.resolve("b")));
    args.addAll(List.of(more));
    Run run = Run.of(args.toArray());
    assertEquals(Main.DONE, run.code(), run.err());
    return run.lines().stream().filter(l -> l.startsWith("Rulebook:")).findFirst().orElseThrow();
  }

  /** What 14U may do with a team short changed after 2016. */
  @Test
  void aGameIsJudgedByTheBookOfItsSeason() throws Exception {
    String old = review("2016-10-04");
    assertTrue(old.contains("season 2016-17"), old);
    Path run = dir.resolve("b/run.json");
    String json = Files.readString(run);
    assertTrue(json.contains("\"rulebook_season\" : \"2016-17\""), json);
    assertTrue(json.contains("\"rulebook_seasons_of_games\" : [ \"2016-17\" ]"), json);
    String asked = review("2016-10-04", "--season", "2025-26");
    assertTrue(asked.contains("season 2025-26"), asked);
    assertTrue(review("2031-10-04").contains("season 2026-27"));
  }
}
