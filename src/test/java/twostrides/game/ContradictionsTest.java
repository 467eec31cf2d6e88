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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.sheet.SheetException;

/**
 * Rows of a play sheet that contradict each other about their game are never put together in
 * silence.
 */
class ContradictionsTest {

  private static final String HEADER = "game,date,home,away,period,clock,team,action,x_m,y_m\n";
  private static final String ROWS =
      "G1,2031-10-04,Herons,Wolves,1,19:00,Herons,recovery,-25,5\n"
          + "G1,2031-10-04,Herons,Wolves,1,18:50,Wolves,recovery,-25,5\n";

  @TempDir Path dir;

  private Path sheet(String name, String rows) throws IOException {
    return Files.writeString(dir.resolve(name), HEADER + rows);
  }

  private static SheetsRead read(boolean keepGoing, Path... sheets) throws SheetException {
    return SeasonReader.read(List.of(sheets), Optional.empty(), keepGoing, n -> {});
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G1,2031-10-05,Herons,Wolves|date|2031-10-05|the day of game G1, 2031-10-04 as in line 2",
        "G1,2031-10-04,Kites,Wolves|home|Kites|the home team of game G1, Herons as in line 2",
        "G1,2031-10-04,Herons,Kites|away|Kites|the away team of game G1, Wolves as in line 2",
        "G1,2031-10-04,Wolves,Herons|home|Wolves|the home team of game G1, Herons as in line 2",
        "G1,2031-10-04,Herons,Herons|away|Herons|another team than Herons"
      })
  void aRowThatSaysAnotherGameIsSetAside(String of, String column, String value, String expected)
      throws Exception {
    SheetsRead season =
        read(
            false,
            sheet(
                "g.csv",
                ROWS
                    + of
                    + ",1,18:40,Herons,recovery,-25,5\n"
                    + ROWS.lines().findFirst().orElseThrow().replace("19:00", "18:30")));
    assertEquals(3, season.rowsUsed());
    assertEquals(1, season.setAside().size());
    var problem = season.setAside().get(0).problems().get(0);
    assertEquals(4, problem.line());
    assertEquals(column, problem.column());
    assertEquals(value, problem.value());
    assertEquals(expected, problem.expected());
  }

  @Test
  void rowsThatSayNothingOfTheirGameStay() throws Exception {
    SheetsRead season = read(false, sheet("g.csv", ROWS + "G1,,,,1,18:40,Herons,recovery,-25,5\n"));
    assertEquals(3, season.rowsUsed());
  }

  @Test
  void oneGameInTwoSheetsStopsOrIsSetAsideWhole() throws Exception {
    Path a = sheet("a.csv", ROWS);
    Path b = sheet("b.csv", ROWS + "G2,2031-10-05,Herons,Wolves,1,18:50,Wolves,recovery,-25,5\n");
    SheetException e = assertThrows(SheetException.class, () -> read(false, a, b));
    assertEquals(
        b
            + ", line 2: found rows of game G1, period 1, which stands in "
            + a
            + " too, expected each period of a game in one sheet. What to do: Where both"
            + " sheets are one game, leave one of them out. Where they are two games: Give each game an"
            + " id: add a column game to the sheet, or save the three lines sheet = \"play\", [columns]"
            + " and game = { file_name = true } as games.toml and add --map games.toml.",
        e.getMessage());
    SheetsRead season = read(true, a, b);
    assertEquals(List.of("G1"), season.games().stream().map(Game::id).toList());
    assertEquals(2, season.rowsRead());
    assertEquals(2, season.rowsUsed());
    assertEquals(List.of(e.getMessage()), messages(season));
  }

  private static List<String> messages(SheetsRead season) {
    return season.unreadable().stream().map(Throwable::getMessage).toList();
  }

  /** A copy of a sheet, the game named by the file: it would count twice. */
  @Test
  void oneGameUnderTwoIdsIsFound() throws Exception {
    String sorted = sixtyRows();
    Path a = sheet("a.csv", sorted.replace("G1", ""));
    Path b = sheet("a copy.csv", sorted.replace("G1", ""));
    SheetException e = assertThrows(SheetException.class, () -> read(false, a, b));
    assertTrue(
        e.getMessage().contains("found game a copy of a copy.csv with the rows of game a of a.csv"),
        e.getMessage());
    SheetsRead season = read(true, a, b);
    assertEquals(60, season.rowsUsed());
    assertEquals(List.of(e.getMessage()), messages(season));
  }

  /** What a sheet has that was set aside whole no other sheet has twice. */
  @Test
  void aRefusedSheetHasHadNoGame() throws Exception {
    String good = sixtyRows();
    StringBuilder several = new StringBuilder();
    for (int i = 0; i < 20; i++) {
      several.append(
          "\nG3,2031-10-0%d,Kites,Gulls,1,%d:00,Kites,recovery,-25,5"
              .formatted(4 + i % 2, 19 - i / 2));
    }
    Path a = sheet("a.csv", good + several);
    Path b = sheet("b.csv", good.replace("G1", "G2"));
    SheetsRead season = read(true, a, b);
    assertEquals(1, season.unreadable().size(), messages(season).toString());
    assertTrue(
        messages(season).get(0).contains("2 dates in the rows of game G3"),
        messages(season).get(0));
    assertEquals(List.of("G2"), season.games().stream().map(Game::id).toList());
    assertEquals(60, season.rowsUsed());
  }

  private static String sixtyRows() {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 30; i++) {
      rows.append(ROWS.replace("19:00", "19:" + (59 - i)).replace("18:50", "18:" + (59 - i)));
    }
    return String.join(
        "\n", rows.toString().lines().sorted((x, y) -> clock(y).compareTo(clock(x))).toList());
  }

  private static String clock(String row) {
    return row.split(",", -1)[5];
  }
}
