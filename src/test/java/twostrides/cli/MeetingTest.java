package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import twostrides.browser.Browser;
import twostrides.clips.CounterVideo;
import twostrides.clips.TestVideo;
import twostrides.serve.LocalServer;
import twostrides.serve.ShowSite;

/** A meeting of three games with true videos, H.264 and WebM: as a coach holds it, in a browser. */
class MeetingTest {

  private static final List<String> GAMES =
      List.of("2031-10-04 GLA-TAR", "2031-10-08 COP-GLA", "2031-10-12 GLA-SAL");

  /** Seconds of the two clips of each game; {@code SampleBook.ofGames} writes them. */
  private static final double[] SECONDS = {3.5, 11.5};

  private static final int LENGTH = 40;

  @TempDir private static Path dir;
  private static Path book;
  private static Path films;
  @AutoClose private static Browser browser;
  @AutoClose private static LocalServer server;

  @BeforeAll
  static void review() throws Exception {
    browser = Browser.open(1280, 800);
    CounterVideo.needed("ffmpeg");
    book = SampleBook.ofGames(dir, GAMES, "--flag-threshold", "0.01");
    films = Files.createDirectory(dir.resolve("films"));
    for (int i = 0; i < GAMES.size(); i++) {
      String name = GAMES.get(i) + (i == 2 ? " cam.webm" : ".mp4");
      CounterVideo.write(films.resolve(name), LENGTH, i + 1);
    }
    GameVideos videos = GameVideos.in(films, GameVideos.gamesOf(book));
    server = LocalServer.start("show", new ShowSite(book, videos.files(), videos.script("")));
  }

  /** Short clips, and a record of where the player stopped. */
  private static void open(String address) throws InterruptedException {
    browser.driver().get(address);
    browser.ask(
        "localStorage.clear(); localStorage.setItem('two-strides-lead', '1');"
            + "localStorage.setItem('two-strides-after', '1')");
    browser.driver().get("about:blank");
    browser.driver().get(address);
    watchTheEnds();
  }

  private static void watchTheEnds() {
    browser.ask(
        "window.ends = []; const v = document.querySelector('video');"
            + "v.addEventListener('clipend', () => window.ends.push(v.currentTime))");
  }

  @BeforeEach
  void served() throws Exception {
    open(server.address() + "meeting.html");
  }

  private static String list() {
    return browser.ask(
        "return Array.from(document.querySelectorAll('#list button.at')).map(b => b.textContent).join('\\n')");
  }

  private static void putAll() {
    browser.ask(
        "const s = document.querySelector('#ready-tools select');"
            + "s.value = Array.from(s.options).find(o => o.text.startsWith('pucks sent')).value;"
            + "s.dispatchEvent(new Event('change'))");
    browser.at("put-all").click();
  }

  private static void press(CharSequence key) {
    new Actions(browser.driver()).sendKeys(key).perform();
  }

  /** Waits until the clip has stopped and looks at its last picture. */
  private static void stopsAt(int clips, double end, int mark) throws InterruptedException {
    browser.await("return window.ends.length === " + clips);
    double stopped = Double.parseDouble(browser.ask("return window.ends[" + (clips - 1) + "]"));
    assertEquals(end, stopped, 0.3, "clip " + clips);
    TestVideo.Shown shown = TestVideo.shown(browser);
    assertEquals(end, shown.time(), 0.3, "stands where it stopped");
    assertEquals(mark, shown.mark(), "the game of clip " + clips);
    assertEquals(Math.floor(shown.time()), shown.second(), 1, "the second of clip " + clips);
  }

  @Test
  void sixClipsOfThreeGamesPlayWithArrowKeysAlone() throws Exception {
    putAll();
    assertEquals(6, list().lines().count(), list());
    browser.driver().navigate().refresh();
    assertEquals(6, list().lines().count(), "the list survives a reload");
    watchTheEnds();
    assertEquals("6 clips from 3 games. Every video is there.", browser.at("list-said").getText());
    browser.at("play").sendKeys(Keys.ENTER);
    for (int i = 0; i < 6; i++) {
      assertEquals(
          (i + 1) + " of 6", browser.ask("return document.querySelector('.place').textContent"));
      stopsAt(i + 1, SECONDS[i % 2] + 1, i / 2 + 1);
      press(i % 2 == 0 ? Keys.ARROW_RIGHT : Keys.PAGE_DOWN);
    }
    assertEquals(
        "This was the last clip.",
        browser.driver().findElement(By.cssSelector("#stage .status")).getText());
    press(Keys.PAGE_UP);
    stopsAt(7, SECONDS[0] + 1, 3);
    press("r");
    stopsAt(8, SECONDS[0] + 1, 3);
    press(Keys.ESCAPE);
    assertEquals("true", browser.ask("return document.getElementById('stage').hidden"));
    assertEquals(List.of(), browser.consoleErrors());
  }

  private static double now() {
    return Double.parseDouble(
        browser.ask("return document.querySelector('#stage video').currentTime"));
  }

  @Test
  void thePlayGoesSlowlyPictureByPictureAndLarge() throws Exception {
    putAll();
    browser.at("play").sendKeys(Keys.ENTER);
    browser.await("return document.querySelector('#stage video').currentTime > 0");
    press("h");
    assertEquals("0.5", browser.ask("return document.querySelector('#stage video').playbackRate"));
    stopsAt(1, SECONDS[0] + 1, 1);
    press("h");
    assertEquals("1", browser.ask("return document.querySelector('#stage video').playbackRate"));
    double end = now();
    press(",");
    press(",");
    double before = now();
    assertEquals(2 / 25.0, end - before, 0.02, "two pictures back");
    press(".");
    assertEquals(1 / 25.0, now() - before, 0.02, "one picture on");
    assertEquals("true", browser.ask("return document.querySelector('#stage video').paused"));
    press("l");
    double large =
        Double.parseDouble(
            browser.ask(
                "return parseFloat(getComputedStyle(document.querySelector('#stage h2')).fontSize)"));
    assertTrue(large >= 28, "readable from the back of a room: " + large + " px");
    press("l");
    press("f");
    browser.await("return document.fullscreenElement === document.getElementById('stage')");
    press("f");
    browser.await("return document.fullscreenElement === null");
    press(Keys.ESCAPE);
    assertEquals(List.of(), browser.consoleErrors());
  }

  @Test
  void aClipIsDraggedToItsPlace() throws Exception {
    putAll();
    List<String> before = list().lines().toList();
    List<WebElement> clips = browser.driver().findElements(By.cssSelector("#list li"));
    new Actions(browser.driver()).dragAndDrop(clips.get(0), clips.get(2)).perform();
    List<String> wanted = new ArrayList<>(before);
    wanted.add(2, wanted.remove(0));
    assertEquals(wanted, list().lines().toList());
  }

  @Test
  void theListIsOrderedNotedExportedAndImported() throws Exception {
    putAll();
    List<String> before = list().lines().toList();
    browser
        .driver()
        .findElement(By.cssSelector("#list button.at"))
        .sendKeys(Keys.chord(Keys.ALT, Keys.ARROW_DOWN));
    List<String> after = list().lines().toList();
    assertEquals(before.get(1), after.get(0));
    assertEquals(before.get(0), after.get(1));
    browser
        .driver()
        .findElement(By.cssSelector("#list input.note"))
        .sendKeys("<b>look</b>", Keys.TAB);
    browser.ask(
        "window.saved = ''; URL.createObjectURL = b => { b.text().then(t => window.saved = t); return 'blob:x'; };"
            + "HTMLAnchorElement.prototype.click = () => {};"
            + "Array.from(document.querySelectorAll('#list-tools button')).find(b => b.textContent === 'Export').click()");
    browser.await("return window.saved !== ''");
    Path file = Files.writeString(dir.resolve("meeting.json"), browser.ask("return window.saved"));
    open(server.address() + "meeting.html");
    assertEquals("", list());
    browser
        .driver()
        .findElement(By.cssSelector("#list-tools input[accept^='.json']"))
        .sendKeys(file.toString());
    browser.await("return document.querySelectorAll('#list li').length === 6");
    assertEquals(after, list().lines().toList());
    assertEquals(
        "<b>look</b>", browser.ask("return document.querySelector('#list input.note').value"));
    assertEquals("0", browser.ask("return document.querySelectorAll('#list b').length"));
    assertEquals(List.of(), browser.consoleErrors());
  }

  @Test
  void rowsAndMarksOfOtherPagesComeOnTheList() throws Exception {
    open(server.address() + "restarts.html");
    browser.driver().findElement(By.cssSelector("tbody button.put")).click();
    assertEquals(
        "Meeting (1)",
        browser.ask("return document.querySelector('nav a[href$=\"meeting.html\"]').textContent"));
    browser.driver().get(server.address() + "flags.html");
    browser.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertEquals(
        "true",
        browser.ask(
            "const b = document.querySelectorAll('details.flag button.put'); b[b.length - 1].click(); return b.length > 0"));
    browser.driver().get(server.address() + "meeting.html");
    assertTrue(list().lines().count() >= 1 && list().contains("P1 18:16"), list());
  }

  @Test
  void fromDiskAFolderIsChosenOnceAndTheWrongFileNeverPlays() throws Exception {
    open(book.resolve("meeting.html").toUri().toString());
    putAll();
    assertEquals(
        "6 clips from 3 games. Choose the folder with the videos.",
        browser.at("list-said").getText());
    Path some = Files.createDirectories(dir.resolve("some"));
    Path other = some.resolve(GAMES.get(0) + ".mp4");
    Files.copy(films.resolve(GAMES.get(0) + ".mp4"), other);
    browser
        .driver()
        .findElement(By.cssSelector("#list-tools input[webkitdirectory]"))
        .sendKeys(some.toString());
    browser.await(
        "return document.getElementById('list-said').textContent.includes('No file is known')");
    browser.at("play").sendKeys(Keys.ENTER);
    stopsAt(1, SECONDS[0] + 1, 1);
    for (int i = 0; i < 2; i++) {
      press(Keys.ARROW_RIGHT);
    }
    assertEquals(
        "This clip is of %s, the open file of %s. Choose the file that has \"%s\" in its name."
            .formatted(GAMES.get(1), GAMES.get(0), GAMES.get(1)),
        browser.driver().findElement(By.cssSelector("#stage .status")).getText());
    assertEquals("true", browser.ask("return document.querySelector('video').paused"));
    press(Keys.ESCAPE);
    // Another film under the same name: the first megabyte tells them apart.
    CounterVideo.write(other, LENGTH, 5);
    browser.driver().navigate().refresh();
    watchTheEnds();
    browser
        .driver()
        .findElement(By.cssSelector("#list-tools input[webkitdirectory]"))
        .sendKeys(some.toString());
    browser.await(
        "return document.getElementById('list-said').textContent.includes('No file is known')");
    browser.at("play").sendKeys(Keys.ENTER);
    browser.await(
        "return document.querySelector('#stage .status').textContent.includes('another beginning or size')");
    assertEquals(
        "", browser.ask("return document.querySelector('video').getAttribute('src') || ''"));
    assertEquals(List.of(), browser.consoleErrors());
  }
}
