package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random sheets, written cell by cell here and read back: every row keeps its cells, its line and
 * its own words.
 */
class RoundTripTest {
  private static final String[] PIECES = {
    "a", "7", " ", "\"", ",", ";", "\t", "\n", "\r\n", "é", "😀"
  };

  @TempDir Path dir;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void cellsLinesAndWordsSurvive(long seed) throws Exception {
    Random random = new Random(seed);
    String end = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
    String delimiter = List.of(",", ";", "\t").get(random.nextInt(3));
    StringBuilder text = new StringBuilder();
    text.append(String.join(delimiter, "period", "clock", "action", "note", "team")).append(end);
    int line = 2;
    List<List<String>> cells = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    List<String> raws = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      List<String> row = List.of("1", Integer.toString(i), "touch", words(random), words(random));
      String raw = String.join(delimiter, row.stream().map(c -> quoted(c, random)).toList());
      cells.add(row);
      lines.add(line);
      raws.add(raw);
      text.append(raw).append(end);
      line += 1 + breaks(raw);
      if (random.nextInt(5) == 0) {
        text.append(end);
        line++;
      }
    }
    Path file = dir.resolve("g.csv");
    Files.writeString(file, text);
    Sheet sheet = SheetReader.read(file, SheetMap.plain(Schemas.PLAY));
    assertEquals(200, sheet.rows().size());
    for (int i = 0; i < 200; i++) {
      SheetRow row = sheet.rows().get(i);
      assertEquals((long) lines.get(i), row.line());
      assertEquals(raws.get(i), row.raw());
      assertEquals(cells.get(i).get(1), row.cell("clock").orElseThrow().text());
      assertEquals(cells.get(i).get(3).strip(), row.cell("note").map(Cell::text).orElse(""));
      assertEquals(cells.get(i).get(4).strip(), row.cell("team").map(Cell::text).orElse(""));
    }
  }

  private static String words(Random random) {
    StringBuilder words = new StringBuilder();
    for (int i = random.nextInt(6); i > 0; i--) {
      words.append(PIECES[random.nextInt(PIECES.length)]);
    }
    return words.toString();
  }

  private static String quoted(String cell, Random random) {
    boolean must = !cell.matches("[^\",;\t\r\n]*");
    return must || random.nextBoolean() ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
  }

  private static int breaks(String raw) {
    return (int) raw.replace("\r\n", "\n").chars().filter(c -> c == '\n' || c == '\r').count();
  }
}
