package twostrides.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebDriver;

/** What the browser of the tests promises to all of them. */
class BrowserTest {

  /**
   * The longest that a page has taken on the test machine, a whole team's sheets under the rules of
   * axe-core: 8 s idle.
   */
  private static final Duration LONGEST = Duration.ofSeconds(8);

  /** A machine four times slower, with four other builds on it, still passes. */
  @Test
  void aSlowMachineIsWaitedFor() throws Exception {
    Duration least = LONGEST.multipliedBy(4 * 4);
    try (Browser b = Browser.open(400, 300)) {
      WebDriver.Timeouts timeouts = b.driver().manage().timeouts();
      assertEquals(Browser.PATIENCE, timeouts.getScriptTimeout());
      assertEquals(Browser.PATIENCE, timeouts.getPageLoadTimeout());
      assertTrue(Browser.PATIENCE.compareTo(least) > 0, Browser.PATIENCE.toString());
    }
  }
}
