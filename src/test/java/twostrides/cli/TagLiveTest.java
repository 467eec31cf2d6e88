package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twostrides.cli.TagPages.clock;
import static twostrides.cli.TagPages.keys;
import static twostrides.cli.TagPages.open;
import static twostrides.cli.TagPages.rows;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import twostrides.browser.Browser;

/** Tagging at game speed: three keys an exit, one key for all else, nothing lost. */
class TagLiveTest {

  /** Seconds of video in the period; the game clock runs with them. */
  private static final int PERIOD = 1200;

  @TempDir Path dir;

  private static Browser tagging(TagProcess p, int width, int height) throws Exception {
    Browser b = Browser.open(width, height);
    open(b, p);
    b.await("return document.getElementById('video').readyState > 0");
    clock(b, "20:00");
    keys(b, "/");
    return b;
  }

  /** The page saves while the next key is pressed. */
  private static void saved(Browser b, String words) throws InterruptedException {
    b.await(
        "return document.getElementById('live').textContent.startsWith('Saved: " + words + "')");
  }

  private static String played(int second) {
    return String.format(Locale.ROOT, "%d:%02d", (PERIOD - second) / 60, (PERIOD - second) % 60);
  }

  /** A row of the sheet as the script meant it. */
  private static String row(int at, int clockOf, String... cells) {
    List<String> all =
        new ArrayList<>(List.of("\"\"", "", "Herons", "Wolves", "1", played(clockOf)));
    all.addAll(List.of(cells));
    all.addAll(List.of("", at + ".0", ""));
    return String.join(",", all);
  }

  private static void at(Browser b, int second) throws InterruptedException {
    b.ask("document.getElementById('video').currentTime = arguments[0]", second);
    b.await("return !document.getElementById('video').seeking");
  }

  /**
   * Sixty exits of a period, with the icings, face-offs and kills between them, in one pass: every
   * row stands in the sheet to the letter. The video stands where it is sent, so that each second
   * is known.
   */
  @Test
  void sixtyExitsArriveToTheLetter() throws Exception {
    List<String> expected = new ArrayList<>();
    try (TagProcess p = TagPages.program(dir, PERIOD);
        Browser b = tagging(p, 1280, 800)) {
      int stood = 0;
      for (int i = 0; i < 60; i++) {
        int at = 15 + 19 * i;
        String team = i % 3 == 2 ? "Wolves" : "Herons";
        at(b, at);
        if (i == 30 || i == 36) {
          // A kill: a key when it begins, a key when it is over.
          keys(b, "j", i == 30 ? "b" : "v");
          expected.add(
              row(
                  at,
                  at - stood,
                  "Herons",
                  "",
                  "",
                  "",
                  "",
                  i == 30 ? "shorthanded" : "even",
                  "",
                  "",
                  "",
                  "",
                  "",
                  "",
                  ""));
        }
        int way = i % 6;
        boolean marked = way < 2;
        int end = (i / 2) % 6;
        String strength =
            i < 30 ? "" : i >= 36 ? "even" : team.equals("Wolves") ? "power play" : "shorthanded";
        keys(b, team.equals("Wolves") ? "k" : "j");
        keys(b, String.valueOf(way + 1));
        if (marked) {
          keys(b, "qwert".substring(i % 5, i % 5 + 1));
        }
        keys(b, "asdfgh".substring(end, end + 1));
        expected.add(
            row(
                at,
                at - stood,
                team,
                "",
                "",
                TagScript.WAYS.get(way),
                marked ? TagScript.CENTER.get(i % 5) : "",
                strength,
                "",
                "",
                "",
                TagScript.ENDS.get(end),
                "",
                "",
                ""));
        if (end < 2 || end > 3) {
          // The whistle stopped the clock; four seconds later the puck is dropped.
          at(b, at + 4);
          keys(b, i % 4 == 0 ? "m" : "i");
          expected.add(
              row(
                  at + 4,
                  at - stood,
                  team,
                  "",
                  "",
                  "",
                  "",
                  "",
                  "",
                  "",
                  "",
                  "",
                  "",
                  "",
                  i % 4 == 0 ? "won" : "lost"));
          stood += 4;
        }
      }
      rows(b, expected.size());
      assertEquals(List.of(), b.consoleErrors());
    }
    List<String> sheet = Files.readAllLines(dir.resolve("tags.csv"));
    assertEquals(expected, sheet.subList(1, sheet.size()));
    StringWriter out = new StringWriter();
    Path book = dir.resolve("book");
    int code =
        Main.run(
            new PrintWriter(out, true),
            new PrintWriter(out, true),
            "review",
            dir.resolve("tags.csv").toString(),
            "--out",
            book.toString());
    assertEquals(0, code, out.toString());
    assertTrue(
        out.toString().contains("60 exit attempts, 20 defensive-zone face-offs."), out.toString());
    List<String> kills = Files.readAllLines(book.resolve("data/kills.csv"));
    assertEquals(2, kills.size(), "the header and one kill");
  }

  /** At double speed the video never stops, and a second key does not wait for the first save. */
  @Test
  void theVideoRunsOnAtDoubleSpeed() throws Exception {
    try (TagProcess p = TagPages.program(dir, 120);
        Browser b = tagging(p, 1280, 800)) {
      keys(b, "+", "+");
      b.ask(
          "window.paused = 0; const v = document.getElementById('video'); v.muted = true;"
              + " v.addEventListener('pause', () => window.paused++); v.play()");
      long begun = System.nanoTime();
      for (int i = 0; i < 10; i++) {
        keys(b, "1", "q", "d");
      }
      rows(b, 10);
      double each = (System.nanoTime() - begun) / 10e9;
      System.out.printf(Locale.ROOT, "An exit in three keys at double speed: %.2f s%n", each);
      assertEquals(
          "0 2",
          b.ask("return window.paused + ' ' + document.getElementById('video').playbackRate"));
      assertTrue(each < 24, "a period of 50 exits at double speed leaves 12 s an exit: " + each);
    }
  }

  /** After everything U goes back one step, the clock with it. */
  @Test
  void undoGoesBackThroughEverything() throws Exception {
    try (TagProcess p = TagPages.program(dir, 120);
        Browser b = tagging(p, 1280, 800)) {
      String now = "return document.getElementById('now').textContent";
      at(b, 10);
      keys(b, "3", "a");
      saved(b, "19:50, Herons, chip. 1 exit.");
      assertTrue(b.ask(now).endsWith("clock 19:50 (stands)"), b.ask(now));
      at(b, 30);
      keys(b, "m");
      saved(b, "19:50, Herons, face-off won. 1 exit and 1 more.");
      at(b, 40);
      assertTrue(b.ask(now).endsWith("clock 19:40"), b.ask(now));
      keys(b, "b");
      saved(b, "19:40, Herons, shorthanded.");
      keys(b, "k");
      assertEquals(
          "true", b.ask("return document.querySelector('[value=\"power play\"]').checked"));
      keys(b, "j", "4");
      keys(b, "u");
      assertEquals("Discarded; nothing was saved.", b.at("live").getText());
      keys(b, "u");
      rows(b, 2);
      keys(b, "u");
      rows(b, 1);
      b.await("return document.getElementById('now').textContent.endsWith('clock 19:50 (stands)')");
      keys(b, "u");
      rows(b, 0);
      b.await("return document.getElementById('now').textContent.endsWith('clock 19:20')");
      keys(b, "u");
      b.await(
          "return document.getElementById('live').textContent === 'Undone: the clock is not set.'");
    }
  }

  /** Another way out within two seconds corrects the key, a later one keeps the exit before it. */
  @Test
  void aForgottenEndLosesNoExit() throws Exception {
    try (TagProcess p = TagPages.program(dir, 60);
        Browser b = tagging(p, 1280, 800)) {
      keys(b, "1", "2");
      Thread.sleep(2100);
      keys(b, "5", "f");
      rows(b, 2);
      List<String> ways =
          Files.readAllLines(dir.resolve("tags.csv")).stream()
              .map(l -> l.split(",", -1)[9])
              .toList();
      assertEquals(List.of("way_out", "pass", "missed pass"), ways);
    }
  }

  /**
   * By touch on a tablet: three taps an exit, one of them the place, and the page does not move.
   */
  @Test
  void threeTapsOnATablet() throws Exception {
    try (TagProcess p = TagPages.program(dir, 60);
        Browser b = tagging(p, 820, 1180)) {
      for (int i = 0; i < 5; i++) {
        tap(b, "way_out", "chip");
        TagPages.click(b, -9, 3 + i);
        tap(b, "ended", "opponent");
        rows(b, i + 1);
      }
      assertEquals("0", b.ask("return scrollY"));
      List<String> lines = Files.readAllLines(dir.resolve("tags.csv"));
      IntStream.range(1, 6)
          .forEach(
              i -> {
                String[] cells = lines.get(i).split(",", -1);
                assertEquals(-9, Double.parseDouble(cells[13]), 0.15);
                assertEquals(2 + i, Double.parseDouble(cells[14]), 0.15);
                assertEquals("opponent", cells[15]);
              });
    }
  }

  private static void tap(Browser b, String group, String word) {
    b.driver()
        .findElement(By.cssSelector("input[name='" + group + "'][value='" + word + "']"))
        .click();
  }
}
