package twostrides.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
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
}
