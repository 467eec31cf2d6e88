package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twostrides.cli.TagPages.clock;
import static twostrides.cli.TagPages.keys;
import static twostrides.cli.TagPages.open;
import static twostrides.cli.TagPages.rows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;
import twostrides.browser.Browser;
import twostrides.clips.CounterVideo;

/**
 * Tagging while the video really runs at double speed. The user watches the picture, which says its
 * second, and presses when the second of the script is there; the sheet must then hold every row of
 * the script to the letter, at that instant. The whole period takes ten minutes and is left out of
 * the usual run: {@code mvn -Plong test -Dtest=TagRunningTest}.
 */
class TagRunningTest {

  /** How far a row's second may lie from the instant at which the user pressed, seconds. */
  private static final double WITHIN = 0.5;

  /** The same for the middle one of the rows. */
  private static final double MEDIAN_WITHIN = 0.1;

  /** A second is written in tenths, and a key reads it a moment after the page's own look. */
  private static final double WRITTEN = 0.15;

  private static final int SPEED = 2;

  /** Where a finger taps on the rink: metres, frame of a team whose own goal is at the left. */
  private static final double TAP_X = -9;

  private static final double TAP_Y = 3;
  private static final double PIXEL = 0.3;

  /**
   * Notes each press with the second at which the video stands and the one that the picture says,
   * and whatever interrupts the video. Reads the picture as TestVideo does.
   */
  private static final String WATCH =
      """
      const v = document.getElementById('video');
      const c = document.createElement('canvas');
      c.width = 128; c.height = 72;
      const x = c.getContext('2d', { willReadFrequently: true });
      window.shown = () => {
        x.drawImage(v, 0, 0, 128, 72);
        const p = x.getImageData(0, 20, 128, 32).data;
        let n = 0;
        for (let b = 0; b < 13; b++) {
          n += p[4 * ((Math.floor(b / 8) * 16 + 8) * 128 + b % 8 * 16 + 8)] > 128 ? 2 ** b : 0;
        }
        return n;
      };
      window.pressed = [];
      window.broken = [];
      const note = (e) => {
        if (e.isTrusted) window.pressed.push([e.key || e.pointerType, v.currentTime, window.shown()].join(' '));
      };
      window.addEventListener(arguments[0], note, true);
      for (const name of ['pause', 'seeking', 'ratechange']) {
        v.addEventListener(name, () => { if (!v.ended) window.broken.push(name + ' ' + v.currentTime); });
      }
      """;

  /** Waits until the picture shows a second, and says which it shows. */
  private static final String UNTIL =
      """
      const [second, done] = arguments;
      const v = document.getElementById('video');
      const look = () => window.shown() >= second || v.ended ? done(window.shown()) : setTimeout(look, 4);
      look();
      """;

  @TempDir Path dir;

  /** A press as the page got it. */
  private record Arrived(String key, double video, int picture) {}

  @Test
  void sixExitsByKeys() throws Exception {
    double[] off = pass(new TagScript(TagScript.By.KEYS, 6, 8, 1200), 48, 1280, 800);
    assertTrue(median(off) <= WITHIN, "median " + median(off));
  }

  @Test
  void fourExitsByTapsOnATablet() throws Exception {
    double[] off = pass(new TagScript(TagScript.By.TAPS, 4, 8, 1200), 36, 820, 1180);
    assertTrue(median(off) <= WITHIN, "median " + median(off));
  }

  @Test
  @Tag("long")
  void aPeriodOfFiftyExitsByKeys() throws Exception {
    TagScript script = new TagScript(TagScript.By.KEYS, 50, 23, 1200);
    assertEquals(150, script.presses().stream().filter(TagScript.Press::exit).count());
    assertEquals(227, script.presses().size());
    double[] off = pass(script, 1200, 1280, 800);
    assertEquals(72, off.length, "43 exits and 29 face-offs; 7 exits were taken back");
    assertTrue(off[off.length - 1] <= WITHIN, "worst " + off[off.length - 1]);
    assertTrue(median(off) <= MEDIAN_WITHIN, "median " + median(off));
  }

  private static double median(double[] sorted) {
    return sorted[sorted.length / 2];
  }

  /** One pass through a video: how far the rows' seconds lie from the script's, sorted. */
  private double[] pass(TagScript script, int seconds, int width, int height) throws Exception {
    boolean taps = script.presses().stream().anyMatch(p -> p.key().equals(TagScript.RINK));
    Path film = CounterVideo.writeWide(dir.resolve("game.mp4"), seconds, 5);
    List<Arrived> arrived;
    long begun;
    try (TagProcess p = TagPages.program(dir, film);
        Browser b = Browser.open(width, height)) {
      open(b, p);
      b.await("return document.getElementById('video').readyState > 0");
      clock(b, "20:00");
      keys(b, "/");
      if (taps) {
        // To start a video and to choose its speed is the browser's own part on a tablet.
        b.ask(
            "const v = document.getElementById('video'); v.playbackRate = arguments[0]; return v.play().then(() => 1)",
            SPEED);
      } else {
        keys(b, "+", "+", " ");
      }
      b.await("return document.getElementById('video').currentTime > 0");
      b.ask(WATCH, taps ? "pointerdown" : "keydown");
      begun = System.nanoTime();
      for (TagScript.Press press : script.presses()) {
        b.driver().executeAsyncScript(UNTIL, press.second());
        if (taps) {
          tap(b, press.key());
        } else {
          keys(b, press.key());
        }
      }
      rows(b, script.rows().size());
      b.await("return document.getElementById('video').ended");
      arrived = arrived(b);
      assertEquals("", b.ask("return window.broken.join(', ')"), "the video ran on");
      assertEquals(
          String.valueOf(SPEED), b.ask("return document.getElementById('video').playbackRate"));
      assertEquals("0", b.ask("return scrollY"));
      assertEquals("", b.ask("return document.getElementById('kept').textContent"));
      assertEquals(List.of(), b.consoleErrors());
    }
    double took = (System.nanoTime() - begun) / 1e9;
    assertTrue(took >= 0.9 * seconds / SPEED, "the whole video in " + took + " s");
    assertEquals(
        script.presses().stream().map(q -> taps ? "touch" : q.key()).toList(),
        arrived.stream().map(Arrived::key).toList());
    double[] off = compare(script, arrived, taps);
    long exits = script.presses().stream().filter(TagScript.Press::exit).count();
    System.err.printf(
        "%d exits in %d presses, %d presses in all, %d rows in the end, a video of %d s in %.0f s:"
            + " off by %.2f s in the median, %.2f s at worst%n",
        exits / 3,
        exits,
        arrived.size(),
        off.length,
        seconds,
        took,
        median(off),
        off[off.length - 1]);
    return off;
  }

  private static List<Arrived> arrived(Browser b) {
    List<Arrived> arrived = new ArrayList<>();
    for (String line : b.ask("return window.pressed.join('\\n')").split("\n", -1)) {
      String[] said = line.split(" ", -1);
      arrived.add(new Arrived(said[0], Double.parseDouble(said[1]), Integer.parseInt(said[2])));
    }
    return arrived;
  }

  /**
   * Every row to the letter, its second that at which the press arrived, its clock the script's.
   */
  private double[] compare(TagScript script, List<Arrived> arrived, boolean taps)
      throws IOException {
    List<CSVRecord> sheet = sheet();
    List<TagScript.Row> rows = script.rows();
    List<Map<String, String>> said = new ArrayList<>();
    double[] off = new double[rows.size()];
    for (int i = 0; i < sheet.size(); i++) {
      CSVRecord r = sheet.get(i);
      Map<String, String> cells = new TreeMap<>(r.toMap());
      if (taps && !r.get("way_out").isEmpty()) {
        assertEquals(TAP_X, Double.parseDouble(cells.remove("x_m")), PIXEL);
        assertEquals(TAP_Y, Double.parseDouble(cells.remove("y_m")), PIXEL);
      }
      cells.keySet().removeAll(Set.of("clock", "video_s"));
      cells.values().removeIf(String::isEmpty);
      said.add(cells);
    }
    assertEquals(rows.stream().map(TagScript.Row::cells).toList(), said);
    for (int i = 0; i < rows.size(); i++) {
      TagScript.Row row = rows.get(i);
      double second = Double.parseDouble(sheet.get(i).get("video_s"));
      Arrived press = arrived.get(row.press());
      assertEquals(press.video(), second, WRITTEN, "row " + i + ", at its press");
      assertEquals(press.picture() + 0.5, second, 0.5 + WITHIN, "row " + i + ", its picture");
      int meant = script.presses().get(row.press()).second();
      off[i] = Math.abs(second - meant);
      // The clock's seconds are cut off, and run on while the user is late.
      double left = row.left() - (second - meant);
      assertEquals(left - 0.5, seconds(sheet.get(i).get("clock")), 0.5 + WITHIN, "row " + i);
    }
    Arrays.sort(off);
    return off;
  }

  private static double seconds(String clock) {
    String[] parts = clock.split(":", -1);
    return 60.0 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]);
  }

  private List<CSVRecord> sheet() throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser =
        CSVParser.parse(dir.resolve("tags.csv"), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    }
  }

  /** A finger on what a key stands for. */
  private static void tap(Browser b, String key) {
    int x;
    int y;
    if (key.equals(TagScript.RINK)) {
      WebElement rink = b.at("rink");
      double scale = rink.getSize().getWidth() / TagPages.DRAWN_M;
      x = rink.getRect().x + rink.getRect().width / 2 + (int) Math.round(TAP_X * scale);
      y = rink.getRect().y + rink.getRect().height / 2 - (int) Math.round(TAP_Y * scale);
    } else {
      String[] middle =
          b.ask(
                  "const r = document.querySelector(arguments[0]).closest('label, button').getBoundingClientRect();"
                      + " return Math.round(r.x + r.width / 2) + ' ' + Math.round(r.y + r.height / 2)",
                  target(key))
              .split(" ", -1);
      x = Integer.parseInt(middle[0]);
      y = Integer.parseInt(middle[1]);
    }
    PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, "finger");
    b.driver()
        .perform(
            List.of(
                new Sequence(finger, 0)
                    .addAction(
                        finger.createPointerMove(
                            Duration.ZERO, PointerInput.Origin.viewport(), x, y))
                    .addAction(finger.createPointerDown(PointerInput.MouseButton.LEFT.asArg()))
                    .addAction(finger.createPointerUp(PointerInput.MouseButton.LEFT.asArg()))));
  }

  private static String target(String key) {
    return switch (key) {
      case "u" -> "#undo";
      case "m" -> "[data-faceoff='won']";
      case "i" -> "[data-faceoff='lost']";
      case "j" -> "input[name='team'][value='home']";
      case "k" -> "input[name='team'][value='away']";
      case "1", "2", "3", "4", "5", "6" ->
          choice("way_out", TagScript.WAYS.get(Integer.parseInt(key) - 1));
      default -> choice("ended", TagScript.ENDS.get("asdfgh".indexOf(key)));
    };
  }

  private static String choice(String group, String word) {
    return "input[name='" + group + "'][value='" + word + "']";
  }
}
