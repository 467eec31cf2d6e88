package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.rink.Place;
import twostrides.sheet.SheetException;

/** Slips that are put right and counted, and games that are refused because they are several. */
class MendsTest {

  private static final String HEAD =
      "date,period,clock,team,player,other_player,action,outcome,x_m,y_m,stoppage,on_ice\n";

  @TempDir Path dir;

  private SheetsRead read(String rows) throws IOException, SheetException {
    Path sheet = Files.writeString(dir.resolve("g.csv"), HEAD + rows);
    return SeasonReader.read(List.of(sheet), Optional.empty(), false, n -> {});
  }

  private static void allUsed(SheetsRead s) {
    assertEquals(s.rowsRead(), s.rowsUsed(), s.setAside().toString());
  }

  @Test
  void anIdWithADecimalIsTheIdWithout() throws Exception {
    SheetsRead s =
        read(
            ",1,19:00,Herons,4,26.0,pass,complete,-20,3,,4; 26.0\n"
                + ",1,18:58,Herons,26,,touch,,-10,3,,\n,1,18:00,Wolves,9.5,,recovery,,1,1,,\n");
    List<PlayRow> rows = s.games().get(0).rows();
    assertEquals(rows.get(1).player(), rows.get(0).otherPlayer());
    assertEquals(List.of("4", "26"), rows.get(0).ownOnIce());
    assertEquals("9.5", rows.get(2).player().orElseThrow());
    assertEquals(Map.of(Mend.ID, 2), s.mended());
    allUsed(s);
  }

  @ParameterizedTest
  @CsvSource({
    "-30.9, 3, -30.9, 3, 0",
    "-31.4, 3, -30.48, 3, 1",
    "20, 13.9, 20, 12.954, 1",
    "20, 13.4, 20, 13.4, 0"
  })
  void aPlaceJustOutsideIsOnTheBoards(double x, double y, double readX, double readY, int mended)
      throws Exception {
    SheetsRead s =
        read(
            ",1,19:00,Herons,4,,touch,,%s,%s,,\n,1,18:00,Wolves,9,,recovery,,1,1,,\n"
                .formatted(x, y));
    assertEquals(new Place(readX, readY), s.games().get(0).rows().get(0).place().orElseThrow());
    assertEquals(mended, s.mended().getOrDefault(Mend.PLACE, 0));
    allUsed(s);
  }

  @Test
  void aTeamInCapitalsIsTheTeam() throws Exception {
    SheetsRead s =
        read(
            ",1,19:00,Herons,4,,touch,,-20,3,,\n,1,18:58,HERONS,4,,touch,,-10,3,,\n"
                + ",1,18:00,Tarn  Wolves,9,,touch,,1,1,,\n,1,17:00,Tarn Wolves,9,,touch,,1,1,,\n");
    assertEquals(
        List.of("Herons", "Tarn  Wolves"),
        List.of(s.games().get(0).home(), s.games().get(0).away()));
    assertEquals(
        Map.of(Mend.team("HERONS", "Herons"), 1, Mend.team("Tarn Wolves", "Tarn  Wolves"), 1),
        s.mended());
    allUsed(s);
  }

  /** Half the rink's width is 12.954 m. */
  @ParameterizedTest
  @CsvSource({"13.4, 13.4, 0", "15.9, 12.954, 1", "-15.9, -12.954, 1"})
  void aSkaterAtTheBenchIsOnTheBoards(double y, double readY, int mended) throws Exception {
    Path sheet =
        Files.writeString(
            dir.resolve("g.csv"),
            "period,clock,team,action,opponent_skaters\n1,19:00,Herons,release,3 4; -2 %s 1 1\n1,18:00,Wolves,touch,\n1,17:00,Herons,touch,\n"
                .formatted(y));
    SheetsRead s = SeasonReader.at(sheet.toString());
    assertEquals(new Place(-2, readY), s.games().get(0).rows().get(0).skaters().get(1).place());
    assertEquals(mended, s.mended().getOrDefault(Mend.SKATER, 0));
    allUsed(s);
    Files.writeString(sheet, Files.readString(sheet).replace(" %s ".formatted(y), " 16.1 "));
    assertEquals(1, SeasonReader.at(sheet.toString()).setAside().size());
  }

  @Test
  void aPlaceFarOutsideIsStillSetAside() throws Exception {
    SheetsRead s =
        read(
            ",1,19:00,Herons,4,,touch,,-31.6,3,,\n,1,18:00,Wolves,9,,touch,,1,1,,\n,1,17:00,Herons,4,,touch,,1,1,,\n");
    assertEquals(1, s.setAside().size());
    assertEquals(Map.of(), s.mended());
  }

  /** Clocks of a touch, the icing, the face-off after it; what they are read as, seconds played. */
  @ParameterizedTest
  @CsvSource({
    "10:04, 10:05, 10:04, 596, 596, 596, 1",
    "10:04, 10:05, 10:05, 595, 595, 595, 1",
    "10:05, 10:04, 10:04, 595, 596, 596, 0"
  })
  void aClockSetBackAtTheWhistleLosesNoRow(
      String touch, String icing, String faceOff, int a, int b, int c, int mended)
      throws Exception {
    SheetsRead s =
        read(
            ",1,10:20,Wolves,9,,touch,,1,1,,\n,1,%s,Herons,4,,touch,,1,1,,\n,1,%s,Herons,,,stoppage,,,,icing,\n,1,%s,Wolves,9,,faceoff,,21,6.7,,\n"
                .formatted(touch, icing, faceOff));
    allUsed(s);
    assertEquals(
        List.of(580.0, (double) a, (double) b, (double) c),
        s.games().get(0).rows().stream().map(PlayRow::elapsed).toList());
    assertEquals(mended, s.mended().getOrDefault(Mend.CLOCK, 0));
  }

  @Test
  void aWhistleFarBackIsStillSetAside() throws Exception {
    SheetsRead s =
        read(
            ",1,10:20,Wolves,9,,touch,,1,1,,\n,1,10:04,Herons,4,,touch,,1,1,,\n"
                + ",1,10:09,Herons,,,stoppage,,,,icing,\n,1,10:04,Wolves,9,,faceoff,,21,6.7,,\n");
    assertEquals(1, s.setAside().size());
  }

  private static String game(String date, String one, String other, int periods) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 12 * periods; i++) {
      rows.append(
          "%s,%d,%d:00,%s,4,,touch,,1,1,,\n"
              .formatted(date, 1 + i / 12, 19 - i % 12, i % 2 == 0 ? one : other));
    }
    return rows.toString();
  }

  private String refused(String rows) {
    return assertThrows(SheetException.class, () -> read(rows)).getMessage();
  }

  @Test
  void severalGamesAreNotOne() {
    String dates =
        refused(
            game("2031-10-04", "Herons", "Wolves", 1) + game("2031-10-05", "Herons", "Wolves", 1));
    assertTrue(dates.contains("2 dates") && dates.contains("Give each game an id"), dates);
    String teams = refused(game("", "Herons", "Wolves", 2) + game("", "Storks", "Wolves", 2));
    assertTrue(teams.contains("3 teams") && teams.contains("Give each game an id"), teams);
    String clock = refused(game("", "Herons", "Wolves", 3) + game("", "Herons", "Wolves", 3));
    assertTrue(clock.contains("backward in ") && clock.contains("Give each game an id"), clock);
  }

  @Test
  void aClockReadTheWrongWayIsNamed() {
    List<String> rows = game("", "Herons", "Wolves", 2).lines().toList();
    StringBuilder up = new StringBuilder();
    for (int period = 0; period < 2; period++) {
      for (int i = 11; i >= 0; i--) {
        up.append(rows.get(12 * period + i)).append('\n');
      }
    }
    String m = refused(up.toString());
    assertTrue(m.contains("clock.direction"), m);
    StringBuilder newestFirst = new StringBuilder();
    rows.forEach(r -> newestFirst.insert(0, r + "\n"));
    String sorted = refused(newestFirst.toString());
    assertTrue(sorted.contains("Sort the sheet"), sorted);
  }

  @Test
  void oneWrongDateOrTeamIsASlip() throws Exception {
    SheetsRead s =
        read(
            game("2031-10-04", "Herons", "Wolves", 1)
                + "2031-10-05,1,7:00,Herons,4,,touch,,1,1,,\n2031-10-04,1,6:00,Hreons,4,,touch,,1,1,,\n");
    assertEquals(1, s.games().size());
    assertEquals(2, s.setAside().size());
  }
}
