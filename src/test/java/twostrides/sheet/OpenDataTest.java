package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Open event sheets read through docs/maps/womens-2022-open-data.toml, where they are present. The
 * counts are counts of lines in the sheets, made without this program.
 */
class OpenDataTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));
  private static final Path MAP = Path.of("docs/maps/womens-2022-open-data.toml");

  private static final String ABSENT =
      "Not checked: the open event sheets are not in "
          + FOLDER
          + ". Set -Dtwostrides.openData=FOLDER to check against them.";

  @BeforeAll
  static void saysThatTheFolderIsAbsent() {
    if (!Files.isDirectory(FOLDER)) {
      // The build's console counts skipped tests but does not say why.
      System.err.println(ABSENT);
    }
  }

  @BeforeEach
  void needsTheFolder() {
    Assumptions.assumeTrue(Files.isDirectory(FOLDER), ABSENT);
  }

  private static List<Path> files() throws SheetException {
    return SheetFiles.find(List.of(FOLDER + "/*.events.csv"));
  }

  @Test
  void everyRowIsRead() throws Exception {
    SheetMap map = SheetMap.read(MAP, Schemas.ALL);
    int rows = 0;
    for (Path file : files()) {
      Sheet sheet = SheetReader.read(file, map);
      assertEquals(List.of(), sheet.setAside().stream().map(r -> r.problems().get(0)).toList());
      try (var lines = Files.lines(file)) {
        assertEquals(lines.count() - 1, sheet.rowsRead(), file.toString());
      }
      rows += sheet.rows().size();
    }
    assertEquals(5295, rows);
  }

  @Test
  void rowsBecomeOurActions() throws Exception {
    Map<String, Integer> counts = new TreeMap<>();
    for (SheetRow row : rows()) {
      String outcome = row.cell("outcome").map(c -> " " + c.text()).orElse("");
      counts.merge(row.cell("action").orElseThrow().text() + outcome, 1, Integer::sum);
    }
    Map<String, Integer> expected = new TreeMap<>();
    expected.put("faceoff", 167);
    expected.put("recovery", 1582);
    expected.put("takeaway", 156);
    expected.put("pass complete", 1764);
    expected.put("pass missed", 474);
    expected.put("release lost", 369);
    expected.put("release regained", 48);
    expected.put("entry carried", 214);
    expected.put("entry dumped", 128);
    expected.put("entry played", 30);
    expected.put("shot goal", 15);
    expected.put("shot on_net", 134);
    expected.put("shot missed", 97);
    expected.put("shot blocked", 96);
    expected.put("penalty", 21);
    assertEquals(expected, counts);
  }

  @Test
  void cellsHoldWhatTheirColumnsPromise() throws Exception {
    int shorthanded = 0;
    int targets = 0;
    for (SheetRow row : rows()) {
      row.cell("period").orElseThrow().wholeNumber(1, 20);
      row.cell("clock").orElseThrow().wholeNumber(0, 1200);
      row.cell("x_m").orElseThrow().number(0, 200);
      row.cell("y_m").orElseThrow().number(0, 85);
      assertEquals(row.cell("to_x_m").isPresent(), row.cell("to_y_m").isPresent());
      targets += row.cell("to_x_m").isPresent() ? 1 : 0;
      int own = row.cell("skaters_for").orElseThrow().wholeNumber(3, 6);
      int other = row.cell("skaters_against").orElseThrow().wholeNumber(3, 6);
      shorthanded += own < 5 && own < other ? 1 : 0;
      assertTrue(row.cell("game").orElseThrow().text().matches("2022-02-\\d\\d-[A-E]-at-[A-E]"));
      assertTrue(row.cell("penalty").isEmpty());
    }
    // 276 rows say "4 on 5" and 15 "4 on 6"; the map turns 36 entries out of these and 11 into
    // them.
    assertEquals(276 + 15 - 36 + 11, shorthanded);
    assertEquals(2238, targets);
  }

  private static List<SheetRow> rows() throws IOException, SheetException {
    SheetMap map = SheetMap.read(MAP, Schemas.ALL);
    List<SheetRow> rows = new ArrayList<>();
    for (Path file : files()) {
      rows.addAll(SheetReader.read(file, map).rows());
    }
    return rows;
  }
}
