package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import twostrides.browser.Browser;
import twostrides.clips.TestVideo;

/**
 * A click on a row plays that second of the game's video; the pictures themselves are looked at.
 */
class BookVideoTest {

  /** Seconds ahead of the row unless the page is told otherwise. */
  private static final int LEAD = 4;

  private static final String ASKED =
      "document.activeElement.textContent === 'Yes, play what it has'";

  @TempDir private static Path dir;
  private static Path book;
  @AutoClose private static Browser browser;

  /** A row of the restarts: its game and its second of the video. */
  private record Row(String game, int second) {}

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    book =
        SampleBook.of(
            dir.resolve("book"), SampleBook.games().subList(0, 2), "--simulations", "100");
  }

  @BeforeEach
  void open() {
    String page = book.resolve("restarts.html").toUri().toString();
    browser.driver().get(page);
    browser.ask("localStorage.clear()");
    browser.driver().get("about:blank");
    browser.driver().get(page);
    browser.ask(
        // A video that plays at no speed stands where it was sent, however slow the machine is.
        "const v = document.querySelector('video'); window.sought = []; v.defaultPlaybackRate = 0;"
            + "v.addEventListener('seeking', () => window.sought.push(v.currentTime));"
            + "document.querySelector('.player').hidden = false");
  }

  /** The row of each game that comes first in its video, by game. */
  private static List<Row> firstRows() {
    String said =
        browser.ask(
            "const first = {};"
                + "document.querySelectorAll('main tbody tr').forEach(tr => {"
                + "  const at = tr.querySelector('button.at'); if (!at) { return; }"
                + "  const t = at.textContent.split(':').map(Number);"
                + "  const s = t[0] * 3600 + t[1] * 60 + t[2], game = tr.cells[0].textContent;"
                + "  if (!(first[game] <= s)) { first[game] = s; window[game] = at; } });"
                + "return Object.keys(first).sort().map(g => g + ';' + first[g]).join('\\n')");
    return said.lines()
        .map(l -> l.split(";", -1))
        .map(w -> new Row(w[0], Integer.parseInt(w[1])))
        .toList();
  }

  private static void choose(Path... files) {
    String names = String.join("\n", Stream.of(files).map(Path::toString).toList());
    browser.driver().findElement(By.cssSelector("input[type=file]")).sendKeys(names);
  }

  private static void play(Row row) {
    WebElement at =
        (WebElement) browser.driver().executeScript("return window[arguments[0]]", row.game());
    browser
        .driver()
        .executeScript("arguments[0].scrollIntoView({block: 'start'}); arguments[0].focus()", at);
    at.sendKeys(Keys.ENTER);
  }

  /** The player stands at exactly this second, and its picture is that of it. */
  private static void stands(double second, int mark) throws InterruptedException {
    browser.await("return window.sought.length > 0 || " + ASKED);
    if (browser.ask("return " + ASKED).equals("true")) {
      // Films of these tests end soon after the clip.
      browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
      browser.await("return window.sought.length > 0");
    }
    assertEquals(second, Double.parseDouble(browser.ask("return window.sought[0]")), 1e-6);
    TestVideo.Shown shown = TestVideo.shown(browser);
    assertEquals(new TestVideo.Shown(second, (int) Math.floor(second), mark), shown);
    browser.ask("window.sought = []");
  }

  private static String note() {
    return browser.driver().findElement(By.cssSelector(".player [role=status]")).getText();
  }

  @Test
  void aRowPlaysItsSecondLessTheLeadIn() throws Exception {
    Row row = firstRows().get(0);
    int second = row.second();
    choose(TestVideo.write(dir.resolve(row.game() + ".mp4"), second + 60, 1));
    play(row);
    stands(second - LEAD, 1);
    WebElement lead = browser.driver().findElement(By.cssSelector(".player input[type=number]"));
    lead.sendKeys(Keys.HOME, Keys.DELETE, "11");
    play(row);
    stands(second - 11, 1);
    assertEquals(List.of(), browser.consoleErrors());
  }

  @Test
  void ofSeveralFilesTheOneWithTheGamesNamePlays() throws Exception {
    List<Row> rows = firstRows();
    assertEquals(2, rows.size());
    Path[] files = new Path[2];
    for (int i = 0; i < 2; i++) {
      Path file = dir.resolve(rows.get(i).game() + " cam.mp4");
      files[i] = TestVideo.write(file, rows.get(i).second() + 30, 2 + i);
    }
    choose(files);
    for (int i = 1; i >= 0; i--) {
      play(rows.get(i));
      stands(rows.get(i).second() - LEAD, 2 + i);
    }
  }

  /** A part of a game, or another game under its name: neither plays unasked. */
  @Test
  void aFileShorterThanItsGameIsAskedFor() throws Exception {
    Row row = firstRows().get(0);
    choose(TestVideo.write(dir.resolve("part " + row.game() + ".mp4"), row.second() + 60, 1));
    play(row);
    browser.await("return " + ASKED);
    assertTrue(
        note()
            .matches(
                "part .*\\.mp4 lasts 00:.*, but clips of .* go on to 01:.*\\. Is it that game\\?"),
        note());
    assertEquals("0", browser.ask("return window.sought.length"));
  }

  /** Who says that a film is another game is asked anew. */
  @Test
  void aFileThatWasTakenForTheWrongGameIsTakenBack() throws Exception {
    Row row = firstRows().get(0);
    choose(TestVideo.write(dir.resolve("GX010035.mp4"), row.second() + 60, 3));
    play(row);
    browser.await("return document.activeElement.textContent === 'GX010035.mp4'");
    browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
    stands(row.second() - LEAD, 3);
    browser.ask(
        "Array.from(document.querySelectorAll('.player button')).find(b => b.textContent === 'Wrong game').click()");
    assertEquals("This clip is of " + row.game() + ". Which file is that game?", note());
  }

  /** What the viewer sees of another game would be taken for the clip. */
  @Test
  void aClipOfAnotherGameIsRefusedAndSaysWhichFileItNeeds() throws Exception {
    List<Row> rows = firstRows();
    Row open = rows.get(0);
    Row other = rows.get(1);
    Path file = dir.resolve("cam 2 " + open.game() + ".mp4");
    choose(TestVideo.write(file, open.second() + 60, 1));
    play(open);
    stands(open.second() - LEAD, 1);
    play(other);
    assertEquals(
        "This clip is of %s, the open file of %s. Choose the file that has \"%s\" in its name."
            .formatted(other.game(), open.game(), other.game()),
        note());
    assertEquals("0", browser.ask("return window.sought.length"));
    assertEquals("true", browser.ask("return document.querySelector('video').paused"));
    assertEquals("file", browser.ask("return document.activeElement.type"));
    play(open);
    stands(open.second() - LEAD, 1);
  }

  /** A camera's own name says no game: the viewer is asked once. */
  @Test
  void aFileWithoutAGameInItsNameIsAskedFor() throws Exception {
    List<Row> rows = firstRows();
    Row first = rows.get(0);
    choose(TestVideo.write(dir.resolve("GX010034.mp4"), first.second() + 60, 3));
    play(first);
    browser.await("return document.activeElement.textContent === 'GX010034.mp4'");
    assertEquals("This clip is of " + first.game() + ". Which file is that game?", note());
    assertEquals("0", browser.ask("return window.sought.length"));
    assertEquals("GX010034.mp4", browser.ask("return document.activeElement.textContent"));
    browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
    stands(first.second() - LEAD, 3);
    play(first);
    stands(first.second() - LEAD, 3);
    play(rows.get(1));
    assertTrue(note().contains(", the open file of " + first.game() + ". Choose"), note());
    assertEquals("0", browser.ask("return window.sought.length"));
  }

  @Test
  void aFileThatEndsTooSoonOrIsNoVideoIsSaid() throws Exception {
    Row row = firstRows().get(0);
    choose(TestVideo.write(dir.resolve("short " + row.game() + ".mp4"), 10, 0));
    play(row);
    browser.await(
        "return document.querySelector('.player [role=status]').textContent.startsWith('The file')");
    int from = row.second() - LEAD;
    assertEquals(
        String.format(
            Locale.ROOT,
            "The file ends before %02d:%02d:%02d.",
            from / 3600,
            from / 60 % 60,
            from % 60),
        note());
    open();
    choose(Files.writeString(dir.resolve("words " + row.game() + ".mp4"), "no video"));
    play(firstRows().get(0));
    browser.await(
        "return document.querySelector('.player [role=status]').textContent.startsWith('The br')");
    assertEquals("The browser cannot play words " + row.game() + ".mp4.", note());
  }
}
