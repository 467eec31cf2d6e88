package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A review with tracking sheets; the game and its skaters are invented. */
class TrackingReviewTest {

  private static final String HEAD =
      "game,home,away,skaters_for,skaters_against,period,clock,team,player,action,outcome,x_m,y_m,"
          + "video_s\n";

  /** The away team lets go 4.81 m short at video second 104, and an icing follows. */
  private static String game(String id) {
    String of = id + ",Herons,Wolves,5,5,1,";
    return of
        + "19:00,Wolves,4 Berg,recovery,,-25,5,100\n"
        + of
        + "18:56,Wolves,4 Berg,release,lost,-5,6,104\n"
        + of
        + "18:53,Herons,9 Vik,faceoff,,21,-6.7,\n"
        + of
        + "18:50,Herons,9 Vik,recovery,,3,3,\n";
  }

  /** How a skater goes: number, home or away, place at second 104 and velocity, home's frame. */
  private record Goes(int number, boolean home, double x, double y, double vx, double vy) {}

  /** The carrier, seen half a second late by the play sheet, and two opponents behind him. */
  private static final List<Goes> CHASED =
      List.of(
          new Goes(4, false, 5, -6, -5, 0),
          new Goes(12, false, -3, 6, -2, 0),
          new Goes(9, true, 12, -4, -4, 0.5),
          new Goes(17, true, 15, -1, -2, 0),
          new Goes(21, true, -14, 2, -3, 0));

  @TempDir Path dir;

  private Path write(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  /** Rows from second 102 to 106 at ten a second. */
  private static String tracking(String id, List<Goes> skaters) {
    StringBuilder text = new StringBuilder("game,video_s,track,team,number,x_m,y_m\n");
    for (int i = 0; i <= 40; i++) {
      double s = 102 + i / 10.0;
      for (Goes g : skaters) {
        text.append(
            String.format(
                Locale.ROOT,
                "%s,%.1f,%d,%s,%d,%.2f,%.2f%n",
                id,
                s,
                g.number(),
                g.home() ? "Herons" : "Wolves",
                g.number(),
                g.x() + g.vx() * (s - 104),
                g.y() + g.vy() * (s - 104)));
      }
    }
    return text.toString();
  }

  private String flags(Path book) throws IOException {
    return Files.readString(book.resolve("data/flags.csv"));
  }

  @Test
  void aTrackedReleaseIsMeasured() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1"));
    Path tracks = write("t.csv", tracking("G1", CHASED) + "G1,104.05,99,Gulls,3,0,0\n");
    Path book = dir.resolve("book");
    Run r = Run.of("review", sheet, "--tracking", tracks, "--out", book);
    assertEquals(0, r.code(), r.err());
    assertTrue(r.out().contains("Tracking: 206 rows read = 205 used + 1 set aside."), r.out());
    assertTrue(r.out().contains("t.csv, line 207, column \"team\": found \"Gulls\""), r.out());
    assertTrue(r.out().contains("skaters found at 1 of 1 puck sent before the red line."), r.out());
    assertTrue(r.out().contains("pucks sent before the red line: 1 measured."), r.out());
    assertTrue(Files.readString(book.resolve("set-aside/t.csv")).contains("Gulls"));
    String run = Files.readString(book.resolve("run.json"));
    assertTrue(run.contains("\"t.csv\""), run);
    String flags = flags(book);
    // Three opponents seen; the nearest at (12, -4) in the home frame, 7 m along and 2 m across.
    assertTrue(flags.contains(",measured,3,7.28,"), flags);
    assertTrue(
        flags.contains("3 opponents seen, the nearest 7.3 m (24 ft) from the puck and behind it"));
    assertTrue(
        flags.contains("the next 11.2 m (37 ft) (tracking, instant within 0.5 s by the player"));
  }

  /**
   * What the cache knows of a game's tracking gives the tables and the account of a run without.
   */
  @Test
  void trackingFromTheCacheGivesTheSame() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1"));
    Path tracks = write("t.csv", tracking("G1", CHASED) + "G1,104.05,99,Gulls,3,0,0\n");
    Path book = dir.resolve("book");
    Object[] args = {
      "review",
      sheet,
      "--tracking",
      tracks,
      "--tables-only",
      "--out",
      book,
      "--cache",
      dir + "/kept"
    };
    Run cold = Run.of(args);
    String flags = flags(book);
    String aside = Files.readString(book.resolve("set-aside/t.csv"));
    Run warm = Run.of(args);
    assertTrue(
        cold.out().contains("earlier run 0 of 1 sheet, tracking of 0 of 1 game."), cold.out());
    assertTrue(
        warm.out().contains("earlier run 1 of 1 sheet, tracking of 1 of 1 game."), warm.out());
    assertEquals(flags, flags(book));
    assertEquals(aside, Files.readString(book.resolve("set-aside/t.csv")));
    assertEquals(cold.out().replaceAll("Cache: .*", ""), warm.out().replaceAll("Cache: .*", ""));
    write("t.csv", tracking("G1", CHASED.subList(0, 3)));
    Run other = Run.of(args);
    assertTrue(other.out().contains("tracking of 0 of 1 game."), other.out());
    assertTrue(flags(book).contains(",unknown,1,7.28,own 3.0 -6.0"), flags(book));
  }

  /** Four releases a minute apart, tracked in frames, ten a second, and read through a map. */
  private String reviewedThrough(String map) throws IOException {
    StringBuilder rows = new StringBuilder(HEAD);
    StringBuilder tracks = new StringBuilder("game,frame,period,track,team,number,x_m,y_m\n");
    for (int k = 0; k < 4; k++) {
      int minute = 18 - k;
      rows.append(
          game("G1")
              .replace("19:00", minute + ":30")
              .replace("18:5", minute + ":2")
              .replace(",100\n", "," + (100 + 60 * k) + "\n")
              .replace(",104\n", "," + (104 + 60 * k) + "\n"));
      for (int i = 0; i <= 40; i++) {
        for (Goes g : CHASED) {
          tracks.append(
              String.format(
                  Locale.ROOT,
                  "G1,%d,1,%d,%s,%d,%.2f,%.2f%n",
                  20 + 600 * k + i,
                  100 * k + g.number(),
                  g.home() ? "Herons" : "Wolves",
                  g.number(),
                  g.x() + g.vx() * (i / 10.0 - 2),
                  g.y() + g.vy() * (i / 10.0 - 2)));
        }
      }
    }
    Run r =
        Run.of(
            "review",
            write("g1.csv", rows.toString()),
            "--tracking",
            write("t.csv", tracks.toString()),
            "--tracking-map",
            write("t.toml", "sheet = \"tracking\"\n" + map),
            "--json-lines",
            "--out",
            dir.resolve("book"));
    assertEquals(0, r.code(), r.err());
    return r.out();
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "10, 100, , found at 4 of 4, ",
        "10, 100, |view = \"rink_fixed\"~home_attacks_plus_x_in = [2]|, found at 0 of 4, place.view or home_attacks_plus_x_in: turned half round",
        "10, 100, |y_left = \"down\"|, found at 0 of 4, place.y_left: left and right exchanged",
        "10, 100, |unit = \"ft\"|, found at 0 of 4, place.unit: metres instead of feet",
        "10, 100, |center_x = 8|, found at 0 of 4, video.frames_per_second",
        "30, 100, , found at 0 of 4, nobody was seen",
        "10, 0, , found at 0 of 4, nobody was seen",
        "10, 101.5, , found at 0 of 4, far from the puck"
      })
  void aWrongTrackingMapIsSaid(double fps, double first, String place, String found, String words)
      throws IOException {
    String map =
        "[video]\nframes_per_second = %s\nfirst_frame_s = %s\n[place]\n%s\n"
            .formatted(fps, first, place == null ? "" : place.replace('~', '\n'));
    String out = reviewedThrough(map);
    assertTrue(out.contains(found), out);
    assertTrue(out.contains(words == null ? "4 measured" : words), out);
    assertEquals(words == null, !out.contains("Look at this") && !out.contains("Not found"), out);
  }

  /** Frame 40 of ten a second, the first at second 100: the player is where the sheet has him. */
  @Test
  void linesOfReleasesNameTheFrame() throws IOException {
    reviewedThrough("[video]\nframes_per_second = 10\nfirst_frame_s = 100\n");
    List<String> lines = Files.readAllLines(dir.resolve("book/data/releases.jsonl"));
    assertEquals(4, lines.size());
    for (int k = 0; k < 4; k++) {
      String frame = "\"tracking_sheet\":\"t.csv\",\"tracking_frame\":" + (40 + 600 * k) + "}";
      assertTrue(lines.get(k).endsWith(frame), lines.get(k));
    }
  }

  @Test
  void theSameBytesTwice() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1"));
    Path tracks = write("t.csv", tracking("G1", CHASED));
    Run.of("review", sheet, "--tracking", tracks, "--out", dir.resolve("one"));
    Run.of("review", sheet, "--tracking", tracks, "--out", dir.resolve("two"));
    assertEquals(flags(dir.resolve("one")), flags(dir.resolve("two")));
  }

  @Test
  void aPictureThatMovesAsOneGivesNoSpeeds() throws IOException {
    List<Goes> panned =
        CHASED.stream()
            .map(g -> new Goes(g.number(), g.home(), g.x(), g.y(), g.vx() + 9, g.vy()))
            .toList();
    Path sheet = write("g1.csv", HEAD + game("G1"));
    Path tracks = write("t.csv", tracking("G1", panned));
    Run r = Run.of("review", sheet, "--tracking", tracks, "--out", dir.resolve("book"));
    assertEquals(0, r.code(), r.err());
    String flags = flags(dir.resolve("book"));
    assertTrue(flags.contains("speeds known of 0"), flags);
    assertTrue(flags.contains("speeds not used, the picture moved as one"), flags);
  }

  @Test
  void oneOpponentNearIsTooFewToMeasure() throws IOException {
    Path sheet = write("g1.csv", HEAD + game("G1"));
    Path tracks = write("t.csv", tracking("G1", CHASED.subList(0, 3)));
    Run r = Run.of("review", sheet, "--tracking", tracks, "--out", dir.resolve("book"));
    assertEquals(0, r.code(), r.err());
    String flags = flags(dir.resolve("book"));
    assertTrue(flags.contains(",unknown,1,7.28,"), flags);
    assertTrue(flags.contains("too few near the puck to measure"), flags);
    assertTrue(r.out().contains("pucks sent before the red line: 1 unknown."), r.out());
  }

  @Test
  void theClockFindsTheInstantWhereThePlaySheetHasNoVideo() throws IOException {
    String blind = (HEAD + game("G1")).replace(",100\n", ",\n").replace(",104\n", ",\n");
    Path sheet = write("g1.csv", blind);
    Path tracks = write("t.csv", tracking("G1", CHASED));
    Run without = Run.of("review", sheet, "--tracking", tracks, "--out", dir.resolve("a"));
    assertTrue(
        without.out().contains("Not found: 1 at a clock that no video second belongs to."),
        without.out());
    Path sync = write("sync.csv", "game,period,clock,video_s\nG1,1,19:00,100\nG1,1,18:50,110\n");
    Run with =
        Run.of("review", sheet, "--tracking", tracks, "--sync", sync, "--out", dir.resolve("b"));
    assertEquals(0, with.code(), with.err());
    assertTrue(flags(dir.resolve("b")).contains(",measured,3,"), flags(dir.resolve("b")));
  }

  @Test
  void severalGamesInAndBesideATrackingSheet() throws IOException {
    Path a = write("a.csv", HEAD + game("G1"));
    Path b = write("b.csv", HEAD + game("G2"));
    String two = tracking("G1", CHASED) + tracking("G2", CHASED).replaceFirst(".*\n", "");
    String three = two + tracking("G3", CHASED).replaceFirst(".*\n", "") + "G1,104\n";
    Path tracks = write("t.csv", three);
    Run r = Run.of("review", a, b, "--tracking", tracks, "--out", dir.resolve("book"));
    assertEquals(0, r.code(), r.err());
    assertTrue(
        r.out()
            .contains(
                "Tracking: 616 rows read = 410 used + 1 set aside + 205 of games without a play"
                    + " sheet."),
        r.out());
    assertTrue(r.out().contains("found at 2 of 2 pucks"), r.out());
  }

  @Test
  void whatCannotBeReadStopsTheRunAndNamesThePlace() throws IOException {
    Path a = write("a.csv", HEAD + game("G1"));
    Path b = write("b.csv", HEAD + game("G2"));
    String unnamed = tracking("", CHASED);
    Path out = dir.resolve("book");
    Run nobody = Run.of("review", a, b, "--tracking", write("t.csv", unnamed), "--out", out);
    assertEquals(3, nobody.code());
    assertTrue(nobody.err().contains("names no game, beside 2 games"), nobody.err());
    Run one = Run.of("review", a, b, "--tracking", write("G1 cam.csv", unnamed), "--out", out);
    assertEquals(0, one.code(), one.err());
    assertTrue(one.out().contains("found at 1 of 2 pucks"), one.out());
    assertTrue(one.out().contains("Not found: 1 the game was not tracked."), one.out());
    Run mixed =
        Run.of(
            "review",
            a,
            b,
            "--tracking",
            write(
                "m.csv", tracking("G1", CHASED) + tracking("G2", CHASED) + ",104,1,Herons,1,0,0\n"),
            "--out",
            out);
    assertEquals(3, mixed.code());
    assertTrue(mixed.err().contains("m.csv, line"), mixed.err());
    Run idle = Run.of("review", a, "--tracking-map", a, "--out", out);
    assertEquals(2, idle.code());
    assertTrue(idle.err().contains("--sync-map: found neither --tracking"), idle.err());
  }
}
