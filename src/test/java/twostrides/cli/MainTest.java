package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

class MainTest {

  private static final String SHEET =
      "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against,stoppage\n"
          + "1,19:00,Herons,4 Berg,recovery,,-25,5,5,5,\n"
          + "1,18:56,Herons,4 Berg,release,lost,-5,6,5,5,\n"
          + "1,18:53,Wolves,9 Vik,faceoff,,21,-6.7,5,5,\n"
          + "1,18:50,Wolves,9 Vik,recovery,,3,3,5,5,\n";

  @TempDir Path dir;

  private Path sheet(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  @Test
  void aReviewEndsWithTheSumAndThePageToOpen() throws IOException {
    Path book = dir.resolve("book");
    Run r = Run.of("review", sheet("g.csv", SHEET), "--out", book);
    assertEquals(0, r.code(), r.err());
    assertTrue(r.out().contains("4 rows read = 4 rows used + 0 rows set aside."), r.out());
    Path page = book.resolve("index.html");
    assertTrue(r.out().strip().endsWith("Open this page: " + page), r.out());
    String html = Files.readString(page);
    assertTrue(html.contains("with 1 icing (1.0 a game)"), html);
    String restarts = Files.readString(book.resolve("restarts.html"));
    assertTrue(restarts.contains("icing, inferred"), restarts);
    assertTrue(Files.readString(book.resolve("data/exits.csv")).contains("released short"));
    assertFalse(Files.exists(book.resolve("set-aside")));
  }

  @Test
  void anotherBookNamedTwiceIsAskedOnce() throws IOException {
    Path book = dir.resolve("book");
    Path sheet = sheet("g.csv", SHEET);
    String other = "--compare-rulebook";
    assertEquals(0, Run.of("review", sheet, other, "nhl", other, "nhl", "--out", book).code());
    assertEquals(
        Files.readAllLines(book.resolve("data/releases.csv")).size(),
        Files.readAllLines(book.resolve("data/rulings.csv")).size());
    String page = Files.readString(book.resolve("compare.html"));
    assertEquals(2, page.split("<h2 id=\"book-", -1).length);
  }

  @Test
  void doubtfulRowsAreSetAsideInTheirOwnWords() throws IOException {
    Path book = dir.resolve("book");
    String bad = "1,18:40,Herons,4 Berg,dribble,,-5,6,5,5,\n";
    Run r = Run.of("review", sheet("g.csv", SHEET + bad), "--out", book);
    assertEquals(0, r.code(), r.err());
    assertTrue(r.out().contains("5 rows read = 4 rows used + 1 rows set aside."), r.out());
    assertTrue(r.out().contains("line 6, column \"action\""), r.out());
    assertTrue(Files.readString(book.resolve("set-aside/g.csv")).endsWith(bad));
    assertTrue(Files.readString(book.resolve("set-aside/problems.csv")).contains("dribble"));
    assertTrue(Files.readString(book.resolve("run.json")).contains("\"set_aside\" : 1"));
  }

  @Test
  void anUnreadableFileStopsTheRunBeforeAnythingIsWritten() throws IOException {
    Path book = dir.resolve("book");
    sheet("a.csv", SHEET);
    Files.write(
        dir.resolve("b.csv"), "period,clock\n\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
    Run r = Run.of("review", dir, "--out", book);
    assertEquals(3, r.code());
    assertTrue(r.err().contains("b.csv"), r.err());
    assertFalse(Files.exists(book));
    Run on = Run.of("review", dir, "--out", book, "--keep-going");
    assertEquals(0, on.code(), on.err());
    assertTrue(on.out().contains("1 file set aside whole"), on.out());
    assertTrue(Files.readString(book.resolve("set-aside/problems.csv")).contains("b.csv"));
  }

  @Test
  void aFailedRunLeavesTheLastBook() throws IOException {
    Path book = dir.resolve("book");
    Path good = sheet("g.csv", SHEET);
    assertEquals(0, Run.of("review", good, "--out", book).code());
    Map<String, String> before = files(book);
    assertEquals(3, Run.of("review", dir.resolve("missing.csv"), "--out", book).code());
    assertEquals(before, files(book));
  }

  @Test
  void aFolderOfOtherFilesIsNeverReplaced() throws IOException {
    Path mine = Files.createDirectory(dir.resolve("mine"));
    Files.writeString(mine.resolve("thesis.txt"), "keep me");
    Run r = Run.of("review", sheet("g.csv", SHEET), "--out", mine);
    assertEquals(4, r.code());
    assertTrue(r.err().contains("no review book"), r.err());
    assertEquals("keep me", Files.readString(mine.resolve("thesis.txt")));
  }

  @Test
  void aSheetWithNothingUsableIsRefused() throws IOException {
    Run r =
        Run.of(
            "review", sheet("g.csv", "period,clock,team,action\n"), "--out", dir.resolve("book"));
    assertEquals(3, r.code());
    assertTrue(r.err().contains("no row that could be used"), r.err());
    assertFalse(Files.exists(dir.resolve("book")));
    assertFalse(Files.exists(dir.resolve("book.writing")));
  }

  @Test
  void wrongOptionsAreUsageErrors() {
    assertEquals(2, Run.of("review").code());
    assertEquals(2, Run.of("revue", "x").code());
    assertEquals(2, Run.of("review", "x", "--window", "0").code());
    assertEquals(2, Run.of("demo", "--games", "0", "--out", dir.resolve("d")).code());
    Run many = Run.of("demo", "--games", "1313", "--out", dir.resolve("d"));
    assertEquals(2, many.code());
    assertTrue(
        many.err().contains("found 1313, expected a whole number from 1 to 1312"), many.err());
    assertEquals(2, Run.of().code());
  }

  @Test
  void demoReplacesItsOwnFilesAndNobodyElses() throws IOException {
    Path demo = dir.resolve("league");
    assertEquals(0, Run.of("demo", "--games", "1", "--seed", "5", "--out", demo).code());
    assertEquals(0, Run.of("demo", "--games", "1", "--seed", "6", "--out", demo).code());
    Path game = demo.resolve("game-01-GLA-TAR.csv");
    Files.writeString(game, Files.readString(game).replace("touch", "pass"));
    Map<String, String> before = files(demo);
    Run again = Run.of("demo", "--games", "2", "--seed", "7", "--out", demo);
    assertEquals(4, again.code());
    assertTrue(again.err().contains("or that have changed since: game-01-GLA-TAR.csv. Move"));
    assertTrue(again.err().contains("name another folder with --out"), again.err());
    assertEquals(before, files(demo));
  }

  @Test
  void checkSaysWhatIsMissingAndWhatThatCosts() throws IOException {
    Run r = Run.of("check", sheet("g.csv", SHEET));
    assertEquals(0, r.code(), r.err());
    assertTrue(
        r.out().contains("pressure: the order in which to look at icings knows less"), r.out());
    assertTrue(r.out().contains("rows with action stoppage"), r.out());
    assertTrue(r.out().contains("4 rows read = 4 rows used + 0 rows set aside."), r.out());
  }

  @Test
  void namesCanBeLeftOut() throws IOException {
    Path book = dir.resolve("book");
    assertEquals(
        0,
        Run.of("review", sheet("g.csv", SHEET.replace("9 Vik", "Vik")), "--out", book, "--no-names")
            .code());
    files(book)
        .forEach(
            (f, text) ->
                assertFalse(
                    f.contains("berg") || text.contains("Berg") || text.contains("Vik"), f));
    assertTrue(Files.readString(book.resolve("data/exits.csv")).contains("No. 4"));
  }

  /** Same input, same settings: the same bytes, whatever the locale and the time zone. */
  @Test
  void theSameRunWritesTheSameBytes() throws IOException {
    Path demo = dir.resolve("demo");
    assertEquals(0, Run.of("demo", "--games", "1", "--seed", "5", "--out", demo).code());
    Path one = dir.resolve("one");
    assertEquals(0, Run.of("review", demo, "--out", one).code());
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      Path two = dir.resolve("two");
      assertEquals(0, Run.of("review", demo, "--out", two).code());
      assertEquals(files(one), files(two));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  /** Every file below a folder by its relative name; pictures as the digits of their bytes. */
  private static Map<String, String> files(Path dir) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        files.put(
            dir.relativize(p).toString(),
            new String(Files.readAllBytes(p), StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }
}
