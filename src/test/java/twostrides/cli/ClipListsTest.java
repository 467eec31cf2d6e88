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
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1000, 800);
    Path book =
        SampleBook.ofGames(
            dir, NAMES, "--flag-threshold", "0.01", "--video-name", "../../my video/{game}.mp4");
    clips = book.resolve("clips");
    browser.driver().get(book.resolve("restarts.html").toUri().toString());
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
    // The flags, those to look at, and each player's releases and sheet.
    assertEquals(2 + 2 * NAMES.size(), files(".csv").size());
    for (String list : List.of("flags.csv", "look.csv")) {
      List<Map<String, String>> rows = ClipFiles.csv(Files.readString(clips.resolve(list)));
      assertEquals(NAMES.size(), rows.size(), list);
      for (String name : NAMES) {
        List<Map<String, String>> own =
            rows.stream().filter(r -> r.get("game").equals(guarded(name))).toList();
        assertEquals(1, own.size(), name);
        assertTrue(
            own.stream().allMatch(r -> unguarded(r.get("title")).contains(", " + name + ", ")),
            name);
      }
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
        // The name is seen from the folder clips, and so are lists in folders of that.
        String up = "../".repeat(csv.getNameCount() - clips.getNameCount() - 1);
        assertEquals(up + "../../my video/" + game + ".mp4", location.getPath());
        // The game's id is one name in that folder, whatever it holds.
        int names = location.getRawPath().substring(up.length()).split("/", -1).length;
        assertEquals(4, names, track.location());
      }
      // One line a track and no more than the elements take.
      assertEquals(rows.size() + 3, text.lines().count() - newlines(rows));
    }
  }

  /** Four lines a clip, and the file as the other playlist has it. */
  @Test
  void playlistsForPlayersSayStartAndStop() throws Exception {
    List<Path> tables = files(".csv");
    assertEquals(tables.size(), files(".m3u").size());
    for (Path csv : tables) {
      String stem = csv.toString().replaceFirst("csv$", "");
      List<Map<String, String>> rows = ClipFiles.csv(Files.readString(csv));
      List<ClipFiles.Track> tracks = ClipFiles.xspf(Files.readString(Path.of(stem + "xspf")));
      List<String> lines = Files.readString(Path.of(stem + "m3u")).lines().toList();
      assertEquals(1 + 4 * rows.size(), lines.size(), csv.toString());
      assertEquals("#EXTM3U", lines.get(0));
      for (int i = 0; i < rows.size(); i++) {
        Map<String, String> row = rows.get(i);
        assertTrue(lines.get(4 * i + 1).startsWith("#EXTINF:"), lines.get(4 * i + 1));
        assertEquals("#EXTVLCOPT:start-time=" + row.get("start_s"), lines.get(4 * i + 2));
        assertEquals("#EXTVLCOPT:stop-time=" + row.get("end_s"), lines.get(4 * i + 3));
        assertEquals(tracks.get(i).location().replaceFirst("#t=.*", ""), lines.get(4 * i + 4));
      }
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
      if (csv.getParent().endsWith("sheets") || csv.endsWith("look.csv")) {
        assertEquals(List.of(), own, "the order of the list is no video's");
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
    assertEquals(3 * NAMES.size(), chapters);
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

  @Test
  void whatAPageSavesIsReadToo() throws Exception {
    List<Map<String, String>> rows = ClipFiles.csv(ClipFiles.saved(browser, "csv").get(0));
    assertEquals(2 * NAMES.size(), rows.size());
    List<ClipFiles.Track> tracks = ClipFiles.xspf(ClipFiles.saved(browser, "xspf").get(0));
    assertEquals(
        rows.stream().map(r -> xml(r.get("game") + r.get("title"))).toList(),
        tracks.stream().map(t -> guarded(t.album()) + guarded(t.title())).toList());
    List<String> games = rows.stream().map(r -> r.get("game")).distinct().sorted().toList();
    // The page shows a line break in a name as a blank.
    assertEquals(
        NAMES.stream().map(n -> guarded(n)).map(n -> n.replaceAll("\\s", " ")).sorted().toList(),
        games.stream().map(g -> g.replaceAll("\\s", " ")).toList());
    int chapters = 0;
    List<String> files = ClipFiles.saved(browser, "vtt");
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
