package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twostrides.cli.TagPages.click;
import static twostrides.cli.TagPages.clock;
import static twostrides.cli.TagPages.keys;
import static twostrides.cli.TagPages.open;
import static twostrides.cli.TagPages.rows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.interactions.Actions;
import twostrides.browser.Browser;
import twostrides.clips.TestVideo;

/** The page in a real browser: by keys and two clicks, by keyboard alone, and after a crash. */
class TagBrowserTest {

  /** Nothing is wider than the page. */
  private static final String FITS =
      "const e = document.documentElement; return e.scrollWidth <= e.clientWidth";

  private static final String WAYS = "1234561231";

  @TempDir Path dir;

  /** A minute and a half of video. */
  private Path film() throws IOException {
    return TestVideo.write(dir.resolve("game.mp4"), 90, 5);
  }

  private static double number(Browser b, String id) {
    return Double.parseDouble(b.ask("return document.getElementById('" + id + "').value"));
  }

  private static void quiet(Browser b, List<TagProcess> programs) {
    assertEquals(List.of(), b.consoleErrors());
    for (String url : b.requests()) {
      boolean ours = programs.stream().anyMatch(p -> url.startsWith(p.address().toString()));
      assertTrue(
          ours || url.startsWith("data:") || url.startsWith("blob:") || !url.startsWith("http"),
          url);
    }
  }

  @Test
  void tenExitsOutliveTheBrowserAndTheBookAgrees() throws Exception {
    Path sheet = dir.resolve("tags.csv");
    Path book = dir.resolve("book");
    String[] options = {
      "--home", "Herons", "--away", "Wolves", "--video", film().toString(), "--out", book.toString()
    };
    List<TagProcess> programs = new ArrayList<>();
    try (TagProcess p = TagProcess.start(sheet, options)) {
      programs.add(p);
      try (Browser b = Browser.open(1280, 900)) {
        open(b, p);
        b.await("return document.getElementById('video').readyState > 0");
        keys(b, "o", "19:30", Keys.ENTER);
        b.await("return document.getElementById('clock-said').textContent.includes('19:30')");
        for (int i = 0; i < 10; i++) {
          b.ask("document.getElementById('video').currentTime = " + 8 * i + ";");
          assertEquals(new TestVideo.Shown(8 * i, 8 * i, 5), TestVideo.shown(b));
          keys(b, WAYS.substring(i, i + 1));
          click(b, -9, 3 + i);
          assertEquals(-9, number(b, "f-x_m"), 0.15);
          assertEquals(3 + i, number(b, "f-y_m"), 0.15);
          click(b, 14, -4);
          keys(b, i % 2 == 0 ? "a" : "d", "x", "v", i == 3 ? "k" : "j");
          keys(b, "p", (4 + i % 3) + " Berg", Keys.ENTER);
          rows(b, i + 1);
        }
        quiet(b, programs);
        b.kill();
      }
      assertEquals(11, Files.readAllLines(sheet).size());
      try (Browser b = Browser.open(1280, 900)) {
        open(b, p);
        rows(b, 10);
        quiet(b, programs);
      }
      p.kill();
    }
    try (TagProcess p = TagProcess.start(sheet, options);
        Browser b = Browser.open(1280, 900)) {
      programs.add(p);
      open(b, p);
      rows(b, 10);
      assertTrue(b.text().contains("10 exits brought back"), b.text());
      // 72 s of video after 19:30 was set.
      assertTrue(b.text().contains("P1 18:18"), b.text());
      // One click makes the book and opens it.
      b.at("book").click();
      b.await("return !document.getElementById('book-link').hidden");
      assertTrue(b.text().contains("10 rows read = 10 rows used + 0 rows set aside."), b.text());
      List<String> tabs = new ArrayList<>(b.driver().getWindowHandles());
      b.driver().switchTo().window(tabs.get(tabs.size() - 1));
      b.await("return document.querySelector('h1') !== null");
      assertTrue(b.text().contains("iced, of the tries to get out: 5 of 10"), b.text());
      quiet(b, programs);
    }
    List<String> exits = Files.readAllLines(book.resolve("data/exits.csv"));
    assertEquals(11, exits.size());
    // Five were tagged as icing, as the book counts restarts.
    assertEquals(5, exits.stream().filter(l -> l.contains(",icing_written,")).count());
    assertEquals(9, exits.stream().filter(l -> l.contains(",Herons,Wolves,")).count());
  }

  @Test
  void theKeyboardAloneWillDo() throws Exception {
    try (TagProcess p = TagProcess.start(dir.resolve("tags.csv"), "--home", "Herons");
        Browser b = Browser.open(1000, 800)) {
      open(b, p);
      keys(b, "1");
      keys(b, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_UP, Keys.ENTER);
      assertEquals(-14.0, number(b, "f-x_m"));
      assertEquals(0.5, number(b, "f-y_m"));
      assertEquals("Released 14.0 m behind center, 0.5 m to the left.", b.at("live").getText());
      new Actions(b.driver())
          .keyDown(Keys.SHIFT)
          .sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT)
          .keyUp(Keys.SHIFT)
          .sendKeys(Keys.ENTER)
          .perform();
      assertEquals(-8.0, number(b, "f-end_x_m"));
      keys(b, "w", "a", "c", Keys.ENTER);
      // The clock was never set: nothing is saved, and the page says which field and why.
      b.await("return document.getElementById('problems').textContent.includes('Game clock')");
      assertEquals("f-clock", b.ask("return document.activeElement.id"));
      assertTrue(b.text().contains("Fill it in; nothing was saved."), b.text());
      keys(b, "13:07", Keys.ENTER);
      rows(b, 1);
      assertTrue(b.at("live").getText().startsWith("Saved: 13:07, Herons, carry. 1 exit."));
      // The rink seen from the other side: what was right of the cross is toward the own goal.
      keys(b, "y", "3", Keys.ARROW_RIGHT, Keys.ENTER);
      assertEquals(-15.5, number(b, "f-x_m"));
      keys(b, Keys.ESCAPE);
      assertEquals("Discarded; nothing was saved.", b.at("live").getText());
      b.driver().findElement(By.cssSelector("#rows button[aria-label^=Edit]")).sendKeys(Keys.ENTER);
      assertEquals("13:07", b.at("f-clock").getDomProperty("value"));
      b.at("f-clock").clear();
      b.at("f-clock").sendKeys("12:34", Keys.ENTER);
      b.await("return document.getElementById('rows').textContent.includes('12:34')");
      keys(b, "u");
      b.await("return document.getElementById('rows').textContent.includes('13:07')");
      b.driver()
          .findElement(By.cssSelector("#rows button[aria-label^=Delete]"))
          .sendKeys(Keys.ENTER);
      rows(b, 0);
      keys(b, "u");
      rows(b, 1);
      // Single keys can be turned off.
      b.at("keys").click();
      keys(b, "2");
      assertTrue(b.at("step").getText().startsWith("Press a way out"));
      b.at("end").click();
      b.await(
          "return document.getElementById('live').textContent.startsWith('Ended: 1 exit tagged')");
    }
  }

  private static String value(Browser b, String id) {
    return b.at(id).getDomProperty("value");
  }

  private static WebElement button(Browser b, String label) {
    return b.driver().findElement(By.cssSelector("#rows button[aria-label^=" + label + "]"));
  }

  /** Where the cross waits nobody has said that the puck was. */
  @Test
  void enterOnAnUntouchedCrossSavesNoPlace() throws Exception {
    Path sheet = dir.resolve("tags.csv");
    try (TagProcess p = TagProcess.start(sheet, "--home", "Herons");
        Browser b = Browser.open(1000, 800)) {
      open(b, p);
      clock(b, "13:07");
      keys(b, "3", Keys.ENTER);
      rows(b, 1);
      assertTrue(b.at("live").getText().startsWith("Saved: 13:07, Herons, chip."));
      assertTrue(Files.readString(sheet).endsWith(",Herons,,,chip,,,,,,,,,,,,\n"));
      // A cross that is moved is a place, and the next one waits anew.
      keys(b, "3", Keys.ARROW_RIGHT, Keys.ENTER, Keys.ENTER);
      rows(b, 2);
      assertTrue(Files.readString(sheet).endsWith(",chip,,,,-14.5,0.0,,,,,,,\n"));
      // A place that is taken back waits to be moved again.
      keys(b, "3", Keys.ARROW_RIGHT, Keys.ENTER, Keys.BACK_SPACE, Keys.ENTER);
      rows(b, 3);
      assertTrue(Files.readString(sheet).endsWith(",Herons,,,chip,,,,,,,,,,,,\n"));
    }
  }

  /** After Edit the keys are commands, as for a new exit; L leads to the clock. */
  @Test
  void editLeavesTheKeysCommands() throws Exception {
    try (TagProcess p = TagProcess.start(dir.resolve("tags.csv"), "--home", "Herons");
        Browser b = Browser.open(1000, 800)) {
      open(b, p);
      clock(b, "19:43");
      keys(b, "3", Keys.ENTER);
      rows(b, 1);
      button(b, "Edit").sendKeys(Keys.ENTER);
      keys(b, "2", "w", "d");
      assertEquals("19:43", value(b, "f-clock"));
      keys(b, Keys.ENTER);
      b.await("return document.getElementById('rows').textContent.includes('released short')");
      assertTrue(b.at("rows").getText().contains("P1 19:43"), b.at("rows").getText());
      assertTrue(b.at("rows").getText().contains("opponent"), b.at("rows").getText());
      button(b, "Edit").sendKeys(Keys.ENTER);
      keys(b, "l", "19:40", Keys.ENTER);
      b.await("return document.getElementById('rows').textContent.includes('P1 19:40')");
    }
  }

  /** Two pages on one sheet: neither writes over what it does not show, and each undoes its own. */
  @Test
  void aPageThatWasLeftBehindIsTold() throws Exception {
    try (TagProcess p = TagProcess.start(dir.resolve("tags.csv"), "--home", "Herons");
        Browser b = Browser.open(1000, 800)) {
      open(b, p);
      clock(b, "13:07");
      keys(b, "3", Keys.ENTER);
      rows(b, 1);
      String mine = b.driver().getWindowHandle();
      b.driver().switchTo().newWindow(WindowType.TAB);
      open(b, p);
      rows(b, 1);
      assertEquals("true", b.at("undo").getDomProperty("disabled"), "no step of this page");
      button(b, "Edit").sendKeys(Keys.ENTER);
      keys(b, "2", "l", "12:00", Keys.ENTER);
      b.await("return document.getElementById('rows').textContent.includes('12:00')");

      b.driver().switchTo().window(mine);
      button(b, "Edit").sendKeys(Keys.ENTER);
      keys(b, "a", "l", "13:05", Keys.ENTER);
      b.await("return document.getElementById('problems').textContent.includes('Another page')");
      assertEquals(
          "Another page changed this exit: it is now P1 12:00, Herons, pass. Nothing was saved."
              + " Press Esc, then Edit, to go on from that.",
          b.at("problems").getText());
      assertTrue(b.at("rows").getText().contains("P1 12:00"), "the list is as it stands now");
      assertEquals("13:05", value(b, "f-clock"), "what was typed is still there");
      keys(b, Keys.TAB, Keys.ESCAPE);
      keys(b, "u");
      b.await(
          "return document.getElementById('problems').textContent.includes('Nothing was undone')");
      assertTrue(b.at("rows").getText().contains("P1 12:00"));
      button(b, "Edit").sendKeys(Keys.ENTER);
      assertEquals("12:00", value(b, "f-clock"));
      keys(b, "a", Keys.ENTER);
      b.await("return document.getElementById('rows').textContent.includes('icing')");

      // A page that is loaded again stays the same page.
      b.driver().navigate().refresh();
      rows(b, 1);
      keys(b, "u");
      b.await("return !document.getElementById('rows').textContent.includes('icing')");
      assertTrue(
          b.at("live").getText().startsWith("Undone: the exit at 12:00 stands as it did before."));
    }
  }

  @Test
  void namesShowAsTextAndThePageFitsAPhone() throws Exception {
    String hostile = "<img src=x onerror=alert(1)>\"'&";
    Path sheet = dir.resolve("tags.csv");
    Files.writeString(
        sheet,
        "period,clock,team,player,way_out,note\n1,10:00,\""
            + hostile.replace("\"", "\"\"")
            + "\",\""
            + "x".repeat(200)
            + "\",chip,</script><script>alert(2)</script>\n");
    try (TagProcess p = TagProcess.start(sheet, "--home", hostile);
        Browser b = Browser.open(360, 740)) {
      for (String look : List.of("light", "dark")) {
        b.look(look);
        open(b, p);
        rows(b, 1);
        assertEquals("true", b.ask(FITS));
        assertTrue(b.text().contains(hostile), b.text());
        assertEquals("0", b.ask("return document.querySelectorAll('img, #rows script').length"));
        assertEquals("", b.violations(), look);
      }
      b.size(1920, 1080);
      assertEquals("true", b.ask(FITS));
      quiet(b, List.of(p));
      assertFalse(b.driver().getPageSource().contains("<img src=x"));
    }
  }

  /** A video chosen on the page is played from memory of the browser: no request carries it. */
  @Test
  void aChosenVideoIsSentNowhere() throws Exception {
    try (TagProcess p = TagProcess.start(dir.resolve("tags.csv"), "--home", "Herons");
        Browser b = Browser.open(1000, 800)) {
      open(b, p);
      b.at("file").sendKeys(film().toString());
      b.await("return document.getElementById('video').readyState > 0");
      assertTrue(b.at("video").getDomProperty("src").startsWith("blob:"));
      b.ask("document.getElementById('video').currentTime = 12.5;");
      keys(b, "o", "10:00", Keys.ENTER);
      b.await("return document.getElementById('clock-said').textContent.includes('10:00')");
      b.ask("document.getElementById('video').currentTime = 42.5;");
      b.await("return !document.getElementById('video').seeking");
      keys(b, "6");
      assertEquals("9:30", b.at("f-clock").getDomProperty("value"));
      assertEquals("42.5", b.at("f-video_s").getDomProperty("value"));
      b.at("save").click();
      rows(b, 1);
      quiet(b, List.of(p));
    }
  }
}
