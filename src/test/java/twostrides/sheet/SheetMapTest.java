package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Settings, columns present and columns not used. */
class SheetMapTest {
  @TempDir Path dir;

  private SheetMap map(String text) throws IOException, SheetException {
    Path toml = dir.resolve("provider.toml");
    Files.writeString(toml, text);
    return SheetMap.read(toml, Schemas.ALL);
  }

  @Test
  void givesSettings() throws Exception {
    SheetMap map =
        map(
            """
            sheet = "tag"
            [clock]
            direction = "up"
            period_length_s = 1200
            step_s = 0.1
            [place]
            home_attacks_plus_x_in = [1, 3]
            [test]
            flag = false
            """);
    assertEquals("provider.toml", map.name());
    assertEquals(Schemas.TAG, map.schema());
    assertEquals(Optional.of("up"), map.text("clock", "direction"));
    assertEquals(OptionalDouble.of(1200), map.number("clock", "period_length_s"));
    assertEquals(OptionalDouble.of(0.1), map.number("clock", "step_s"));
    assertEquals(Optional.of(List.of(1, 3)), map.wholeNumbers("place", "home_attacks_plus_x_in"));
    assertEquals(Optional.of(false), map.flag("test", "flag"));
    assertEquals(Optional.empty(), map.text("rink", "name"));
    assertEquals(OptionalDouble.empty(), map.number("place", "step"));
  }

  @Test
  void withoutAMapNothingIsSet() {
    SheetMap map = SheetMap.plain(Schemas.PLAY);
    assertEquals("(none)", map.name());
    assertEquals(Optional.empty(), map.text("clock", "direction"));
    assertEquals(Optional.empty(), map.flag("test", "flag"));
    assertEquals(Optional.empty(), map.wholeNumbers("place", "home_attacks_plus_x_in"));
  }

  @Test
  void askingForASettingThatIsNotDeclaredIsAMistake() {
    SheetMap map = SheetMap.plain(Schemas.PLAY);
    assertThrows(IllegalArgumentException.class, () -> map.text("clock", "directon"));
    assertThrows(IllegalArgumentException.class, () -> map.number("clock", "direction"));
  }

  @Test
  void columnsPresentAreThoseThatTheSheetCanFill() throws Exception {
    Path file = dir.resolve("g.csv");
    Files.writeString(file, "Clock,period,event,note,x\n1,1,Play,a,b\n");
    SheetMap map =
        map(
            """
            sheet = "play"
            [columns]
            note = { constant = "" }
            home = { constant = "A" }
            [[rules]]
            when = { event = "Play" }
            set = { action = "pass" }
            """);
    Sheet sheet = SheetReader.read(file, map);
    assertEquals(List.of("home", "period", "clock", "action"), List.copyOf(sheet.columnsPresent()));
    assertEquals(List.of("note", "x"), map.notUsed(sheet.headers()));
    assertEquals("g.csv", sheet.name());
    assertEquals("g", sheet.stem());
    assertEquals(List.of("Clock", "period", "event", "note", "x"), SheetReader.headers(file, map));
  }

  @Test
  void schemasAreChecked() {
    assertThrows(IllegalArgumentException.class, () -> new ColumnSpec("Clock", true, ""));
    ColumnSpec clock = new ColumnSpec("clock", true, "");
    assertThrows(
        IllegalArgumentException.class,
        () -> new SheetSchema("play", List.of(clock, clock), List.of()));
    SettingSpec reserved = new SettingSpec("file", "x", SettingSpec.Kind.TEXT, Set.of(), "nothing");
    assertThrows(
        IllegalArgumentException.class,
        () -> new SheetSchema("play", List.of(clock), List.of(reserved)));
  }
}
