package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import twostrides.browser.Browser;
import twostrides.clips.ClipFiles;

/**
 * Games may have any names, also those of a script's own parts, and names of which one is part of
 * another: clips, lists and files of one never go to another.
 */
class GameNamesTest {

  private static final List<String> NAMES =
      List.of(
          "constructor",
          "__proto__",
          "toString",
          "hasOwnProperty",
          "Game 1",
          "Game 10",
          "Game 1 B",
          "Игра 1",
          "Игра 2",
          "🏒");

  @TempDir private static Path dir;
  private static Path book;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    book = SampleBook.ofGames(dir, NAMES);
  }

  @BeforeEach
  void open() {
    browser.driver().get("about:blank");
    browser.driver().get(book.resolve("restarts.html").toUri().toString());
  }

  @Test
  void gamesNamedLikePartsOfAScriptHaveTheirClips() throws Exception {
    List<String> files = ClipFiles.saved(browser, "vtt");
    assertEquals(NAMES.size(), files.size());
    for (String text : files) {
      assertEquals(2, ClipFiles.vtt(browser, text).size(), text);
    }
    assertEquals(List.of(), browser.consoleErrors());
  }

  @Test
  void aListPicksOneGameAndNoOtherThatHoldsItsName() {
    for (String name : NAMES) {
      BookPagesTest.pick(browser, "Defensive-zone face-offs", "Game", name);
      List<String> shown = BookPagesTest.firstCells(browser, "Defensive-zone face-offs");
      assertEquals(List.of(name, name), shown);
    }
  }

  /** A file is of the game whose whole name it has, of two such games the longer one's. */
  @Test
  void aFileIsOfOneGame() throws Exception {
    plays("Game 10.mp4", "Game 10");
    plays("cam 2, Game 1.mp4", "Game 1");
    plays("Game-1 b.mp4", "Game 1 B");
    plays("Игра 2.mp4", "Игра 2");
    plays("constructor.mp4", "constructor");
  }

  private void plays(String file, String game) throws IOException {
    open();
    // No video: the page says so of a file that it would play.
    choose(file);
    for (String name : NAMES) {
      clip(name);
      String note = note();
      assertTrue(
          name.equals(game)
              ? !note.startsWith("This clip")
              : note.startsWith("This clip is of " + name),
          file + ", clip of " + name + ": " + note);
    }
  }

  private static void choose(String... files) throws IOException {
    StringBuilder all = new StringBuilder();
    for (String f : files) {
      all.append(all.isEmpty() ? "" : "\n").append(Files.writeString(dir.resolve(f), "no video"));
    }
    browser.driver().findElement(By.cssSelector("input[type=file]")).sendKeys(all);
  }

  private static void clip(String game) {
    WebElement button =
        browser.driver().findElements(By.cssSelector("main tbody tr")).stream()
            .filter(r -> r.findElement(By.tagName("th")).getText().equals(game))
            .findFirst()
            .orElseThrow()
            .findElement(By.cssSelector("button.at"));
    browser.driver().executeScript("arguments[0].click()", button);
  }

  private static String note() {
    return browser.ask("return document.querySelector('.player [role=status]').textContent");
  }

  /** A file is said to be one game's: every clip names its own game's file, the chosen one here. */
  @Test
  void aPlaylistNamesOnlyTheFileOfTheGame() throws Exception {
    choose("Game 10.mp4");
    List<ClipFiles.Track> tracks = ClipFiles.xspf(ClipFiles.saved(browser, "xspf").get(0));
    assertEquals(
        List.of(),
        tracks.stream()
            .filter(
                t ->
                    !URLDecoder.decode(t.location(), StandardCharsets.UTF_8)
                        .startsWith(t.album() + ".mp4#t="))
            .toList());
    assertEquals(
        Stream.of("0,15", "7,23").map(t -> "Game%2010.mp4#t=" + t).toList(),
        tracks.stream()
            .filter(t -> t.album().equals("Game 10"))
            .map(ClipFiles.Track::location)
            .toList());
  }
}
