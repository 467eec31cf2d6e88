package twostrides.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebDriver;

/** What the browser of the tests promises to all of them. */
class BrowserTest {

  /**
   * The longest that a page has taken: a whole team's sheets under the rules of axe-core, in a
   * browser slowed to a sixth, on two cores that seventeen others wanted.
   */
  private static final Duration LONGEST = Duration.ofSeconds(67);

  /** A machine that is four times slower still passes. */
  @Test
  void aSlowMachineIsWaitedFor() throws Exception {
    Duration least = LONGEST.multipliedBy(4);
    try (Browser b = Browser.open(400, 300)) {
      WebDriver.Timeouts timeouts = b.driver().manage().timeouts();
      assertEquals(Browser.PATIENCE, timeouts.getScriptTimeout());
      assertEquals(Browser.PATIENCE, timeouts.getPageLoadTimeout());
      assertTrue(Browser.PATIENCE.compareTo(least) > 0, Browser.PATIENCE.toString());
    }
  }

  /** Every test of a page fails where the page asks anybody else; so does this one's. */
  @Test
  void aPageThatAsksOutsideFailsItsTest(@TempDir Path dir) throws Exception {
    // An address that is nobody's: RFC 5737.
    String picture = "http://192.0.2.1/picture.png";
    Path page = dir.resolve("page.html");
    Files.writeString(page, "<script>new Image().src = '" + picture + "'</script>");
    Browser b = Browser.open(400, 300);
    b.driver().get(page.toUri().toString());
    AssertionError asked = assertThrows(AssertionError.class, b::close);
    assertTrue(asked.getMessage().contains(picture), asked.getMessage());
  }

  /** Tests share a program, and nothing else. */
  @Test
  void theNextTestFindsNothingOfTheOneBefore(@TempDir Path dir) throws Exception {
    String page = Files.writeString(dir.resolve("page.html"), "<p>page").toUri().toString();
    try (Browser b = Browser.open(400, 300)) {
      b.driver().get(page);
      b.ask("localStorage.setItem('list', '1'); document.cookie = 'a=1'; console.error('wrong')");
      b.look("dark");
    }
    try (Browser b = Browser.open(500, 400)) {
      b.driver().get(page);
      assertEquals("null", b.ask("return localStorage.getItem('list')"));
      assertEquals("", b.ask("return document.cookie"));
      assertEquals("500", b.ask("return innerWidth"));
      assertEquals("false", b.ask("return matchMedia('(prefers-color-scheme: dark)').matches"));
      assertEquals(List.of(), b.consoleErrors());
      assertEquals(List.of(page), b.requests());
    }
  }
}
