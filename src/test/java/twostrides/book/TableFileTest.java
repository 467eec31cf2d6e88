package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** The written form of each kind of cell. */
class TableFileTest {

  @TempDir Path dir;

  private String written(Table t) throws IOException {
    Path file = dir.resolve("t.csv");
    TableFile.write(t, file);
    return Files.readString(file);
  }

  /** An empty first cell is quoted, so that no reader takes the line for an empty one. */
  @Test
  void everyKindOfCellHasOneForm() throws IOException {
    Table t =
        Table.create(
            "t",
            StringColumn.create("player", "8 \"Sole\" Brandt", "Falk, Ida", ""),
            IntColumn.create("line", new Integer[] {3, null, 0}),
            DoubleColumn.create("release_x_m", new Double[] {-3.2, -0.001, null}),
            DoubleColumn.create("elapsed_s", new Double[] {1200.0, 0.5, 12.345}),
            BooleanColumn.create("own_zone_restart", new Boolean[] {true, false, null}));
    assertEquals(
        """
        player,line,release_x_m,elapsed_s,own_zone_restart
        "8 ""Sole"" Brandt",3,-3.20,1200,true
        "Falk, Ida",,0.00,0.5,false
        "",0,,12.34,
        """,
        written(t));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "\t=1", "\r=1"})
  void textThatASpreadsheetWouldRunIsEscaped(String text) {
    assertEquals("'" + text, TableFile.guarded(text));
  }

  @Test
  void otherTextStaysAsItIs() {
    assertEquals("8 Sole Brandt", TableFile.guarded("8 Sole Brandt"));
    assertEquals("", TableFile.guarded(""));
  }
}
