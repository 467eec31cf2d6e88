package twostrides.cli;

import java.util.List;
import java.util.Random;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import twostrides.browser.Browser;
import twostrides.picture.Camera;
import twostrides.picture.Pixel;
import twostrides.rink.Place;
import twostrides.rink.RinkMark;

/** Somebody who clicks on the picture of the settle page, up to 2 px of the screen beside. */
final class PictureCoach {

  /** How far a click is off each way, px of the screen. */
  static final int OFF = 2;

  private final Browser browser;
  private final Random random;

  /** Where the cross is, px of the screen from the middle of the picture. */
  private double crossX;

  private double crossY;

  PictureCoach(Browser browser, long seed) {
    this.browser = browser;
    this.random = new Random(seed);
  }

  /** Opens the picture and waits until the video stands. */
  void open() throws InterruptedException {
    browser.await(
        "const v = document.getElementById('video');"
            + "return v.readyState > 1 && !v.seeking && v.videoWidth === "
            + Camera.WIDTH);
    browser.at("on-picture").click();
  }

  /** Chooses marks, in the list and on the rink by turns, and clicks each. */
  void marks(Camera camera, List<RinkMark> marks) throws InterruptedException {
    for (int i = 0; i < marks.size(); i++) {
      RinkMark m = marks.get(i);
      if (i % 2 == 0) {
        choose(m.id());
      } else {
        onRink(m.place());
      }
      int before = clicked();
      click(camera.shows(m.place().x(), m.place().y()));
      browser.await(
          "return document.querySelectorAll('#sight .clicked').length === " + (before + 1));
    }
  }

  int clicked() {
    return browser.driver().findElements(By.cssSelector("#sight .clicked")).size();
  }

  void choose(String id) {
    browser.driver().findElement(By.cssSelector("#mark-list option[value='" + id + "']")).click();
  }

  private void onRink(Place p) {
    if (browser.at("more").getAttribute("aria-pressed").equals("false")) {
      browser.at("more").click();
    }
    double scale = rinkScale();
    new Actions(browser.driver())
        .moveToElement(
            browser.at("rink"), (int) Math.round(p.x() * scale), (int) Math.round(-p.y() * scale))
        .click()
        .perform();
  }

  /** Clicks men, one after another. */
  void men(Camera camera, List<Place> men) throws InterruptedException {
    for (Place p : men) {
      int before = rings();
      click(camera.shows(p.x(), p.y()));
      browser.await(
          "return document.querySelectorAll('#sight .who-ring').length === " + (before + 1));
    }
  }

  int rings() {
    return browser.driver().findElements(By.cssSelector("#sight .who-ring")).size();
  }

  /** Clicks a point of the video, as near as the screen and the hand allow. */
  void click(Pixel p) {
    double scale = scale();
    new Actions(browser.driver())
        .moveToElement(
            browser.at("lens"),
            (int) Math.round((p.u() - Camera.WIDTH / 2.0) * scale + noise()),
            (int) Math.round((p.v() - Camera.HEIGHT / 2.0) * scale + noise()))
        .click()
        .perform();
  }

  /** Moves the cross to a point by arrows, from where it was moved last, and sets it. */
  void aim(Pixel p) {
    Actions keys = new Actions(browser.driver());
    double scale = scale();
    crossX =
        steps(
            keys, crossX, (p.u() - Camera.WIDTH / 2.0) * scale, Keys.ARROW_LEFT, Keys.ARROW_RIGHT);
    crossY =
        steps(keys, crossY, (p.v() - Camera.HEIGHT / 2.0) * scale, Keys.ARROW_UP, Keys.ARROW_DOWN);
    keys.sendKeys(" ").perform();
  }

  /** Steps of 50, 8 and 1 px from a place to another; where it ends. */
  private static double steps(
      Actions keys, double from, double to, CharSequence back, CharSequence on) {
    double at = from;
    for (int step : new int[] {50, 8, 1}) {
      while (Math.abs(to - at) >= (step == 1 ? 0.5 : step)) {
        CharSequence way = to < at ? back : on;
        if (step == 50) {
          keys.keyDown(Keys.SHIFT).sendKeys(way).keyUp(Keys.SHIFT);
        } else if (step == 1) {
          keys.keyDown(Keys.CONTROL).sendKeys(way).keyUp(Keys.CONTROL);
        } else {
          keys.sendKeys(way);
        }
        at += to < at ? -step : step;
      }
    }
    return at;
  }

  /** Taps a point of the video with a finger. */
  void tap(Pixel p) throws InterruptedException {
    int before = drawn();
    double scale = scale();
    SettleBrowserTest.finger(
        browser,
        browser.at("lens"),
        (int) Math.round((p.u() - Camera.WIDTH / 2.0) * scale),
        (int) Math.round((p.v() - Camera.HEIGHT / 2.0) * scale),
        0,
        0);
    browser.await(
        "return document.querySelectorAll('#sight .clicked, #sight .who-ring').length === "
            + (before + 1));
  }

  private int drawn() {
    return clicked() + rings();
  }

  /** Taps a place of the rink with a finger. */
  void tapRink(Place p) {
    double scale = rinkScale();
    SettleBrowserTest.finger(
        browser,
        browser.at("rink"),
        (int) Math.round(p.x() * scale),
        (int) Math.round(-p.y() * scale),
        0,
        0);
  }

  private double rinkScale() {
    return Double.parseDouble(
        browser.ask("return document.getElementById('ice').getScreenCTM().a"));
  }

  /** Px of the screen for one of the video. */
  double scale() {
    return Double.parseDouble(
        browser.ask("return document.getElementById('sight').getScreenCTM().a"));
  }

  private double noise() {
    return 2 * OFF * random.nextDouble() - OFF;
  }
}
