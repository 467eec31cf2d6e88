package twostrides.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clicks go into a places sheet and out again, whatever stood there. */
class PlacesFileTest {

  private static final String HEAD =
      "game,period,clock,team,carrier,x_m,y_m,later_x_m,later_y_m,note";

  @TempDir Path dir;

  private static Map<String, String> row(String... more) {
    Map<String, String> row = new LinkedHashMap<>(Map.of("game", "G1", "x_m", "1.0", "y_m", "2.0"));
    for (int i = 0; i < more.length; i += 2) {
      row.put(more[i], more[i + 1]);
    }
    return row;
  }

  @Test
  void aNewSheetHasTheColumnOfErrors() throws Exception {
    Path file = dir.resolve("new.csv");
    PlacesFile places = PlacesFile.open(file);
    places.add(List.of(row("error_m", "0.41"), row()));
    List<String> lines = Files.readAllLines(file);
    assertTrue(lines.get(0).endsWith(",later_y_m,error_m"), lines.get(0));
    assertTrue(lines.get(1).endsWith(",0.41"), lines.get(1));
    assertTrue(lines.get(2).endsWith(","), lines.get(2));
  }

  @Test
  void aSheetWithoutItGetsItWhenARowNeedsIt() throws Exception {
    String old =
        HEAD
            + "\r\nG1,2,12:00,own,yes,-4,5,,,\"two\nlines, \"\"quoted\"\"\"\r\n\r\n"
            + "G1,2,12:00,opponent,no,1,1,,,";
    Path file = Files.writeString(dir.resolve("old.csv"), old);
    PlacesFile places = PlacesFile.open(file);
    places.add(List.of(row()));
    String plain = Files.readString(file);
    assertTrue(plain.startsWith(old), plain);
    places.add(List.of(row("error_m", "0.41")));
    assertEquals(
        HEAD
            + ",error_m\r\nG1,2,12:00,own,yes,-4,5,,,\"two\nlines, \"\"quoted\"\"\",\r\n\r\n"
            + "G1,2,12:00,opponent,no,1,1,,,,\nG1,,,,,1.0,2.0,,,,\nG1,,,,,1.0,2.0,,,,0.41\n",
        Files.readString(file));
    assertTrue(places.undo());
    assertEquals(plain, Files.readString(file));
    places.add(List.of(row("error_m", "0.5")));
    assertTrue(Files.readString(file).endsWith(",0.5\n"), "a second time after undo");
    assertTrue(places.undo());
    assertTrue(places.undo());
    assertEquals(old, Files.readString(file));
    assertFalse(places.undo());
  }
}
