package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;

/** Seconds of the video for rows that have none, worked by hand; the games are invented. */
class VideoSecondsTest {

  private static final String HEAD = "home,away,period,clock,team,action,stoppage\n";
  private static final double REACH = 1200;

  @TempDir Path dir;

  private SheetsRead sheet(String rows) throws IOException, SheetException {
    Path file = Files.writeString(dir.resolve("G.csv"), rows);
    return SeasonReader.at(file.toString());
  }

  /** Rows of a play sheet from "period clock action". */
  private static String play(String... rows) {
    StringBuilder text = new StringBuilder(HEAD);
    for (String row : rows) {
      String[] w = row.split(" ", -1);
      boolean stop = w[2].equals("stoppage");
      text.append(
          "Herons,Wolves,%s,%s,%s,%s,%s%n"
              .formatted(w[0], w[1], stop ? "" : "Herons", w[2], stop ? "icing" : ""));
    }
    return text.toString() + "Herons,Wolves,1,0:00,Wolves,touch,\n";
  }

  private VideoSeconds seconds(SheetsRead season, String pairs, double reach)
      throws IOException, SheetException {
    Path sync = Files.writeString(dir.resolve("sync.csv"), "period,clock,video_s\n" + pairs);
    SyncSheets sheets = SyncSheets.read(List.of(sync), List.of(), Outlines.of(season), false);
    assertEquals(List.of(), sheets.setAside());
    return VideoSeconds.of(season.games(), season.tagged(), sheets, reach);
  }

  /** "129.0 sure", "150.0 +-21.0", "178.0 past 1" or "none" of each row but the last. */
  private List<String> said(String pairs, String... rows) throws IOException, SheetException {
    List<VideoSeconds.Row> all = seconds(sheet(play(rows)), pairs, REACH).rows();
    return all.subList(0, all.size() - 1).stream().map(r -> said(r.match())).toList();
  }

  private static String said(ClockMatch match) {
    if (match instanceof ClockMatch.At at) {
      return at.clockRan()
          ? String.format(Locale.ROOT, "%.1f sure", at.seconds())
          : String.format(Locale.ROOT, "%.1f +-%.1f", at.seconds(), at.plusMinus());
    }
    return match instanceof ClockMatch.Beyond b
        ? String.format(Locale.ROOT, "%.1f past %d", b.seconds(), b.stoppages())
        : "none";
  }

  private static final String[] ONE_STOPPAGE = {
    "1 20:00 faceoff",
    "1 19:51 release",
    "1 19:45 stoppage",
    "1 19:45 faceoff",
    "1 19:45 recovery",
    "1 19:30 recovery"
  };

  @Test
  void aPairAtEachFaceOffTimesTheStoppage() throws Exception {
    assertEquals(
        List.of("120.0 sure", "129.0 sure", "135.0 sure", "163.0 sure", "163.0 sure", "178.0 sure"),
        said("1,20:00,120\n1,19:45,163\n", ONE_STOPPAGE));
  }

  @Test
  void theExampleOfTheGuideIsRight() throws Exception {
    String guide = Files.readString(Path.of("docs/sheets.md"));
    String pairs = guide.split("```\nperiod,clock,video_s\n", -1)[1].split("```", -1)[0];
    Matcher rows = Pattern.compile("\\| `([\\d:]+)` \\| `(\\w+)` \\| (\\d+) \\|").matcher(guide);
    List<String> sheet = new ArrayList<>();
    List<String> expected = new ArrayList<>();
    while (rows.find()) {
      sheet.add("1 " + rows.group(1) + " " + rows.group(2));
      expected.add(rows.group(3) + ".0 sure");
    }
    assertEquals(5, expected.size());
    assertEquals(expected, said(pairs, sheet.toArray(String[]::new)));
  }

  @Test
  void whistleAndFaceOffAtOneClock() throws Exception {
    assertEquals(
        List.of("120.0 sure", "129.2 sure", "135.4 sure", "163.0 sure", "163.0 sure", "178.0 sure"),
        said("1,20:00,120\n1,19:45,135.4\n1,19:45,163\n", ONE_STOPPAGE));
  }

  @Test
  void aSinglePairReadAtTheWhistleIsSeenByTheClockThatRan() throws Exception {
    // 135 is 15 s after 120, as many as were played: no stoppage fits in, so it is the whistle.
    assertEquals(
        List.of("120.0 sure", "129.0 sure", "135.0 sure", "163.0 sure", "163.0 sure", "178.0 sure"),
        said("1,20:00,120\n1,19:45,135\n1,19:30,178\n", ONE_STOPPAGE));
  }

  @Test
  void whatSeveralStoppagesTookIsSharedOut() throws Exception {
    // 60 s of play, 120 s of video: two stoppages took 60 s, 30 each as far as one can tell.
    // Between
    // them any second up to 30 s before or after is possible, and 1.5 s by the clocks' steps.
    assertEquals(
        List.of("100.0 sure", "120.0 sure", "150.0 +-31.5", "160.0 +-31.5", "200.0 sure"),
        said(
            "1,20:00,100\n1,19:00,220\n",
            "1 20:00 faceoff",
            "1 19:40 stoppage",
            "1 19:40 faceoff",
            "1 19:30 stoppage",
            "1 19:20 faceoff"));
  }

  @Test
  void outsideThePairsTheClockRunsOn() throws Exception {
    SheetsRead season = sheet(play(ONE_STOPPAGE));
    String one = "1,19:55,125\n";
    List<VideoSeconds.Row> rows = seconds(season, one, REACH).rows();
    assertEquals(
        List.of(
            "120.0 sure",
            "129.0 sure",
            "135.0 sure",
            "135.0 past 1",
            "135.0 past 1",
            "150.0 past 1",
            "1320.0 past 1"),
        rows.stream().map(r -> said(r.match())).toList());
    // Ten seconds from the pair at 19:55 and no farther: 19:45 is the last.
    assertEquals(
        List.of("120.0 sure", "129.0 sure", "135.0 sure", "135.0 past 1", "135.0 past 1", "none"),
        seconds(season, one, 10).rows().subList(0, 6).stream().map(r -> said(r.match())).toList());
    // A video that begins after the opening face-off does not show it.
    assertEquals("none", said(seconds(season, "1,19:55,2\n", REACH).rows().get(0).match()));
  }

  @Test
  void aPeriodWithoutAPairHasNoSeconds() throws Exception {
    List<String> said =
        said("2,20:00,900\n", "1 20:00 faceoff", "2 20:00 faceoff", "2 19:50 recovery");
    assertEquals("none", said.get(0));
    // The last row of the sheet, in period 1, was written last and is set aside as out of order.
    assertTrue(said.contains("900.0 sure"), said.toString());
  }

  @Test
  void aStoppageWithoutAFaceOffRowIsKnownAllTheSame() throws Exception {
    assertEquals(
        List.of("100.0 sure", "110.0 sure", "140.0 sure"),
        said(
            "1,20:00,100\n1,19:40,140\n",
            "1 20:00 faceoff",
            "1 19:50 stoppage",
            "1 19:40 recovery"));
  }

  @Test
  void aTagSheetKnowsNoFaceOffs() throws Exception {
    Path file = dir.resolve("G.csv");
    Files.writeString(
        file,
        "home,away,period,clock,team,way_out,video_s\n"
            + "Herons,Wolves,1,19:50,Herons,chip,\nHerons,Wolves,1,19:45,Herons,chip,\n"
            + "Herons,Wolves,1,19:40,Herons,pass,999\nHerons,Wolves,1,19:00,Herons,pass,\n");
    SheetsRead season = SeasonReader.at(file.toString());
    VideoSeconds both = seconds(season, "1,20:00,100\n1,19:45,115\n1,19:45,140\n", REACH);
    assertEquals(
        List.of("110.0 sure", "115.0 sure", "145.0 past 0", "185.0 past 0"),
        both.rows().stream().map(r -> said(r.match())).toList());
    // The row's own second stays; the others are filled in.
    assertEquals(
        List.of(110.0, 115.0, 999.0, 185.0),
        both.tagged().get(0).exits().stream().map(e -> e.video().getAsDouble()).toList());
    // One pair at the face-off: 25 s without play lie somewhere between; the middle is taken.
    VideoSeconds one = seconds(season, "1,20:00,100\n1,19:45,140\n", REACH);
    assertEquals("122.5 +-14.0", said(one.rows().get(0).match()));
  }

  /** A game with its truth: play and stoppages in turn, the clock in whole seconds. */
  @Test
  void theBoundHoldsAndTheSecondNeverFallsForSeededGames() throws Exception {
    Random random = new Random(20311004);
    int inferred = 0;
    int sure = 0;
    for (int game = 0; game < 60; game++) {
      List<String> rows = new ArrayList<>();
      List<Double> truth = new ArrayList<>();
      StringBuilder pairs = new StringBuilder();
      int timed = 1;
      double played = 0;
      double video = 5 + random.nextInt(100);
      while (played < 1100) {
        rows.add(row(played, "faceoff"));
        truth.add(video);
        if (timed > 0) {
          pairs.append(pair(played, video));
        }
        for (int i = random.nextInt(6); i >= 0; i--) {
          // Play stops at most once at a clock; twice needs all four pairs (docs/sheets.md).
          double step = 1 + random.nextDouble() * 8;
          played += step;
          video += step;
          rows.add(row(played, "recovery"));
          truth.add(video);
        }
        rows.add(row(played, "stoppage"));
        truth.add(video);
        // No pair at this stoppage, one at its face-off, or whistle and face-off.
        timed = random.nextInt(3);
        if (timed == 2) {
          pairs.append(pair(played, video));
        }
        video += 10 + random.nextDouble() * 40;
      }
      SheetsRead season = sheet(play(rows.toArray(String[]::new)));
      List<VideoSeconds.Row> found = seconds(season, pairs.toString(), 0).rows();
      double before = 0;
      for (int i = 0; i < rows.size(); i++) {
        if (found.get(i).match() instanceof ClockMatch.At at) {
          String where = "game " + game + ", " + rows.get(i) + ", true " + truth.get(i) + " " + at;
          assertTrue(Math.abs(at.seconds() - truth.get(i)) <= at.plusMinus() + 1e-6, where);
          assertTrue(at.seconds() >= before - 1e-6, where + " falls below " + before);
          before = at.seconds();
          sure += at.clockRan() ? 1 : 0;
          inferred += at.clockRan() ? 0 : 1;
        }
      }
    }
    assertTrue(sure > 3000 && inferred > 300, sure + " sure, " + inferred + " inferred");
  }

  private static String row(double played, String action) {
    return "1 " + clock(played) + " " + action;
  }

  private static String pair(double played, double video) {
    return String.format(Locale.ROOT, "1,%s,%.1f%n", clock(played), video);
  }

  /** Time left as a clock shows it that rounds up to whole seconds. */
  private static String clock(double played) {
    int left = 1200 - (int) Math.floor(played);
    return left / 60 + String.format(Locale.ROOT, ":%02d", left % 60);
  }

  private static List<String> reasons(SyncSheets sheets) {
    return sheets.setAside().stream().map(TrackSheets::said).toList();
  }

  @Test
  void everyRowOfASyncSheetIsUsedOrSetAsideWithItsReason() throws Exception {
    Path sync = dir.resolve("sync.csv");
    Files.writeString(
        sync,
        "game,period,clock,video_s\n"
            + "G1,1,20:00,100\n"
            + "G1,1,19:00,160\n"
            + "G1,1,18:00,130\n" // faster than the clock: contradicts the two above
            + "G1,4,20:00,100\n"
            + "G9,1,20:00,100\n"
            + "G1,1,21:00,100\n"
            + "G1,1,17:00,soon\n"
            + "G1,1,,170\n"
            + "G1,1,16:00\n");
    SyncSheets sheets =
        SyncSheets.read(
            List.of(sync),
            List.of(),
            Outlines.byId(TrackSheets.threePeriods("G1"), TrackSheets.threePeriods("G2")),
            false);
    assertEquals(9, sheets.rowsRead());
    assertEquals(2, sheets.of("G1").pairs().size());
    assertEquals(
        List.of(
            "10: : 3 cells: G1,1,16:00",
            "5: period: 4",
            "6: game: G9",
            "7: clock: 21:00",
            "8: video_s: soon",
            "9: clock: ",
            "4: period, clock, video_s: period 1, 120.0 s played, video 130.0 s"),
        reasons(sheets));
    DoubtfulRow unknown = sheets.setAside().get(2);
    assertEquals(
        sync
            + ", line 6, column \"game\": found \"G9\", expected the id of a game whose sheet is"
            + " read, such as G1, G2. What to do: Correct the game, or give the sheet of that game"
            + " as well.",
        unknown.problems().get(0).message());
  }

  @Test
  void aSheetThatNamesNoGameBelongsToTheOneInItsFileName() throws Exception {
    Map<String, GameOutline> games =
        Outlines.byId(TrackSheets.threePeriods("G1"), TrackSheets.threePeriods("G11"));
    String text = "period,clock,video_s\n1,20:00,100\n";
    Path named = Files.writeString(dir.resolve("G11 times.csv"), text);
    SyncSheets sheets = SyncSheets.read(List.of(named), List.of(), games, false);
    assertEquals(1, sheets.of("G11").pairs().size());
    assertEquals(0, sheets.of("G1").pairs().size());
    Path nobody = Files.writeString(dir.resolve("times.csv"), text);
    SheetException e =
        assertThrows(
            SheetException.class, () -> SyncSheets.read(List.of(nobody), List.of(), games, false));
    assertTrue(e.getMessage().contains("line 2: found a row that names no game, beside 2 games"));
    Path mixed =
        Files.writeString(
            dir.resolve("m.csv"),
            "game,period,clock,video_s\nG1,1,20:00,1\nG11,1,20:00,1\n,1,9:00,9\n");
    SheetException m =
        assertThrows(
            SheetException.class, () -> SyncSheets.read(List.of(mixed), List.of(), games, false));
    assertTrue(
        m.getMessage().contains("line 4: found a row that names no game, in a sheet that names 2"));
    assertFalse(m.getMessage().contains("beside"));
  }

  @Test
  void clocksCountInThePeriodsOfTheirGame() throws Exception {
    Path sync = Files.writeString(dir.resolve("s.csv"), "period,clock,video_s\n1,15:00,100\n");
    GameOutline quarterHour = Outlines.of("G1", 900, Set.of(1));
    SyncSheets sheets =
        SyncSheets.read(List.of(sync), List.of(), Outlines.byId(quarterHour), false);
    assertEquals(0, sheets.of("G1").pairs().get(0).elapsed(), 1e-9);
  }
}
