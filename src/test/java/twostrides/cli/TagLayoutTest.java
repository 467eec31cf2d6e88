package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twostrides.cli.TagPages.clock;
import static twostrides.cli.TagPages.keys;
import static twostrides.cli.TagPages.open;
import static twostrides.cli.TagPages.rows;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import twostrides.browser.Browser;

/** What has to be seen is on the screen, and nothing lies over it: measured in the browser. */
class TagLayoutTest {

  @TempDir Path dir;

  /** Whether all of an element is in the window, with nothing over its middle. */
  private static void seen(Browser b, String id) {
    String said =
        b.ask(
            "const e = document.getElementById(arguments[0]), r = e.getBoundingClientRect();"
                + "const hit = document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2);"
                + "const inside = r.height > 0 && r.top >= 0 && r.left >= 0"
                + " && r.bottom <= innerHeight && r.right <= innerWidth;"
                + "return (inside && e.contains(hit)) || [r.top, r.bottom, innerHeight,"
                + " hit && (hit.id || hit.className)].join(' ')",
            id);
    assertEquals("true", said, id);
  }

  /** Saved, undone and what is wrong, wherever the page is scrolled to. */
  @ParameterizedTest
  @CsvSource({"1280, 800", "820, 1180", "820, 800", "360, 740"})
  void whatIsSaidIsSeen(int width, int height) throws Exception {
    try (TagProcess p = TagPages.program(dir, 30);
        Browser b = Browser.open(width, height)) {
      open(b, p);
      for (String end : new String[] {"0", "document.body.scrollHeight"}) {
        clock(b, "13:07");
        b.ask("scrollTo(0, " + end + ")");
        keys(b, "3", Keys.ENTER);
        rows(b, 1);
        assertTrue(b.at("live").getText().startsWith("Saved: 13:07"), b.at("live").getText());
        seen(b, "live");
        keys(b, "u");
        rows(b, 0);
        assertTrue(b.at("live").getText().startsWith("Undone: "), b.at("live").getText());
        seen(b, "live");
        for (String field : new String[] {"clock", "video_s"}) {
          keys(b, "3");
          b.ask("document.getElementById('f-' + arguments[0]).value = 'nowhere'", field);
          b.ask("scrollTo(0, " + end + ")");
          b.ask("document.getElementById('rink').focus({preventScroll: true})");
          keys(b, Keys.ENTER);
          b.await("return document.activeElement.id === 'f-" + field + "'");
          assertTrue(b.at("problems").getText().contains("nowhere"), b.at("problems").getText());
          seen(b, "problems");
          seen(b, "f-" + field);
          b.ask("document.activeElement.blur()");
          keys(b, Keys.ESCAPE);
        }
      }
    }
  }

  /** The picture and the rink together; on one column the picture stays while keys are tapped. */
  @Test
  void videoRinkAndKeysAreOnOneScreen() throws Exception {
    try (TagProcess p = TagPages.program(dir, 30);
        Browser b = Browser.open(1280, 800)) {
      open(b, p);
      b.await("return document.getElementById('video').readyState > 0");
      seen(b, "video");
      seen(b, "rink");
      clock(b, "13:07");
      seen(b, "g-way_out");
      seen(b, "g-ended");
      b.size(820, 1180);
      for (String id :
          List.of(
              "video",
              "rink",
              "g-way_out",
              "g-at_center",
              "g-ended",
              "g-team",
              "g-faceoff",
              "g-strength")) {
        seen(b, id);
      }
      b.size(820, 800);
      b.driver().findElement(By.cssSelector("input[name='way_out'][value='kept in']")).click();
      seen(b, "video");
      b.ask("document.getElementById('g-net_empty').scrollIntoView()");
      seen(b, "video");
    }
  }
}
