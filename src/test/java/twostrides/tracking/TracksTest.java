package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.Usual;
import twostrides.rink.Rink;
import twostrides.sheet.SettingSpec;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetSchema;

/** Tracking sheets become tracks, and doubtful rows are set aside where they stand. */
class TracksTest {
  private static final String PLAIN = "video_s,track,team,number,x_m,y_m\n";

  @TempDir Path dir;

  private static SeenSkater only(Skaters skaters) {
    assertEquals(1, skaters.seen().size(), skaters.toString());
    return skaters.seen().get(0);
  }

  @Test
  void aPlainSheetNeedsNoMap() throws Exception {
    Tracks tracks =
        TrackSheets.read(
            dir,
            PLAIN
                + "10.0,1,Glasswater Herons,9,-5.0,2.0\n10.0,2,Tarn Wolves,,4.0,-1.0\n"
                + "10.1,1,Glasswater Herons,9,-4.4,2.2\n10.1,2,Tarn Wolves,,4.0,-1.0\n",
            "");
    assertEquals(4, tracks.rowsRead());
    assertEquals(4, tracks.rowsUsed());
    assertEquals(0.1, tracks.frameStep().getAsDouble(), 1e-9);
    Skaters at = tracks.at(1, 10.05, Smoother.USUAL);
    SeenSkater heron = at.of(true).get(0);
    assertEquals(-4.7, heron.place().x(), 1e-5);
    assertEquals(2.1, heron.place().y(), 1e-5);
    assertEquals(OptionalInt.of(9), heron.number());
    assertInstanceOf(Motion.NoSpeed.class, heron.motion());
    SeenSkater wolf = at.seenByOpponent().of(false).get(0);
    assertEquals(-4.0, wolf.place().x(), 1e-5);
    assertEquals(OptionalInt.empty(), wolf.number());
    // Half a frame step past the last row is seen, more is not.
    assertEquals(2, tracks.at(1, 10.149, Smoother.USUAL).seen().size());
    assertEquals(0, tracks.at(1, 10.151, Smoother.USUAL).seen().size());
  }

  @Test
  void everyBadRowIsSetAsideAtItsPlace() throws Exception {
    Tracks tracks =
        TrackSheets.read(
            dir,
            "game,video_s,clock,period,track,team,number,x_m,y_m\n"
                + "g1,10.0,19:50,1,1,Glasswater Herons,9,0,0\n"
                + "g1,10.1,19:50,1,1,Glasswater Herons,9,40,0\n"
                + "g1,10.2,19:50,1,1,Salt Harbor,9,0,0\n"
                + "g1,10.0,19:50,1,1,Glasswater Herons,9,0,0\n"
                + "g1,9.9,19:50,1,1,Glasswater Herons,9,0,0\n"
                + "g1,10.3,19:51,1,1,Glasswater Herons,9,0,0\n"
                + "g1,10.3,19:50,1,1,Glasswater Herons,9,NaN,0\n"
                + "g1,10.3,19:50,1,1,Glasswater Herons,100,0,0\n"
                + "g1,,19:50,1,1,Glasswater Herons,9,0,0\n"
                + "g1,10.3,19:50,1,,Glasswater Herons,9,0,0\n"
                + "g1,10.3,19:50,1,1,Glasswater Herons,9,0,\n"
                + "g1,10.3,19:50,1,1,Glasswater Herons,9,0\n"
                + "g2,10.3,19:50,1,1,Glasswater Herons,9,0,0\n"
                + "g1,10.3,19:49,1,1,Glasswater Herons,9,0,0\n",
            "");
    assertEquals(
        List.of(
            "3: x_m: 40",
            "4: team: Salt Harbor",
            "5: video_s: 10.0",
            "6: video_s: 9.9",
            "7: clock: 19:51",
            "8: x_m: NaN",
            "9: number: 100",
            "10: video_s: ",
            "11: track: ",
            "12: y_m: ",
            "13: : 8 cells: g1,10.3,19:50,1,1,Glasswater Herons,9,0"),
        TrackSheets.doubts(tracks));
    assertEquals(14, tracks.rowsRead());
    assertEquals(2, tracks.rowsUsed());
    assertEquals(11, tracks.rowsSetAside());
    assertEquals(1, tracks.rowsOfOtherGames());
    // The two rows in use are pairs of clock and video.
    ClockMatch.At ran =
        assertInstanceOf(ClockMatch.At.class, tracks.clock(Sync.NONE).videoAt(1, 10.5, 0));
    assertEquals(10.15, ran.seconds(), 0.001);
  }

  @Test
  void aSheetThatSaysNoTimeIsRefused() throws Exception {
    String rest = "track,team,x_m,y_m\n";
    SheetException none = assertThrows(SheetException.class, () -> TrackSheets.read(dir, rest, ""));
    assertTrue(none.getMessage().contains("neither a column \"frame\""), none.getMessage());
    SheetException rate =
        assertThrows(SheetException.class, () -> TrackSheets.read(dir, "frame," + rest, ""));
    assertTrue(rate.getMessage().contains("frames_per_second"), rate.getMessage());
    String zero = "[video]\nframes_per_second = 0\n";
    assertThrows(SheetException.class, () -> TrackSheets.read(dir, "frame," + rest, zero));
  }

  @Test
  void framesCountFromTheFirstOrFromTheSyncSheet() throws Exception {
    String sheet =
        "segment,frame,track,team,x_m,y_m\nA,0,1,Tarn Wolves,0,0\nA,50,1,Tarn Wolves,0,0\n"
            + "B,50,1,Tarn Wolves,1,1\nC,50,1,Tarn Wolves,1,1\n";
    String rate = "[video]\nframes_per_second = 25\nfirst_frame_s = 7.5\n";
    Tracks alone = TrackSheets.read(dir, sheet, rate);
    assertEquals(7.5, alone.tracks().get(0).second(0), 1e-9);
    assertEquals(9.5, alone.tracks().get(0).second(1), 1e-9);
    SyncSheets sheets =
        TrackSheets.sync(
            dir,
            "game,segment,frame,period,clock,video_s\ng1,A,0,1,,100\ng1,A,50,1,,300\n"
                + "g1,B,0,2,,40.0\ng9,B,0,2,,900\ng1,,,2,19:00,60\ng1,,,2,,61\ng1,,,,19:00,61\n");
    assertEquals(
        List.of("5: game: g9", "7: clock: ", "8: period: "),
        sheets.setAside().stream().map(TrackSheets::said).toList());
    assertEquals(7, sheets.rowsRead());
    Sync sync = sheets.of("g1");
    assertEquals(1, sync.pairs().size());
    assertEquals(60, sync.pairs().get(0).elapsed(), 1e-9);
    assertEquals(1.0, sync.pairs().get(0).plusMinus(), 1e-9);
    Tracks placed = TrackSheets.read(dir, sheet, rate, sync);
    assertEquals(List.of("5: segment: C"), TrackSheets.doubts(placed));
    assertEquals(100, placed.tracks().get(0).second(0), 1e-9);
    assertEquals(300, placed.tracks().get(0).second(1), 1e-9);
    assertEquals(42, placed.tracks().get(1).second(0), 1e-9);
    assertEquals(Optional.of(2), placed.tracks().get(1).period());
  }

  @Test
  void videoSecondsThatRestartAreTakenWithTheirPeriod() throws Exception {
    String rows = "period," + PLAIN + "1,10,1,Tarn Wolves,7,3,0\n2,10,1,Tarn Wolves,8,-3,0\n";
    Tracks one = TrackSheets.read(dir, rows + ",10.0,5,Tarn Wolves,6,3,0\n", "");
    assertEquals(3, one.at(1, 10, Smoother.USUAL).seen().size());
    String restarts = "[video]\nrestarts_each_period = true\n";
    Tracks each = TrackSheets.read(dir, rows + ",10.0,5,Tarn Wolves,6,3,0\n", restarts);
    assertEquals(List.of("4: period: "), TrackSheets.doubts(each));
    assertEquals(OptionalInt.of(8), only(each.at(2, 10, Smoother.USUAL)).number());
  }

  @Test
  void mirrorViewsAgree() throws Exception {
    // One skater of each team, period 2, in which the home team attacks -x of the rink.
    String heron = "2,10.0,1,Glasswater Herons,9,";
    String wolf = "2,10.0,2,Tarn Wolves,4,";
    String head = "period," + PLAIN;
    String fixed = "[place]\nview = \"rink_fixed\"\nhome_attacks_plus_x_in = [1, 3]\n";
    String feet =
        "[place]\nview = \"rink_fixed\"\nunit = \"ft\"\ncenter_x = 100\ncenter_y = 42.5\n"
            + "y_left = \"down\"\n";
    List<Tracks> same =
        List.of(
            TrackSheets.read(dir, head + heron + "-12,5\n" + wolf + "3.048,-6\n", ""),
            TrackSheets.read(
                dir,
                head + heron + "-12,5\n" + wolf + "-3.048,6\n",
                "[place]\nview = \"acting_team\"\n"),
            TrackSheets.read(dir, head + heron + "12,-5\n" + wolf + "-3.048,6\n", fixed),
            TrackSheets.read(
                dir,
                "home_attacks," + head + "plus_x," + heron + "-12,5\nplus_x," + wolf + "3.048,-6\n",
                fixed),
            TrackSheets.read(
                dir,
                head
                    + heron
                    + String.format(
                        Locale.ROOT, "%.6f,%.6f%n", 100 + 12 / 0.3048, 42.5 + 5 / 0.3048)
                    + wolf
                    + String.format(Locale.ROOT, "%.6f,%.6f", 90.0, 42.5 - 6 / 0.3048),
                feet));
    for (Tracks tracks : same) {
      Skaters at = tracks.at(2, 10, Smoother.USUAL);
      assertEquals(-12, at.of(true).get(0).place().x(), 1e-4);
      assertEquals(5, at.of(true).get(0).place().y(), 1e-4);
      assertEquals(3.048, at.of(false).get(0).place().x(), 1e-4);
      assertEquals(-6, at.of(false).get(0).place().y(), 1e-4);
    }
    Tracks noPeriod = TrackSheets.read(dir, PLAIN + "10.0,1,Glasswater Herons,9,0,0\n", fixed);
    assertEquals(List.of("2: period: "), TrackSheets.doubts(noPeriod));
  }

  @Test
  void unreadNumbersLostIdsAndSecondSightings() throws Exception {
    String unread = "[track]\nunread = [100, 999]\n";
    String rows =
        "10.0,1,Tarn Wolves,100,0,0\n10.0,2,Tarn Wolves,8,5,0\n10.0,3,Tarn Wolves,8,5.3,0.3\n"
            + "10.0,4,Tarn Wolves,8,12,0\n10.0,5,Glasswater Herons,8,5,0\n"
            // The id 1 comes back 5 s later as a skater of the other team: another track.
            + "15.0,1,Glasswater Herons,999,0,0\n15.1,1,Glasswater Herons,14,0.3,0\n";
    Tracks tracks = TrackSheets.read(dir, PLAIN + rows, unread);
    assertEquals(7, tracks.rowsUsed());
    assertEquals(6, tracks.tracks().size());
    Skaters at = tracks.at(1, 10, Smoother.USUAL);
    assertEquals(4, at.seen().size());
    assertEquals(OptionalInt.empty(), at.seen().get(0).number());
    assertEquals(1, at.doubts().size());
    assertEquals(5, at.doubts().get(0).line());
    assertTrue(at.doubts().get(0).message().contains("7.0 m away"), at.doubts().toString());
    // The number is the nearest row's.
    assertEquals(OptionalInt.empty(), only(tracks.at(1, 15.04, Smoother.USUAL)).number());
    assertEquals(OptionalInt.of(14), only(tracks.at(1, 15.06, Smoother.USUAL)).number());
  }

  @Test
  void noPlaceIsTakenAcrossAGap() throws Exception {
    Tracks tracks =
        TrackSheets.read(
            dir,
            "frame,track,team,x_m,y_m\n0,1,Tarn Wolves,0,0\n6,1,Tarn Wolves,1,0\n"
                + "13,1,Tarn Wolves,2,0\n",
            "[video]\nframes_per_second = 30\n");
    assertEquals(0.5, only(tracks.at(1, 0.1, Smoother.USUAL)).place().x(), 1e-5);
    assertEquals(1.0, only(tracks.at(1, 0.215, Smoother.USUAL)).place().x(), 1e-5);
    assertEquals(0, tracks.at(1, 0.3, Smoother.USUAL).seen().size());
  }

  @Test
  void rowsSetAsideAreCountedEvenWhenTheyAreTooManyToKeep() throws Exception {
    int many = Tracks.MOST_KEPT + 5;
    Tracks tracks = TrackSheets.read(dir, PLAIN + "x,1,Tarn Wolves,8,5,0\n".repeat(many), "");
    assertEquals(many, tracks.rowsSetAside());
    assertEquals(many, tracks.rowsRead());
    assertEquals(Tracks.MOST_KEPT, tracks.setAside().size());
  }

  @Test
  void skatersThatAllMoveAlikeAreTheCamera() throws Exception {
    StringBuilder rows = new StringBuilder(PLAIN);
    for (int skater = 1; skater <= 5; skater++) {
      for (int i = 0; i <= 20; i++) {
        // Each skates its own way at 1 to 5 m/s across; all of them slip 6 m/s along.
        rows.append(
            String.format(
                Locale.ROOT,
                "%.2f,%d,Tarn Wolves,%d,%.4f,%.4f%n",
                i * 0.05,
                skater,
                skater,
                6 * i * 0.05,
                (skater - 3) * i * 0.05));
      }
    }
    Tracks all = TrackSheets.read(dir, rows.toString(), "");
    assertEquals(6, all.at(1, 0.5, Smoother.USUAL).commonSpeed().getAsDouble(), 0.01);
    Tracks four = TrackSheets.read(dir, rows.substring(0, rows.indexOf("0.00,5,Tarn Wolves")), "");
    assertTrue(four.at(1, 0.5, Smoother.USUAL).commonSpeed().isEmpty());
  }

  @Test
  void theGuidesNameEveryColumnAndSetting() throws Exception {
    String page =
        Files.readString(Path.of("docs/sheets.md"))
            + Files.readString(Path.of("docs/maps/README.md"));
    for (SheetSchema schema : TrackForm.ALL) {
      for (String column : schema.columnNames()) {
        assertTrue(page.contains("`" + column + "`"), column);
      }
      for (SettingSpec setting : schema.settings()) {
        assertTrue(page.contains("`" + setting.key()), setting.toString());
        assertTrue(page.contains("[" + setting.table() + "]"), setting.toString());
      }
    }
  }

  /** Without a map a clock that counts down begins at the game's own period length. */
  @Test
  void clocksCountFromTheGamesOwnPeriodLength(@TempDir Path dir) throws Exception {
    Path file = dir.resolve("tracks.csv");
    Files.writeString(
        file,
        "game,video_s,clock,period,track,team,x_m,y_m\n"
            + "g1,100,14:50,1,1,Glasswater Herons,0,0\ng1,101,14:49,1,1,Glasswater Herons,1,0\n");
    Usual quarterHour = new Usual(Rink.NORTH_AMERICAN, 900);
    TrackedGame game = new TrackedGame("g1", "Glasswater Herons", "Tarn Wolves", quarterHour);
    Tracks tracks = Tracks.read(List.of(file), Optional.empty(), game, Sync.NONE);
    ClockMatch.At at =
        assertInstanceOf(ClockMatch.At.class, tracks.clock(Sync.NONE).videoAt(1, 10.5, 0));
    assertEquals(100.5, at.seconds(), 1e-9);
  }

  @Test
  void aMapOfAnotherKindOfSheetIsRefused() {
    assertThrows(
        SheetException.class,
        () ->
            Tracks.read(
                List.of(),
                Optional.of(SheetMap.plain(TrackForm.SYNC)),
                TrackSheets.GAME,
                Sync.NONE));
    assertThrows(
        IllegalArgumentException.class, () -> new TrackedGame("g", "A", "A", Usual.DEFAULT));
  }
}
