package twostrides.cli;

import java.io.IOException;
import java.nio.file.Path;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import twostrides.browser.Browser;
import twostrides.clips.TestVideo;

/** What a person does on the page of the command tag. */
final class TagPages {

  /** Metres across the drawing of the rink: 200 ft and a margin of 0.6 m on both sides. */
  static final double DRAWN_M = 60.96 + 1.2;

  private TagPages() {}

  /** The program with a video of its own beside an empty sheet in a folder. */
  static TagProcess program(Path dir, int seconds) throws Exception {
    return program(dir, TestVideo.write(dir.resolve("game.mp4"), seconds, 5));
  }

  /** The program with a video, beside an empty sheet in a folder. */
  static TagProcess program(Path dir, Path film) throws IOException {
    return TagProcess.start(
        dir.resolve("tags.csv"),
        "--home",
        "Herons",
        "--away",
        "Wolves",
        "--video",
        film.toString());
  }

  static void keys(Browser b, CharSequence... keys) {
    new Actions(b.driver()).sendKeys(keys).perform();
  }

  static void open(Browser b, TagProcess p) throws InterruptedException {
    b.driver().get(p.address().toString());
    b.await("return document.getElementById('sheet').textContent.endsWith('.csv')");
  }

  static void rows(Browser b, int n) throws InterruptedException {
    b.await("return document.querySelectorAll('#rows tr').length === " + n);
  }

  /** Clicks a place on the rink, in the frame of a team whose own goal is at the left. */
  static void click(Browser b, double x, double y) {
    WebElement rink = b.at("rink");
    Dimension size = rink.getSize();
    double scale = size.getWidth() / DRAWN_M;
    new Actions(b.driver())
        .moveToElement(rink, (int) Math.round(x * scale), (int) Math.round(-y * scale))
        .click()
        .perform();
  }

  private static final String CLOCK_SAID =
      "return document.getElementById('clock-said').textContent.includes('%s')";

  static void clock(Browser b, String clock) throws InterruptedException {
    keys(b, "o", clock, Keys.ENTER);
    b.await(CLOCK_SAID.formatted(clock));
  }
}
