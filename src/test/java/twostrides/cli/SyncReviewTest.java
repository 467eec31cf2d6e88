package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twostrides.clips.ClipFiles.column;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A review with sync sheets and no tracking; the games are invented. */
class SyncReviewTest {

  private static final String HEAD =
      "game,home,away,period,clock,team,player,action,outcome,x_m,y_m,stoppage,video_s\n";

  private static final String SYNC = "game,period,clock,video_s\n";

  @TempDir Path dir;

  private Path write(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  /** One icing: let go at 18:56, whistled at 18:53, face-off after it. */
  private static String game(String id, String releaseVideo) {
    String of = id + ",Herons,Wolves,1,";
    return of
        + "20:00,Wolves,4 Berg,faceoff,,0,0,,\n"
        + of
        + "19:00,Wolves,4 Berg,recovery,,-25,5,,\n"
        + of
        + "18:56,Wolves,4 Berg,release,lost,-5,6,,"
        + releaseVideo
        + "\n"
        + of
        + "18:53,Wolves,,stoppage,,,,icing,\n"
        + of
        + "18:53,Herons,9 Vik,faceoff,,21,-6.7,,\n"
        + of
        + "18:50,Herons,9 Vik,recovery,,3,3,,\n";
  }

  @Test
  void aReleaseWithoutASecondIsFoundOnTheVideo() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1", ""));
    Path blind = dir.resolve("blind");
    Run without = Run.of("review", sheet, "--simulations", 100, "--out", blind);
    assertEquals(0, without.code(), without.err());
    assertEquals(List.of(""), column(blind.resolve("data/releases.csv"), "video_s"));
    assertFalse(Files.exists(blind.resolve("data/video.csv")));
    // 64 s of play from the opening face-off at second 100; then a stoppage of 23 s.
    Path sync = write("sync.csv", SYNC + "G1,1,20:00,100\nG1,1,18:53,190\n");
    Path book = dir.resolve("book");
    Run r = Run.of("review", sheet, "--sync", sync, "--simulations", 100, "--out", book);
    assertEquals(0, r.code(), r.err());
    assertTrue(r.out().contains("Sync: 2 rows read = 2 used + 0 set aside."), r.out());
    assertTrue(
        r.out().contains("Video: 6 rows got a second from the sync sheets, off by at most 1.5 s."),
        r.out());
    assertEquals(List.of("164"), column(book.resolve("data/releases.csv"), "video_s"));
    assertEquals(
        List.of("100", "160", "164", "167", "190", "193"),
        column(book.resolve("data/video.csv"), "video_s"));
    String page = Files.readString(book.resolve("index.html"));
    assertTrue(page.contains("The video seconds of 6 rows come from sync sheets; 0 of them"));
    String clips = String.join("\n", Files.readAllLines(book.resolve("clips/look.csv")));
    assertTrue(clips.contains("G1,160,176,"), clips);
    assertTrue(Files.readString(book.resolve("run.json")).contains("\"sync.csv\""));
  }

  /** Two stoppages of unknown lengths, 60 s together: between them a second may be 30 s off. */
  @Test
  void aClipWhoseSecondIsInferredSaysSoAndStartsEarlierByItsError() throws IOException {
    String stop = "G1,Herons,Wolves,1,19:30,Wolves,,stoppage,,,,offside,\n";
    String draw = "G1,Herons,Wolves,1,19:30,Wolves,4 Berg,faceoff,,-7,6.7,,\n";
    String rows = game("G1", "");
    int first = rows.indexOf('\n') + 1;
    Path sheet =
        write("g1.csv", HEAD + rows.substring(0, first) + stop + draw + rows.substring(first));
    Path sync = write("sync.csv", SYNC + "G1,1,20:00,100\nG1,1,18:50,230\n");
    Path book = dir.resolve("book");
    Run r = Run.of("review", sheet, "--sync", sync, "--simulations", 100, "--out", book);
    assertEquals(0, r.code(), r.err());
    assertEquals(List.of("194"), column(book.resolve("data/releases.csv"), "video_s"));
    String off = column(book.resolve("data/video.csv"), "off_by_s").get(4);
    assertEquals(31.5, Double.parseDouble(off), 0.1);
    Path look = book.resolve("clips/look.csv");
    double early = Double.parseDouble(column(look, "start_s").get(0));
    assertEquals(194 - 4 - Double.parseDouble(off), early, 1e-9);
    double late = Double.parseDouble(column(look, "end_s").get(0));
    assertEquals(194 + 12 + Double.parseDouble(off), late, 1e-9);
    String words = "second inferred, off by up to " + off + " s";
    assertTrue(column(look, "title").get(0).endsWith(words), column(look, "title").get(0));
    // The pages know the same: second, how far off, words.
    String known = "[194," + off + ",\"" + words + "\"]";
    assertTrue(Files.readString(book.resolve("book.js")).contains(known));
  }

  @Test
  void theSheetsOwnSecondWinsAndTwoVideosAreDoubted() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1", "970"));
    Path sync = write("sync.csv", SYNC + "G1,1,20:00,100\nG1,1,18:53,190\n");
    Path book = dir.resolve("book");
    Run r = Run.of("review", sheet, "--sync", sync, "--simulations", 100, "--out", book);
    assertEquals(0, r.code(), r.err());
    assertEquals(List.of("970"), column(book.resolve("data/releases.csv"), "video_s"));
    assertEquals(5, column(book.resolve("data/video.csv"), "video_s").size());
    assertTrue(r.out().contains("Video: 5 rows got a second"), r.out());
    assertTrue(r.out().contains("; 1 keep their own."), r.out());
    assertTrue(
        r.out()
            .contains(
                "Doubtful: in G1 the rows' own video seconds, which win, lie 806 s after those of"
                    + " the sync sheets (the middle of 1 row): two different videos?"),
        r.out());
  }

  @Test
  void aPairAPeriodDriftsAndTheRunSaysSo() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1", ""));
    Path sync = write("sync.csv", SYNC + "G1,1,20:00,100\n");
    Run r =
        Run.of("review", sheet, "--sync", sync, "--simulations", 100, "--out", dir.resolve("a"));
    assertTrue(
        r.out()
            .contains(
                "Video: 2 seconds drift: outside the pairs of the period they run on at the clock's"
                    + " pace and are off by the length of the stoppages in between (up to 1 in the"
                    + " sheet); a pair at each face-off mends that: G1, period 1."),
        r.out());
    assertEquals(
        List.of("100", "160", "164", "167", "167", "170"),
        column(dir.resolve("a/data/video.csv"), "video_s"));
    assertEquals(
        List.of("sync", "sync", "sync", "sync", "drifts, past 1 stoppage"),
        column(dir.resolve("a/data/video.csv"), "how").subList(0, 5));
    Run near =
        Run.of(
            "review",
            sheet,
            "--sync",
            sync,
            "--sync-reach",
            62,
            "--simulations",
            100,
            "--out",
            dir.resolve("b"));
    assertTrue(
        near.out()
            .contains(
                "Video: 4 rows without a second, too far from the nearest pair of clock and video:"
                    + " G1, period 1."),
        near.out());
    Run wrong = Run.of("review", sheet, "--sync", sync, "--sync-reach", -1);
    assertEquals(2, wrong.code());
    assertTrue(wrong.err().contains("--sync-reach: found -1.0, expected seconds from 0"));
  }

  @Test
  void whatASyncSheetGetsWrongIsSaidAndSetAside() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1", ""));
    Path folder = Files.createDirectory(dir.resolve("sync"));
    Files.writeString(folder.resolve("a.csv"), SYNC + "G1,1,20:00,100\nG7,1,20:00,100\n");
    Files.writeString(folder.resolve("b.csv"), SYNC + "G1,3,20:00,100\nG1,1,1853,100\n");
    Path book = dir.resolve("book");
    Run r = Run.of("review", sheet, "--sync", folder, "--simulations", 100, "--out", book);
    assertEquals(0, r.code(), r.err());
    assertTrue(r.out().contains("Sync: 4 rows read = 1 used + 3 set aside."), r.out());
    assertTrue(
        r.out().contains("a.csv, line 3, column \"game\": found \"G7\", expected the id of a game"),
        r.out());
    assertTrue(
        r.out()
            .contains("b.csv, line 2, column \"period\": found \"3\", expected a period of which"),
        r.out());
    assertTrue(r.out().contains("b.csv, line 3, column \"clock\": found \"1853\", expected"));
    assertTrue(Files.readString(book.resolve("set-aside/problems.csv")).contains("G7"));
    assertTrue(Files.readString(book.resolve("set-aside/b.csv")).contains("1853"));
    Run none = Run.of("review", sheet, "--sync", write("x.csv", "a,b\n1,2\n"), "--out", book);
    assertEquals(3, none.code());
    assertTrue(none.err().contains("x.csv"), none.err());
  }

  @Test
  void aSyncSheetOfAnotherFormTakesAMap() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1", ""));
    Path sync = write("times.csv", "Per,Played,At\n1,0:00,100\n1,1:07,190\n");
    Path map =
        write(
            "sync.toml",
            "sheet = \"sync\"\n[columns]\nperiod = \"Per\"\nclock = \"Played\"\nvideo_s = \"At\"\n"
                + "[clock]\ndirection = \"up\"\n");
    Path book = dir.resolve("book");
    Run r =
        Run.of(
            "review",
            sheet,
            "--sync",
            sync,
            "--sync-map",
            map,
            "--simulations",
            100,
            "--out",
            book);
    assertEquals(0, r.code(), r.err());
    assertEquals(List.of("164"), column(book.resolve("data/releases.csv"), "video_s"));
    Path tracking = write("t.toml", "sheet = \"tracking\"\n");
    Run wrong = Run.of("review", sheet, "--sync", sync, "--sync-map", tracking, "--out", book);
    assertEquals(3, wrong.code());
    assertTrue(wrong.err().contains("a map of tracking sheets, and no --tracking"), wrong.err());
  }

  @Test
  void periodsOfAnotherLengthAndTagSheetsWorkToo() throws IOException {
    Path tags =
        write(
            "G2.csv",
            "game,home,away,period,clock,team,way_out,at_center,x_m,y_m\n"
                + "G2,Herons,Wolves,1,14:50,Herons,carry,released short,-5,2\n");
    Path sync = write("sync.csv", SYNC + "G2,1,15:00,30\nG2,1,14:40,50\n");
    Path book = dir.resolve("book");
    Run r = Run.of("review", tags, "--rulebook", "usah-youth-14u", "--sync", sync, "--out", book);
    assertEquals(0, r.code(), r.err());
    assertEquals(List.of("40"), column(book.resolve("data/video.csv"), "video_s"));
    assertEquals(List.of("40"), column(book.resolve("data/exits.csv"), "video_s"));
  }
}
