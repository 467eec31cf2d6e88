package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import twostrides.browser.Browser;
import twostrides.clips.ClipFiles;

/**
 * Every clip list of a small book of hostile names, read back by programs that are not ours: CSV by
 * Jackson, XSPF by JSpiff, WebVTT by Chromium. So are the lists that a page saves.
 */
class ClipListsTest {

  private static final List<String> NAMES =
      Stream.concat(
              HostileNames.ALL.stream(),
              Stream.of(
                  "\"quoted\", with comma",
                  "x;=1+1",
                  "//example.org/x",
                  "2031-10-04 19:30 GLA-TAR",
                  "&amp; 100% #1?",
                  "two\nlines",
                  "bell \u0007 and \ufffe"))
          .toList();

  @TempDir private static Path dir;
  private static Path clips;
  private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1000, 800);
    StringBuilder sheet =
        new StringBuilder(
            "game,period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against,"
                + "video_s\n");
    for (String name : NAMES) {
      String game = quoted(name);
      // Two releases that icing follows, eight seconds apart on the video: their chapters overlap.
      for (int i = 0; i < 2; i++) {
        int clock = 1100 - 20 * i;
        double video = 3.5 + 8 * i;
        String row = "%s,1,%d,%s,%s,%s,5,5,%s%n";
        String who = quoted(name);
        sheet.append(row.formatted(game, clock, "Herons", who, "recovery,,-25,5", ""));
        sheet.append(row.formatted(game, clock - 4, "Herons", who, "release,lost,-5,6", video));
        sheet.append(row.formatted(game, clock - 7, "Wolves", "9 Vik", "faceoff,,21,-6.7", ""));
      }
    }
    Path book =
        SampleBook.of(
            dir.resolve("book"),
            List.of(Files.writeString(dir.resolve("s.csv"), sheet)),
            "--draws",
            "100",
            "--flag-threshold",
            "0.01",
            "--video-name",
            "../../my video/{game}.mp4");
    clips = book.resolve("clips");
    browser.driver().get(book.resolve("restarts.html").toUri().toString());
  }

  @AfterAll
  static void close() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  private static String quoted(String cell) {
    return '"' + cell.replace("\"", "\"\"") + '"';
  }

  /** What the guard against spreadsheets makes of a cell. */
  private static String guarded(String cell) {
    return cell.replaceFirst("^=", "'=").replace(";=", ";'=");
  }

  private static String unguarded(String cell) {
    return cell.replaceFirst("^'=", "=").replace(";'=", ";=");
  }

  /** What XML cannot hold is a blank there. */
  private static String xml(String text) {
    return text.replace('\u0007', ' ').replace('\ufffe', ' ');
  }

  private static List<Path> files(String extension) throws IOException {
    try (Stream<Path> all = Files.walk(clips)) {
      return all.filter(f -> f.toString().endsWith(extension)).sorted().toList();
    }
  }

  @Test
  void everyListHasEveryGameAndPlayer() throws Exception {
    // The flags, and each player's releases and sheet.
    assertEquals(1 + 2 * NAMES.size(), files(".csv").size());
    List<Map<String, String>> flags = ClipFiles.csv(Files.readString(clips.resolve("flags.csv")));
    assertEquals(2 * NAMES.size(), flags.size());
    for (String name : NAMES) {
      List<Map<String, String>> own =
          flags.stream().filter(r -> r.get("game").equals(guarded(name))).toList();
      assertEquals(2, own.size(), name);
      assertTrue(
          own.stream().allMatch(r -> unguarded(r.get("title")).contains(", " + name + ", ")), name);
    }
  }

  @Test
  void playlistsSayWhatTheTablesSay() throws Exception {
    List<Path> tables = files(".csv");
    assertEquals(tables.size(), files(".xspf").size());
    for (Path csv : tables) {
      List<Map<String, String>> rows = ClipFiles.csv(Files.readString(csv));
      Path xspf = csv.resolveSibling(csv.getFileName().toString().replace(".csv", ".xspf"));
      String text = Files.readString(xspf);
      List<ClipFiles.Track> tracks = ClipFiles.xspf(text);
      assertEquals(rows.size(), tracks.size());
      for (int i = 0; i < rows.size(); i++) {
        Map<String, String> row = rows.get(i);
        ClipFiles.Track track = tracks.get(i);
        assertEquals(xml(row.get("game")), guarded(track.album()));
        assertEquals(xml(row.get("title")), guarded(track.title()));
        URI location = new URI(track.location());
        assertFalse(location.isAbsolute(), track.location());
        assertNull(location.getRawAuthority(), track.location());
        assertNull(location.getRawQuery(), track.location());
        assertEquals("t=" + row.get("start_s") + "," + row.get("end_s"), location.getFragment());
        String game = unguarded(row.get("game"));
        assertEquals("../../my video/" + game + ".mp4", location.getPath());
        // The game's id is one name in that folder, whatever it holds.
        assertEquals(4, location.getRawPath().split("/", -1).length, track.location());
      }
      // One line a track and no more than the elements take.
      assertEquals(rows.size() + 3, text.lines().count() - newlines(rows));
    }
  }

  /** Line breaks inside titles and games. */
  private static long newlines(List<Map<String, String>> rows) {
    return rows.stream()
        .mapToLong(r -> (r.get("game") + r.get("title")).chars().filter(c -> c == '\n').count())
        .sum();
  }

  @Test
  void chaptersSayWhatTheTablesSay() throws Exception {
    int chapters = 0;
    List<Path> all = files(".vtt");
    for (Path csv : files(".csv")) {
      Map<String, List<Map<String, String>>> byGame = new TreeMap<>();
      for (Map<String, String> row : ClipFiles.csv(Files.readString(csv))) {
        byGame.computeIfAbsent(row.get("game"), g -> new ArrayList<>()).add(row);
      }
      String stem = csv.toString().replace(".csv", "");
      List<Path> own = all.stream().filter(f -> f.toString().startsWith(stem + "-")).toList();
      if (csv.getParent().endsWith("sheets")) {
        assertEquals(List.of(), own, "the order of a sheet is no video's");
        continue;
      }
      assertEquals(byGame.size(), own.size(), csv.toString());
      List<String> expected = new ArrayList<>();
      byGame.values().forEach(rows -> expected.add(said(rows)));
      List<String> found = new ArrayList<>();
      for (Path vtt : own) {
        List<ClipFiles.Chapter> read = ClipFiles.vtt(browser, Files.readString(vtt));
        chapters += read.size();
        found.add(
            String.join(
                "; ", read.stream().map(c -> c.start() + " " + c.end() + " " + c.text()).toList()));
      }
      assertEquals(expected.stream().sorted().toList(), found.stream().sorted().toList());
    }
    assertEquals(4 * NAMES.size(), chapters);
  }

  /** A game's chapters: one ends where the next begins, and a title is one line. */
  private static String said(List<Map<String, String>> rows) {
    List<Map<String, String>> sorted =
        rows.stream()
            .sorted((a, b) -> Double.compare(number(a, "start_s"), number(b, "start_s")))
            .toList();
    List<String> said = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      double end = number(sorted.get(i), "end_s");
      double next = i + 1 < sorted.size() ? number(sorted.get(i + 1), "start_s") : end;
      String title = unguarded(sorted.get(i).get("title")).replace('\n', ' ');
      said.add(number(sorted.get(i), "start_s") + " " + Math.min(end, next) + " " + title);
    }
    return String.join("; ", said);
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** What a page saves when one of its buttons is pressed, a text a file. */
  private static List<String> saved(String form) throws InterruptedException {
    browser.ask(
        "window.saved = []; window.waiting = 0;"
            + "const make = URL.createObjectURL;"
            + "URL.createObjectURL = b => { window.waiting++;"
            + "  b.text().then(t => { window.saved.push(t); window.waiting--; });"
            + "  return make.call(URL, b); };");
    browser
        .driver()
        .executeScript(
            "arguments[0].click()",
            browser.driver().findElement(By.cssSelector("[data-clips=" + form + "]")));
    browser.await("return window.saved.length > 0 && window.waiting === 0");
    List<?> texts = (List<?>) browser.driver().executeScript("return window.saved");
    browser.driver().navigate().refresh();
    return texts.stream().map(String::valueOf).toList();
  }

  @Test
  void whatAPageSavesIsReadToo() throws Exception {
    List<Map<String, String>> rows = ClipFiles.csv(saved("csv").get(0));
    assertEquals(2 * NAMES.size(), rows.size());
    List<ClipFiles.Track> tracks = ClipFiles.xspf(saved("xspf").get(0));
    assertEquals(
        rows.stream().map(r -> xml(r.get("game") + r.get("title"))).toList(),
        tracks.stream().map(t -> guarded(t.album()) + guarded(t.title())).toList());
    List<String> games = rows.stream().map(r -> r.get("game")).distinct().sorted().toList();
    // The page shows a line break in a name as a blank.
    assertEquals(
        NAMES.stream().map(n -> guarded(n)).map(n -> n.replaceAll("\\s", " ")).sorted().toList(),
        games.stream().map(g -> g.replaceAll("\\s", " ")).toList());
    int chapters = 0;
    List<String> files = saved("vtt");
    assertEquals(NAMES.size(), files.size());
    for (String text : files) {
      List<ClipFiles.Chapter> read = ClipFiles.vtt(browser, text);
      chapters += read.size();
      for (ClipFiles.Chapter c : read) {
        assertTrue(
            rows.stream()
                .anyMatch(r -> unguarded(r.get("title")).replaceAll("\\s+", " ").equals(c.text())),
            c.text());
      }
    }
    assertEquals(rows.size(), chapters);
    assertEquals(List.of(), browser.consoleErrors());
  }
}
