package twostrides.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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

  @Test
  void everyKindOfCellHasOneForm() throws IOException {
    Table t =
        Table.create(
            "t",
            StringColumn.create("player", "8 \"Sole\" Brandt", "Falk, Ida", "x;=1+1"),
            IntColumn.create("line", new Integer[] {3, null, 0}),
            DoubleColumn.create("release_x_m", new Double[] {-3.2, -0.001, null}),
            DoubleColumn.create("elapsed_s", new Double[] {1200.0, 0.5, 12.345}),
            BooleanColumn.create("own_zone_restart", new Boolean[] {true, false, null}));
    assertEquals(
        """
        player,line,release_x_m,elapsed_s,own_zone_restart
        "8 ""Sole"" Brandt",3,-3.20,1200,true
        "Falk, Ida",,0.00,0.5,false
        x;'=1+1,0,,12.34,
        """,
        written(t));
  }
}
