package twostrides.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.SheetsRead;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.sheet.ShippedMaps;

/** A map to start from: what it guesses, what it asks, and that its answers are enough. */
class StarterMapTest {

  private static final Path OPEN =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  @TempDir Path dir;

  private Path file(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  private SheetMap finished(StarterMap starter) throws IOException, SheetException {
    return SheetMap.read(file("starter.toml", starter.text()), SheetForms.ALL);
  }

  /** The games row by row, without the ids that a map gives them. */
  private static List<String> rows(Path sheet, SheetMap map) throws SheetException {
    SheetsRead season = SeasonReader.read(List.of(sheet), Optional.of(map), false, n -> {});
    List<String> rows = new ArrayList<>();
    for (Game g : season.games()) {
      rows.add(
          String.join(
              " ",
              g.date().toString(),
              g.home(),
              g.away(),
              g.rink().name(),
              String.valueOf(g.clockStep()),
              String.valueOf(g.placeStep()),
              String.valueOf(g.periodLength())));
      g.rows().forEach(r -> rows.add(r.toString()));
    }
    season.setAside().forEach(d -> rows.add("aside " + d.row().line()));
    return rows;
  }

  /**
   * The questions that remain are answered as the shipped maps answer them: y grows to the left,
   * and in one set success says how the puck was carried in.
   */
  @ParameterizedTest
  @CsvSource({
    "womens-2022-open-data, *.events.csv, 1, 5298",
    "women-2018-19, women-2018-19/sheets, 1, 7116",
    "women-2023, women-2023/sheets, 1, 3712",
    "men-2024, men-2024/sheets, 1, 3758",
    "women-league-2021, women-league-2021/sheets, 2, 8764",
    "tracked-2023, tracked-2023/native, 1, 5257"
  })
  void aFinishedStarterGivesTheRowsOfTheShippedMap(
      String name, String sheets, int questions, int rows) throws Exception {
    assumeTrue(Files.isDirectory(OPEN), "no open games at " + OPEN);
    SheetMap shipped = ShippedMaps.find(name, SheetForms.ALL);
    int read = 0;
    List<String> differ = new ArrayList<>();
    for (Path sheet : SheetFiles.find(List.of(OPEN + "/" + sheets))) {
      StarterMap starter = StarterMap.of(sheet);
      assertEquals(questions, starter.questions(), starter.text());
      List<String> expected = rows(sheet, shipped);
      List<String> actual = rows(sheet, finished(starter));
      assertEquals(expected.size(), actual.size());
      read += expected.size();
      for (int i = 0; i < expected.size(); i++) {
        if (!expected.get(i).equals(actual.get(i))) {
          differ.add(actual.get(i));
        }
      }
    }
    assertEquals(rows, read);
    assertEquals(List.of(), differ);
  }

  @Test
  void whatNobodyCanTellIsAsked() throws Exception {
    Path sheet =
        file(
            "g.csv",
            "Half;Uhr;Seite;Code;X;Y\n1;10:00;Home;PAS;1,5;2\n1;9:00;Away;ZZZ;-3;1\n"
                + "1;8:00;Home;FO;0;0\n");
    StarterMap starter = StarterMap.of(sheet);
    List<String> questions =
        starter
            .text()
            .lines()
            .filter(l -> l.startsWith("# ?"))
            .map(l -> l.split("[?(]", -1)[1].strip())
            .toList();
    assertEquals(
        List.of(
            "No column looks like period, which is needed. Name it:",
            "No column looks like clock, which is needed. Name it:",
            "No column looks like team, which is needed. Name it:",
            "What is \"ZZZ\"",
            "Who attacks toward larger x: acting_team, home_team, or rink_fixed",
            "Does y grow to the left of the attack",
            "Which rink: nhl"),
        questions,
        starter.text());
    assertEquals(questions.size(), starter.questions());
    assertTrue(starter.text().contains("decimal = \",\""), starter.text());
    SheetMap map = finished(starter);
    assertEquals("starter.toml", map.name());
  }

  @Test
  void sidesClockManpowerAndDirectionAreFound() throws Exception {
    StringBuilder text = new StringBuilder("Period,GameTime,Team,Event,PosX,PosY,Str,Date\n");
    for (int i = 0; i < 12; i++) {
      String[] row = {
        "1",
        i / 6 + ":" + 10 * (i % 6) / 10 + "0",
        i % 2 == 0 ? "Home" : "Away",
        "Shot",
        i % 2 == 0 ? "20.5" : "-20",
        "-14",
        "5v4",
        "31.12.2031"
      };
      text.append(String.join(",", row)).append('\n');
    }
    text.append("1,2:30,Away,Faceoff,0,0,5v5,31.12.2031\n");
    StarterMap starter = StarterMap.of(file("g.csv", text.toString()));
    for (String line :
        List.of(
            "clock = \"GameTime\"",
            "direction = \"up\"",
            "view = \"home_team\"",
            "skaters_home = { column = \"Str\", take = '^(\\d)\\D+\\d$' }",
            "form = \"dd.MM.yyyy\"",
            "home = \"Home\"",
            "name = \"iihf\"",
            "step = 0.5")) {
      assertTrue(starter.text().lines().anyMatch(line::equals), line + "\n" + starter.text());
    }
  }

  @Test
  void zonesStandInForPlaces() throws Exception {
    StringBuilder text =
        new StringBuilder("Period,Clock,Team,Event,Zone,End Zone\n1,20:00,A,Pass,DZ,NZ\n");
    for (int i = 0; i < 9; i++) {
      text.append("1,1").append(9 - i).append(":00,A,Pass,DZ,NZ\n");
      text.append("1,1").append(9 - i).append(":00,B,Shot,OZ,\n");
    }
    Path sheet = file("g.csv", text.toString());
    StarterMap starter = StarterMap.of(sheet);
    assertEquals(0, starter.questions(), starter.text());
    SheetsRead season =
        SeasonReader.read(List.of(sheet), Optional.of(finished(starter)), false, n -> {});
    assertEquals(19, season.rowsUsed());
    List<PlayRow> rows = season.games().get(0).rows();
    assertEquals(
        List.of("Optional[OWN] Optional[NEUTRAL]", "Optional[ATTACKING] Optional.empty"),
        rows.stream().map(r -> r.zone() + " " + r.toZone()).distinct().toList());
    String few = text.substring(0, text.indexOf("1,17"));
    assertTrue(StarterMap.of(file("f.csv", few)).text().contains("# ? Whose zones are they"));
  }

  /** A sheet of exits gets a map for a tag sheet; its zones stand in for places as in others. */
  @Test
  void aSheetOfExitsIsATagSheet() throws Exception {
    StringBuilder text =
        new StringBuilder("Period,Clock,Team,Exit,Zone,Result,Situation,Empty Net\n");
    for (int i = 0; i < 8; i++) {
      String clock = (20 - i) + ":00";
      text.append("1,").append(clock).append(",A,").append(i % 2 == 0 ? "Clear" : "Chipped out");
      text.append(",DZ,Iced,5v5,\n");
    }
    text.append("1,10:00,B,Carry,NZ,ZZZ,PK,\n1,9:00,B,,,Icing,EV,\n");
    Path sheet = file("g.csv", text.toString());
    StarterMap starter = StarterMap.of(sheet);
    assertEquals(1, starter.questions(), starter.text());
    assertTrue(starter.text().contains("# ? What is \"ZZZ\" (1 row)?"), starter.text());
    assertTrue(starter.text().contains("8 of 9 exits in the own one."), starter.text());
    SheetsRead season =
        SeasonReader.read(List.of(sheet), Optional.of(finished(starter)), true, n -> {});
    assertEquals(1, season.setAside().size());
    assertEquals(
        List.of(
            "long clearance Optional[OWN] ICING EVEN",
            "chip Optional[OWN] ICING EVEN",
            "none Optional.empty ICING EVEN"),
        season.tagged().get(0).exits().stream()
            .map(
                e ->
                    e.wayOut().orElse("none")
                        + " "
                        + e.zone()
                        + " "
                        + e.ended().orElseThrow()
                        + " "
                        + e.strength())
            .distinct()
            .toList());
    String few = text.substring(0, text.indexOf("1,15"));
    assertTrue(StarterMap.of(file("f.csv", few)).text().contains("# ? Whose zones are they"));
  }

  /** Our own tag sheet needs no line but what it is. */
  @Test
  void ourOwnTagSheetAsksNothing() throws Exception {
    Path sheet =
        file(
            "g.csv",
            "period,clock,team,way_out,at_center,x_m,y_m,ended,end_x_m,end_y_m\n"
                + "1,19:00,A,\"moved, means unknown\",,-9,3,own-zone restart,,\n"
                + "1,18:00,B,carry,released short,-3,3,opponent,9,1\n");
    StarterMap starter = StarterMap.of(sheet);
    assertFalse(starter.text().contains("[values"), starter.text());
    SheetsRead season =
        SeasonReader.read(List.of(sheet), Optional.of(finished(starter)), false, n -> {});
    assertEquals(2, season.tagged().get(0).exits().size());
  }

  @Test
  void hostileHeadersAndWordsStayInTheirPlaces() throws Exception {
    Path sheet =
        file(
            "g.csv",
            "period,clock,team,\"Event\nsheet = \"\"x\"\"\",\"a \"\"\\d\"\" #\"\n"
                + "1,10:00,A,Pass,t\n1,9:00,B,\"q\nskip = \"\"1\"\"\",t\n1,8:00,B,Shot,f\n");
    SheetMap map = finished(StarterMap.of(sheet));
    SheetsRead season = SeasonReader.read(List.of(sheet), Optional.of(map), true, n -> {});
    assertEquals(2, season.rowsUsed());
    assertEquals(1, season.setAside().size());
  }
}
