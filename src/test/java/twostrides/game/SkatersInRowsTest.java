package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.rink.Place;
import twostrides.sheet.SheetMap;

/** Places of skaters that a play sheet writes down. */
class SkatersInRowsTest {

  private static final String HEAD =
      "home,away,period,clock,team,action,x_m,y_m,own_skaters,opponent_skaters\n";

  private static final String OTHER = "Herons,Wolves,1,18:00,Herons,recovery,0,0,,\n";

  @TempDir Path dir;

  private SheetsRead read(String cells, String map) throws Exception {
    Path sheet = dir.resolve("s.csv");
    Files.writeString(sheet, HEAD + "Herons,Wolves,1,19:00,Wolves,release," + cells + "\n" + OTHER);
    Path toml = dir.resolve("m.toml");
    Files.writeString(toml, "sheet = \"play\"\n" + map);
    return SeasonReader.read(
        List.of(sheet), Optional.of(SheetMap.read(toml, SheetForms.ALL)), false, n -> {});
  }

  private List<OnIce> skaters(String cells, String map) throws Exception {
    SheetsRead season = read(cells, map);
    assertEquals(List.of(), season.setAside());
    return season.games().get(0).rows().get(0).skaters();
  }

  private String problem(String cells) throws Exception {
    SheetsRead season = read(cells, "");
    assertEquals(1, season.setAside().size());
    return season.setAside().get(0).problems().get(0).message();
  }

  @Test
  void placesAndSpeedsAreRead() throws Exception {
    assertEquals(
        List.of(
            new OnIce(true, new Place(-5, 6.1), true, 5, 0),
            new OnIce(false, new Place(3.2, -5.1), false, 0, 0),
            new OnIce(false, new Place(8, 2), true, 4, -0.5)),
        skaters("-5,6,-5 6.1 5 0,3.2 -5.1;  8.0 2 4 -0.5", ""));
  }

  /** 10 ft right of center in a view fixed to the rink is 10 ft behind it for the away team. */
  @Test
  void placesAndSpeedsTurnWithTheView() throws Exception {
    OnIce s =
        skaters(
                "110,42,,110 52.5 10 -10",
                "[place]\nunit = \"ft\"\nview = \"home_team\"\ncenter_x = 100\ncenter_y = 42.5\n"
                    + "y_left = \"down\"\n")
            .get(0);
    assertEquals(-3.048, s.place().x(), 1e-9);
    assertEquals(3.048, s.place().y(), 1e-9);
    assertEquals(-3.048, s.vx(), 1e-9);
    assertEquals(-3.048, s.vy(), 1e-9);
  }

  @Test
  void aDecimalCommaIsReadWhereTheMapSaysSo() throws Exception {
    OnIce s = skaters("-5,6,\"-5,5 6,1\",", "[file]\ndecimal = \",\"\n").get(0);
    assertEquals(new Place(-5.5, 6.1), s.place());
  }

  @Test
  void whatCannotBeIsLocated() throws Exception {
    String where = "s.csv, line 2, column \"opponent_skaters\"";
    for (String cell :
        List.of(
            "3.2",
            "1 2 3",
            "a b",
            "1 2;",
            "1 2; x 3",
            "99999 0",
            "1,5 2",
            "NaN 1",
            "1 2 3 4 5 6")) {
      String message = problem("-5,6,,\"" + cell + "\"");
      assertTrue(message.contains(where) && message.contains("8.0 2.2 4.1 -0.5"), message);
    }
    String outside = problem("-5,6,,0 0; 34 0");
    assertTrue(outside.contains(where) && outside.contains("inside the boards"), outside);
    String fast = problem("-5,6,,0 0 20 0");
    assertTrue(fast.contains(where) && fast.contains("one at 20.0 m/s"), fast);
    String crowd = problem("-5,6,,0 0; 1 0; 2 0; 3 0; 4 0; 5 0; 6 0; 7 0");
    assertTrue(crowd.contains("at most 7 skaters of a team, not 8"), crowd);
    assertTrue(problem("-5,6,0 17,").contains("column \"own_skaters\""));
  }
}
