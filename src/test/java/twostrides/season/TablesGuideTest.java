package twostrides.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twostrides.exits.Settings;

/**
 * docs/tables.md shows every table as its description says. {@code -Dtwostrides.writeGuides=true}
 * writes those parts of the page anew.
 */
class TablesGuideTest {

  private static final Path PAGE = Path.of("docs/tables.md");

  private static final Schemas SCHEMAS =
      new Schemas(new Columns.Windows(Settings.DEFAULT.window(), Settings.DEFAULT.longWindow()), 1);

  private static final List<TableSchema<?>> ALL = SCHEMAS.all();

  @TestFactory
  List<DynamicTest> everyTableStandsOnThePage() {
    return ALL.stream().map(t -> DynamicTest.dynamicTest(t.name(), () -> stands(t))).toList();
  }

  private static void stands(TableSchema<?> table) throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf("## " + table.name() + ".csv");
    int next = page.indexOf("\n## ", from);
    int to = next < 0 ? page.length() : next;
    if (Boolean.getBoolean("twostrides.writeGuides")) {
      Files.writeString(PAGE, page.substring(0, from) + table.guide() + page.substring(to));
      return;
    }
    assertEquals(table.guide(), page.substring(from, to), "write it anew: see this class");
  }

  /** The keys that JSON Lines have and the tables lack stand on the page, as described. */
  @Test
  void moreKeysOfLinesStandOnThePage() throws IOException {
    String page = Files.readString(PAGE);
    String lines = page.substring(page.indexOf("## exits.jsonl"));
    for (TableSchema<?> t : SCHEMAS.lines()) {
      String table = ALL.stream().filter(a -> a.name().equals(t.name())).findFirst().get().guide();
      for (String row : t.guide().split("\n", -1)) {
        assertTrue(table.contains(row) || lines.contains(row), row);
      }
    }
  }

  /** The file in the data folder has the columns of the description, in its order. */
  @Test
  void theTablesHaveTheColumnsOfTheirDescriptions() {
    Season season = Season.of(List.of(), List.of(), Settings.DEFAULT, SkatersAtRelease.NONE);
    for (int i = 0; i < ALL.size(); i++) {
      String guide = ALL.get(i).guide();
      List<String> named =
          Arrays.stream(guide.split("\n", -1))
              .filter(l -> l.startsWith("| `"))
              .map(l -> l.substring(3, l.indexOf('`', 3)))
              .toList();
      assertEquals(named, season.tables().get(i).get().columnNames(), ALL.get(i).name());
    }
  }
}
