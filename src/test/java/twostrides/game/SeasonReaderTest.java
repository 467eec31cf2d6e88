package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

class SeasonReaderTest {

  private static final String HEAD =
      "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against,stoppage\n";
  private static final String OTHER =
      "1,1:10,Herons,5 Ek,recovery,,1,1,5,5,\n1,1:00,Wolves,9 Vik,recovery,,1,1,5,5,\n";

  @TempDir Path dir;

  private Path sheet(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  private SheetsRead read(String rows) throws IOException, SheetException {
    return SeasonReader.read(
        List.of(sheet("g.csv", HEAD + rows + OTHER)), Optional.empty(), false, n -> {});
  }

  private String onlyProblem(String rows) throws IOException, SheetException {
    SheetsRead s = read(rows);
    assertEquals(1, s.setAside().size(), () -> s.setAside().toString());
    assertEquals(s.rowsRead(), s.rowsUsed() + s.setAside().size());
    return s.setAside().get(0).problems().stream()
        .map(p -> p.message())
        .reduce("", (a, b) -> a + b);
  }

  @Test
  void aClockBeyondThePeriodIsSetAsideWithItsPlace() throws Exception {
    String m = onlyProblem("1,25:00,Herons,4,recovery,,-20,3,5,5,\n");
    assertTrue(m.contains("g.csv, line 2, column \"clock\""), m);
    assertTrue(m.contains("\"25:00\"") && m.contains("20:00"), m);
  }

  @Test
  void aPlaceOutsideTheBoardsIsSetAside() throws Exception {
    String m = onlyProblem("1,19:00,Herons,4,recovery,,-40,3,5,5,\n");
    assertTrue(m.contains("column \"x_m\"") && m.contains("30.5 m (100 ft)"), m);
  }

  @Test
  void halfAPlaceIsSetAside() throws Exception {
    assertTrue(onlyProblem("1,19:00,Herons,4,recovery,,-20,,5,5,\n").contains("both its numbers"));
  }

  @Test
  void anUnknownActionListsTheKnownOnes() throws Exception {
    String m = onlyProblem("1,19:00,Herons,4,dribble,,-20,3,5,5,\n");
    assertTrue(m.contains("\"dribble\"") && m.contains("recovery") && m.contains("stoppage"), m);
  }

  @Test
  void anOutcomeOfAnotherActionIsSetAside() throws Exception {
    String m = onlyProblem("1,19:00,Herons,4,recovery,goal,-20,3,5,5,\n");
    assertTrue(m.contains("has none"), m);
    String pass = onlyProblem("1,19:00,Herons,4,pass,goal,-20,3,5,5,\n");
    assertTrue(pass.contains("complete") && pass.contains("missed"), pass);
  }

  @Test
  void threeBadCellsAreThreeProblemsAndOneRow() throws Exception {
    SheetsRead s = read("x,19:00,Herons,4,recovery,,-20,3,9,5,\n");
    assertEquals(1, s.setAside().size());
    assertEquals(2, s.setAside().get(0).problems().size());
  }

  @Test
  void aClockThatRunsBackwardIsOneRowSetAside() throws Exception {
    String m =
        onlyProblem(
            "1,19:00,Herons,4,recovery,,-20,3,5,5,\n"
                + "1,19:30,Herons,4,touch,,-19,3,5,5,\n"
                + "1,18:59,Herons,4,touch,,-18,3,5,5,\n");
    assertTrue(m.contains("line 2") || m.contains("line 3"), m);
    assertTrue(m.contains("ran backward"), m);
  }

  @Test
  void aThirdTeamIsSetAside() throws Exception {
    String m =
        onlyProblem(
            "1,19:00,Herons,4,recovery,,-20,3,5,5,\n1,18:00,Herons,4,recovery,,-20,3,5,5,\n"
                + "1,17:00,Wolves,4,recovery,,-20,3,5,5,\n1,16:00,Hreons,4,recovery,,-20,3,5,5,\n");
    assertTrue(m.contains("Hreons") && m.contains("Herons, Wolves"), m);
  }

  @Test
  void onePeriodInTwoSheetsStopsTheRun() throws Exception {
    Path a = sheet("a.csv", "game," + HEAD + "G1,1,19:00,Herons,4,recovery,,-20,3,5,5,\n");
    Path b = sheet("b.csv", "game," + HEAD + "G1,1,19:00,Herons,4,recovery,,-20,3,5,5,\n");
    SheetException e =
        assertThrows(
            SheetException.class,
            () -> SeasonReader.read(List.of(a, b), Optional.empty(), false, n -> {}));
    assertTrue(
        e.getMessage().contains("b.csv, line 2") && e.getMessage().contains("a.csv"),
        e.getMessage());
  }

  @Test
  void manyGamesInAFileAndOneGameInManyFiles() throws Exception {
    Path a =
        sheet(
            "a.csv",
            "game,date,"
                + HEAD
                + "G2,2031-10-05,1,19:00,Herons,4,recovery,,-20,3,5,5,\n"
                + "G2,2031-10-05,1,18:00,Wolves,4,recovery,,-20,3,5,5,\n"
                + "G1,2031-10-04,1,19:00,Herons,4,recovery,,-20,3,5,5,\n");
    Path b = sheet("b.csv", "game," + HEAD + "G1,2,19:00,Wolves,4,recovery,,-20,3,5,5,\n");
    SheetsRead s = SeasonReader.read(List.of(a, b), Optional.empty(), false, n -> {});
    assertEquals(List.of("G1", "G2"), s.games().stream().map(Game::id).toList());
    assertEquals(4, s.rowsUsed());
  }

  @Test
  void fixedAndHomeViewsTurnPlacesIntoTheActingTeamsFrame() throws Exception {
    String fixed =
        "sheet = \"play\"\n[clock]\ndirection = \"up\"\n[place]\nunit = \"ft\"\nview = \"rink_fixed\"\n"
            + "y_left = \"down\"\nhome_attacks_plus_x_in = [1, 3]\n";
    String rows =
        "home,away,"
            + HEAD
            + "Herons,Wolves,1,0:10,Herons,4,recovery,,-10,5,5,5,\n"
            + "Herons,Wolves,1,0:20,Wolves,4,recovery,,-10,5,5,5,\n"
            + "Herons,Wolves,2,0:10,Herons,4,recovery,,-10,5,5,5,\n";
    SheetsRead s = readWith(fixed, rows);
    List<Place> places =
        s.games().get(0).rows().stream().map(r -> r.place().orElseThrow()).toList();
    double x = 10 * 0.3048;
    double y = 5 * 0.3048;
    assertEquals(List.of(new Place(-x, -y), new Place(x, y), new Place(x, y)), places);
    assertEquals(10.0, s.games().get(0).rows().get(0).elapsed());
    SheetsRead home =
        readWith(
            fixed
                .replace("rink_fixed", "home_team")
                .replace("home_attacks_plus_x_in = [1, 3]\n", ""),
            rows);
    assertEquals(new Place(x, y), home.games().get(0).rows().get(1).place().orElseThrow());
  }

  /**
   * Twelve shots a period, all but one at the far end; the home team attacks -x in periods 1, 3.
   */
  @Test
  void shotsShowWhoAttacksWhichEnd() throws Exception {
    String map =
        "sheet = \"play\"\n[columns]\nhome = { constant = \"Herons\" }\n"
            + "away = { constant = \"Wolves\" }\n[place]\nview = \"rink_fixed\"\n";
    StringBuilder rows = new StringBuilder("period,clock,team,action,x_m,y_m,own_skaters\n");
    for (int period = 1; period <= 2; period++) {
      for (int i = 0; i < 12; i++) {
        boolean herons = i % 2 == 0;
        int end = (herons == (period == 1) ? -1 : 1) * (i == 5 ? -1 : 1);
        rows.append(
            String.format(
                "%d,1%d:00,%s,shot,%d,3,%d 2 1.5 -1%n",
                period, 9 - i / 2, herons ? "Herons" : "Wolves", 20 * end, 10 * end));
      }
    }
    List<PlayRow> read = readWith(map, rows.toString()).games().get(0).rows();
    assertEquals(24, read.size());
    for (int i = 0; i < read.size(); i++) {
      assertEquals(i % 12 == 5 ? -20 : 20, read.get(i).place().orElseThrow().x(), "row " + i);
    }
    assertEquals(new Place(20, -3), read.get(0).place().orElseThrow());
    assertEquals(List.of(new OnIce(true, new Place(10, -2), true, -1.5, 1)), read.get(0).skaters());
  }

  @Test
  void tooFewShotsAskForTheEnds() throws Exception {
    SheetsRead s =
        readWith(
            "sheet = \"play\"\n[columns]\nhome = { constant = \"Herons\" }\n[place]\n"
                + "view = \"rink_fixed\"\n",
            HEAD + OTHER);
    assertEquals(List.of(), s.games());
    assertEquals(2, s.setAside().size());
    String m = s.setAside().get(0).problems().get(0).message();
    assertTrue(m.contains("home_attacks_plus_x_in") && m.contains("ten shots"), m);
  }

  @Test
  void skatersAreReadByHomeAndAway() throws Exception {
    String head = "home,away,period,clock,team,action,skaters_home,skaters_away,skaters_for\n";
    SheetsRead s =
        SeasonReader.read(
            List.of(
                sheet(
                    "h.csv",
                    head
                        + "Herons,Wolves,1,19:00,Herons,touch,5,4,\n"
                        + "Herons,Wolves,1,18:00,Wolves,touch,5,4,\n"
                        + "Herons,Wolves,1,17:00,Wolves,touch,5,4,6\n")),
            Optional.empty(),
            false,
            n -> {});
    List<Manpower> read = s.games().get(0).rows().stream().map(PlayRow::manpower).toList();
    assertEquals(5, read.get(0).own().orElseThrow());
    assertEquals(4, read.get(0).other().orElseThrow());
    assertEquals(4, read.get(1).own().orElseThrow());
    assertEquals(5, read.get(1).other().orElseThrow());
    assertEquals(6, read.get(2).own().orElseThrow());
  }

  @Test
  void skatersByHomeAndAwayNeedTheHomeTeam() throws Exception {
    SheetsRead s =
        SeasonReader.read(
            List.of(
                sheet(
                    "h.csv",
                    "period,clock,team,action,skaters_home,skaters_away\n1,19:00,Herons,touch,5,4\n")),
            Optional.empty(),
            false,
            n -> {});
    String m = s.setAside().get(0).problems().get(0).message();
    assertTrue(m.contains("column \"home\"") && m.contains("skaters are written"), m);
  }

  @Test
  void aFixedViewWithoutAHomeTeamSaysWhatIsMissing() throws Exception {
    SheetsRead s =
        readWith(
            "sheet = \"play\"\n[place]\nview = \"home_team\"\n",
            HEAD + "1,19:00,Herons,4,recovery,,-10,5,5,5,\n");
    assertTrue(s.setAside().get(0).problems().get(0).message().contains("the home team"));
  }

  private SheetsRead readWith(String map, String rows) throws IOException, SheetException {
    Path toml = sheet("map.toml", map);
    return SeasonReader.read(
        List.of(sheet("m.csv", rows)),
        Optional.of(SheetMap.read(toml, SheetForms.ALL)),
        false,
        n -> {});
  }

  @Test
  void aFolderIsReadInOneLine() throws Exception {
    sheet("g1.csv", HEAD + OTHER);
    sheet("g2.csv", HEAD + OTHER);
    SheetsRead s = SeasonReader.at(dir.toString());
    assertEquals(List.of("g1", "g2"), s.games().stream().map(Game::id).toList());
    assertEquals(1200, s.games().get(0).periodLength());
    assertEquals(Rink.NORTH_AMERICAN, s.games().get(0).rink());
    assertThrows(SheetException.class, () -> SeasonReader.at(dir.resolve("none").toString()));
  }

  @Test
  void aSeasonOfTagsHasPeriodsToo() throws Exception {
    sheet("t.csv", "game,period,clock,team,way_out\nt,1,19:00,Herons,chip\n");
    SheetsRead s = SeasonReader.at(dir.toString());
    assertEquals(1, s.tagged().size(), s.setAside().toString());
    assertEquals(1200, s.tagged().get(0).periodLength());
  }

  /** Periods of one game far apart among the sheets, with a row of the first half set aside. */
  @Test
  void aGameWhoseRowsWereForgottenIsReadAgain() throws Exception {
    String head = "game,period,clock,team,player,action,x_m,y_m\n";
    int games = 40;
    StringBuilder whole = new StringBuilder(head);
    for (int g = 10; g < 10 + games; g++) {
      for (int period = 1; period <= 2; period++) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 12; i++) {
          String team = i % 2 == 0 ? "Herons,5 Ek" : "Wolves,9 Vik";
          int y = period == 1 && i == 3 ? 90 : g % 10;
          rows.append("g%d,%d,%d:00,%s,recovery,%d,%d\n".formatted(g, period, 19 - i, team, i, y));
        }
        sheet("half-" + period + "-" + g + ".csv", head + rows);
        whole.append(rows);
      }
    }
    SheetsRead halves = SeasonReader.at(dir.toString());
    Path one = Files.createDirectory(dir.resolve("one"));
    Files.writeString(one.resolve("all.csv"), whole);
    SheetsRead all = SeasonReader.at(one.toString());
    assertEquals(games, all.games().size());
    assertEquals(played(all), played(halves));
    assertEquals(24 * games, halves.rowsRead());
    assertEquals(games, halves.setAside().size());
    assertEquals(23 * games, halves.rowsUsed());
  }

  private static List<String> played(SheetsRead season) {
    return season.games().stream()
        .flatMap(g -> g.rows().stream().map(r -> g.id() + r.period() + r.elapsed() + r.place()))
        .toList();
  }
}
