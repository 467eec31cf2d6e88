package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a cell accepts, and how it says that it does not. */
class CellTest {
  private static final double ANY = Double.POSITIVE_INFINITY;

  @TempDir Path dir;

  private Cell cell(String column, String content) throws IOException, SheetException {
    return cell(column, content, "");
  }

  private Cell cell(String column, String content, String mapTail)
      throws IOException, SheetException {
    Path toml = dir.resolve("map.toml");
    Files.writeString(toml, "sheet = \"play\"\n[columns]\n\"action\" = \"a\"\n" + mapTail);
    Path sheet = dir.resolve("g1.csv");
    String quoted = "\"" + content.replace("\"", "\"\"") + "\"";
    boolean own = column.equals("period");
    Files.writeString(
        sheet,
        "clock;a;period" + (own ? "" : ";" + column) + "\n1;touch;" + (own ? "" : "1;") + quoted);
    SheetMap map = SheetMap.read(toml, Schemas.ALL);
    return SheetReader.read(sheet, map).rows().get(0).cell(column).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"12, 12", "-3.5, -3.5", "+3, 3", "007, 7", "0.10, 0.1", "' 4 ', 4"})
  void plainNumbersAreNumbers(String text, double number) throws Exception {
    assertEquals(number, cell("video_s", text).number(-ANY, ANY));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NaN",
        "Infinity",
        "-Infinity",
        "0x10",
        "1e3",
        "1E3",
        "3d",
        "3f",
        "1,000.5",
        "1 000",
        "1.",
        ".5",
        "--1",
        "+-1",
        "1-",
        "1.2.3",
        "-",
        "+",
        ".",
        "٣",
        "−3",
        "1_000",
        "12 s",
        "½"
      })
  void everythingElseIsDoubtful(String text) throws Exception {
    Cell cell = cell("video_s", text);
    assertThrows(DoubtfulCellException.class, () -> cell.number(-ANY, ANY));
    assertThrows(DoubtfulCellException.class, () -> cell.wholeNumber(-9, 9));
  }

  @Test
  void wholeNumbersAreWhole() throws Exception {
    assertEquals(3, cell("video_s", "+3").wholeNumber(3, 6));
    assertEquals(-7, cell("video_s", "-007").wholeNumber(-7, 6));
    for (String text :
        new String[] {"3.0", "2", "7", "99999999999", "99999999999999999999", "3,0"}) {
      Cell cell = cell("video_s", text);
      DoubtfulCellException doubt =
          assertThrows(DoubtfulCellException.class, () -> cell.wholeNumber(3, 6), text);
      assertEquals("a whole number from 3 to 6", doubt.problem().expected());
    }
  }

  @Test
  void limitsBelongToTheRange() throws Exception {
    assertEquals(31, cell("x_m", "31").number(-31, 31));
    assertEquals(-31, cell("x_m", "-31.0").number(-31, 31));
    Cell outside = cell("x_m", "31.01");
    DoubtfulCellException doubt =
        assertThrows(DoubtfulCellException.class, () -> outside.number(-31, 31));
    assertEquals(
        dir
            + "/g1.csv, line 2, column \"x_m\": found \"31.01\", expected a number from -31 to 31."
            + " What to do: Correct the cell, or leave it empty when you do not know.",
        doubt.getMessage());
    assertEquals(doubt.getMessage(), doubt.problem().message());
    assertTrue(expectedOf(outside, 40, ANY).endsWith("a number, 40 or more"));
    assertTrue(expectedOf(outside, -ANY, 1.5).endsWith("a number, 1.5 or less"));
  }

  private static String expectedOf(Cell cell, double min, double max) {
    return assertThrows(DoubtfulCellException.class, () -> cell.number(min, max))
        .problem()
        .expected();
  }

  @Test
  void theDeclaredPhraseIsUsed() throws Exception {
    Cell cell = cell("period", "0");
    DoubtfulCellException doubt =
        assertThrows(DoubtfulCellException.class, () -> cell.wholeNumber(1, 20));
    assertEquals("a whole number from 1 to 20", doubt.problem().expected());
    assertEquals("Correct the cell.", doubt.problem().toDo());
  }

  @Test
  void decimalCommaIsDeclared() throws Exception {
    String comma = "[file]\ndecimal = \",\"\n";
    assertEquals(-12.5, cell("x_m", "-12,5", comma).number(-31, 31));
    assertEquals(12, cell("x_m", "12", comma).number(-31, 31));
    Cell point = cell("x_m", "12.5", comma);
    assertTrue(
        assertThrows(DoubtfulCellException.class, () -> point.number(-31, 31))
            .problem()
            .toDo()
            .contains("decimal = \".\""));
    Cell plain = cell("x_m", "12,5");
    assertTrue(
        assertThrows(DoubtfulCellException.class, () -> plain.number(-31, 31))
            .problem()
            .toDo()
            .contains("decimal = \",\""));
  }

  @Test
  void wordsAreFoundInCapitalsAndListedNearestFirst() throws Exception {
    Map<String, Integer> words = Map.of("complete", 1, "missed", 2);
    assertEquals(1, cell("outcome", " Complete ").oneOf(words));
    Cell cell = cell("outcome", "mised");
    DoubtfulCellException doubt =
        assertThrows(DoubtfulCellException.class, () -> cell.oneOf(words));
    assertEquals("one of: \"missed\", \"complete\"", doubt.problem().expected());
    assertEquals(
        "Correct the word, or translate it in a sheet map, under [values.outcome].",
        doubt.problem().toDo());
  }

  @Test
  void aTranslatedWordIsReportedInTheSheetsOwnWords() throws Exception {
    Cell cell = cell("outcome", "t", "[values.outcome]\nt = \"complet\"\n");
    assertEquals("complet", cell.text());
    assertEquals("t", cell.problem("x", "y").value());
  }

  @Test
  void aCellThatTheMapFillsBlamesTheMap() throws Exception {
    Cell cell = cell("note", "theirs", "outcome = { constant = \"=x\" }\nx_m = \"note\"\n");
    assertEquals("note", cell.problem("x", "y").column());
    Path sheet = dir.resolve("g1.csv");
    SheetMap map = SheetMap.read(dir.resolve("map.toml"), Schemas.ALL);
    Cell constant = SheetReader.read(sheet, map).rows().get(0).cell("outcome").orElseThrow();
    DoubtfulCellException doubt =
        assertThrows(DoubtfulCellException.class, () -> constant.oneOf(Map.of("complete", 1)));
    assertEquals("outcome", doubt.problem().column());
    assertEquals("Correct the sheet map, which fills this cell.", doubt.problem().toDo());
  }

  @Test
  void longAndBrokenValuesAreShownShort() throws Exception {
    String message = cell("note", "a\nb\tc" + "x".repeat(200)).problem("x", "y").message();
    assertTrue(message.contains("found \"a↵b⇥cxxx"), message);
    assertTrue(message.contains("x…\", expected"), message);
    assertTrue(message.length() < 250 + dir.toString().length(), message);
  }

  @Test
  void aColumnThatNobodyDeclaredIsAProgrammersMistake() throws Exception {
    cell("note", "x");
    SheetMap map = SheetMap.read(dir.resolve("map.toml"), Schemas.ALL);
    SheetRow row = SheetReader.read(dir.resolve("g1.csv"), map).rows().get(0);
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> row.cell("outcom"));
    assertTrue(e.getMessage().contains("only \"outcome\""), e.getMessage());
  }
}
