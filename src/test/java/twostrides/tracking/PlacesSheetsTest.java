package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.OnIce;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/**
 * Places sheets: which release each row belongs to, where the skaters are, and what is set aside.
 */
class PlacesSheetsTest {

  private static final String PLAY =
      "game,home,away,period,clock,team,player,action,outcome,x_m,y_m\n";

  /** Line 3 lets go at (-4, 5); lines 5 and 6 let go within one second, by either team. */
  private static final String GAME =
      PLAY
          + "G1,Herons,Wolves,2,12:03,Wolves,4 Berg,recovery,,-9,5\n"
          + "G1,Herons,Wolves,2,12:00,Wolves,4 Berg,release,lost,-4,5\n"
          + "G1,Herons,Wolves,2,11:40,Herons,9 Vik,recovery,,-12,2\n"
          + "G1,Herons,Wolves,2,11:39,Herons,9 Vik,release,lost,-10,2\n"
          + "G1,Herons,Wolves,2,11:39,Wolves,7 Moe,shot,missed,-3,0\n";

  private static final String HEAD = "game,period,clock,team,carrier,x_m,y_m,later_x_m,later_y_m\n";
  private static final String CARRIER = "G1,2,12:00,own,yes,-5,5.5,-2,5\n";

  @TempDir Path dir;

  private Path write(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  private PlacesSheets read(String places, String... map) throws IOException, SheetException {
    return readBeside(GAME, places, map);
  }

  private PlacesSheets readBeside(String game, String places, String... map)
      throws IOException, SheetException {
    SheetsRead season =
        SeasonReader.read(List.of(write("g.csv", game)), Optional.empty(), false, n -> {});
    assertEquals(List.of(), season.setAside());
    Optional<SheetMap> toml =
        map.length == 0
            ? Optional.empty()
            : Optional.of(
                SheetMap.read(
                    write("places.toml", "sheet = \"places\"\n" + String.join("\n", map)),
                    List.of(TrackForm.PLACES)));
    PlacesSheets read =
        PlacesSheets.read(List.of(write("places.csv", places)), toml, Outlines.of(season));
    long rows = places.lines().filter(l -> !l.isBlank()).count() - 1;
    assertEquals(rows, read.rowsRead(), "rows read");
    assertEquals(
        read.setAside().size(),
        read.setAside().stream().map(d -> d.row().line()).distinct().count(),
        "each row is set aside once");
    return read;
  }

  private static PlacesSheets.Clicked clicked(PlacesSheets places) {
    assertEquals(List.of(), messages(places));
    return places.at("G1", "g.csv", 3).orElseThrow();
  }

  private static List<String> messages(PlacesSheets places) {
    return places.setAside().stream()
        .map(DoubtfulRow::problems)
        .flatMap(List::stream)
        .map(p -> p.line() + " " + p.column() + ": " + p.expected())
        .toList();
  }

  /** Nothing is known of any release, and the only messages are these. */
  private static void assertAside(PlacesSheets places, String... messages) {
    assertEquals(0, places.releases());
    assertEquals(List.of(messages), messages(places));
  }

  @Test
  void everybodyIsMovedAlongSoThatTheCarrierStandsAtThePuck() throws Exception {
    PlacesSheets.Clicked c =
        clicked(
            read(
                HEAD
                    + CARRIER
                    + "G1,2,12:00,opponent,no,-11,1,-8,2\n"
                    + "G1,2,12:00,own,,6,-7,,\n"));
    // The carrier was clicked 1 m behind and 0.5 m left of where the play sheet has the puck.
    assertSkater(c.carrier(), true, -4, 5, 6, -1);
    assertSkater(c.others().get(0), false, -10, 0.5, 6, 2);
    OnIce still = c.others().get(1).skater();
    assertFalse(still.speedKnown());
    assertEquals(7, still.place().x(), 1e-9);
  }

  private static void assertSkater(
      PlacesSheets.Placed clicked, boolean own, double x, double y, double vx, double vy) {
    OnIce s = clicked.skater();
    assertEquals(own, s.own());
    assertEquals(x, s.place().x(), 1e-9);
    assertEquals(y, s.place().y(), 1e-9);
    assertTrue(s.speedKnown());
    assertEquals(vx, s.vx(), 1e-9);
    assertEquals(vy, s.vy(), 1e-9);
  }

  @Test
  void aRowMaySayHowFarOffItsPlacesAre() throws Exception {
    String head = "period,clock,team,carrier,x_m,y_m,error_m\n";
    PlacesSheets.Clicked c =
        clicked(read(head + "2,720,own,yes,-4,5,0.35\n2,720,opponent,no,3,1,\n"));
    assertEquals(Optional.of(0.35), c.carrier().error());
    assertEquals(Optional.empty(), c.others().get(0).error());
    PlacesSheets.Clicked feet =
        clicked(
            read(
                head + "2,720,own,yes,-13,16,10\n",
                "[place]",
                "unit = \"ft\"",
                "[rink]",
                "name = \"nhl\""));
    assertEquals(3.048, feet.carrier().error().orElseThrow(), 1e-9);
    for (String wrong : List.of("0", "-1", "5.1", "1000")) {
      assertAside(
          read(head + "2,720,own,yes,-4,5," + wrong + "\n"),
          "2 error_m: metres above 0 and up to 5, each way");
    }
  }

  @Test
  void aSpeedCountsBeforeALaterPlaceAndTeamsHaveNames() throws Exception {
    String head = "period,clock,team,carrier,x_m,y_m,vx_m_s,vy_m_s,later_x_m,later_y_m\n";
    PlacesSheets.Clicked c =
        clicked(
            read(head + "2,720,Wolves,yes,-4,5,6.5,-0.5,-4,5\n" + "2,720,Herons,no,3,1,-2,0,,\n"));
    assertSkater(c.carrier(), true, -4, 5, 6.5, -0.5);
    assertSkater(c.others().get(0), false, 3, 1, -2, 0);
  }

  @Test
  void aMapGivesUnitAndViewAndWords() throws Exception {
    // The away team lets go: seen by the home team everything is turned; feet from a corner.
    PlacesSheets.Clicked c =
        clicked(
            read(
                "Q,T,Side,Puck,X,Y,DX,DY\n"
                    + "2,12:00,dark,1,113.1234,26.0958,-10,0\n"
                    + "2,12:00,light,0,90,42.5,10,-10\n",
                "[columns]",
                "period = \"Q\"",
                "clock = \"T\"",
                "team = \"Side\"",
                "carrier = \"Puck\"",
                "x_m = \"X\"",
                "y_m = \"Y\"",
                "vx_m_s = \"DX\"",
                "vy_m_s = \"DY\"",
                "[values.team]",
                "dark = \"Wolves\"",
                "light = \"Herons\"",
                "[values.carrier]",
                "1 = \"yes\"",
                "0 = \"no\"",
                "[place]",
                "unit = \"ft\"",
                "view = \"home_team\"",
                "center_x = 100",
                "center_y = 42.5"));
    OnIce carrier = c.carrier().skater();
    assertEquals(-4, carrier.place().x(), 1e-3);
    assertEquals(5, carrier.place().y(), 1e-3);
    assertEquals(3.048, carrier.vx(), 1e-9);
    OnIce opponent = c.others().get(0).skater();
    assertEquals(3.048, opponent.place().x(), 1e-3);
    assertEquals(-3.048, opponent.vx(), 1e-9);
    assertEquals(3.048, opponent.vy(), 1e-9);
  }

  @Test
  void ofTwoReleasesWithinASecondLineOrPlayerSaysWhich() throws Exception {
    String head = "period,clock,let_go_by,line,team,carrier,x_m,y_m\n";
    assertAside(
        read(head + "2,11:39,,,own,yes,-3,0\n"), "2 clock: one release, not those in lines 5, 6");
    PlacesSheets both =
        read(
            head
                + "2,11:39,7,,own,yes,-3,0\n"
                + "2,11:39,,5,own,yes,-10,2\n"
                + "2,11:39,7 Moe,,opponent,,0,0\n");
    assertEquals(List.of(), messages(both));
    assertEquals(1, both.at("G1", "g.csv", 6).orElseThrow().others().size());
    assertEquals(0, both.at("G1", "g.csv", 5).orElseThrow().others().size());
    assertAside(
        read(head + "2,12:00,9 Vik,,own,yes,-4,5\n"),
        "2 clock: the clock of a puck sent before the red line in the game's sheet, with its line and"
            + " who lets it go");
  }

  @Test
  void aRowThatFitsNoReleaseSaysWhy() throws Exception {
    assertAside(
        read(
            HEAD
                + "G2,2,12:00,own,yes,-4,5,,\n"
                + "G1,2,12:03,own,yes,-9,5,,\n"
                + "G1,1,12:00,own,yes,-4,5,,\n"
                + "G1,2,,own,yes,-4,5,,\n"),
        "2 game: the id of a game whose sheet is read, such as G1",
        "3 clock: the clock of a puck sent before the red line in the game's sheet",
        "4 clock: the clock of a puck sent before the red line in the game's sheet",
        "5 clock: a clock such as 13:07, or seconds");
  }

  @Test
  void theRowsOfAReleaseCountTogether() throws Exception {
    String together = ": rows of one release that can all be used; line 3 cannot";
    assertAside(
        read(HEAD + CARRIER + "G1,2,12:00,them,no,-11,1,,\n" + "G1,2,12:00,opponent,no,3,0,,\n"),
        "3 team: one of: \"own\", \"Herons\", \"Wolves\", \"opponent\"",
        "2 " + together,
        "4 " + together);
  }

  @Test
  void aReleaseNeedsOneCarrierNearThePuck() throws Exception {
    String one =
        " : one row of the release with carrier yes, of the team that lets the puck go, not ";
    assertAside(read(HEAD + "G1,2,12:00,own,no,-4,5,,\n"), "2" + one + "0 of them");
    assertAside(read(HEAD + CARRIER + CARRIER), "2" + one + "2 of them", "3" + one + "2 of them");
    assertAside(read(HEAD + "G1,2,12:00,opponent,yes,-4,5,,\n"), "2" + one + "of the other");
    assertAside(
        read(HEAD + "G1,2,12:00,own,yes,4,-5,,\n"),
        "2 : a carrier within 5 m of where the sheet lets the puck go, line 3, not 12.8 m off:"
            + " another release, or places seen by another team");
    assertAside(
        read(HEAD + CARRIER + "G1,2,12:00,opponent,no,3,0,,\n".repeat(7)),
        java.util.stream.IntStream.rangeClosed(2, 9)
            .mapToObj(i -> i + " : at most 6 skaters of a team at a release, not 7")
            .toArray(String[]::new));
  }

  @Test
  void aSkaterNobodyCanBeIsSetAside() throws Exception {
    assertAside(
        read(HEAD + "G1,2,12:00,own,yes,-4,5,4,5\n"),
        "2 later_x_m: a skater no faster than 12 m/s, not 16.0 m/s");
    assertAside(
        read(HEAD + "G1,2,12:00,own,yes,-4,15,,\n"),
        "2 y_m: a place across the rink inside the boards, at most 13.0 m (43 ft) from center");
    assertAside(read(HEAD + "G1,2,12:00,own,yes,-4,,,\n"), "2 y_m: a place needs both its numbers");
    assertAside(
        read(HEAD + "G1,2,12:00,own,perhaps,-4,5,,\n"), "2 carrier: one of: \"yes\", \"no\"");
  }

  @Test
  void releasesOfATagSheetAreFoundToo() throws Exception {
    String tags =
        "game,home,away,period,clock,team,player,way_out,at_center,x_m,y_m,ended\n"
            + "G1,Herons,Wolves,2,12:00,Wolves,4 Berg,carry,gained,-4,5,own\n"
            + "G1,Herons,Wolves,2,11:00,Wolves,4 Berg,carry,released short,-4,5,icing\n";
    PlacesSheets places = readBeside(tags, HEAD + CARRIER.replace("12:00", "11:00") + CARRIER);
    assertEquals(1, places.at("G1", "g.csv", 3).stream().count());
    assertEquals(
        List.of("3 clock: the clock of a puck sent before the red line in the game's sheet"),
        messages(places));
  }

  @Test
  void aSheetThatCannotBeReadStopsAndNamesThePlace() {
    SheetException noPlace =
        assertThrows(SheetException.class, () -> read("period,clock,team,x_m,y_m\n2,1,own,0,0\n"));
    assertTrue(noPlace.getMessage().contains("no column \"carrier\""), noPlace.getMessage());
    SheetException wrongMap =
        assertThrows(SheetException.class, () -> read(HEAD, "[place]", "view = \"camera\""));
    assertTrue(wrongMap.getMessage().contains("places.toml"), wrongMap.getMessage());
  }
}
