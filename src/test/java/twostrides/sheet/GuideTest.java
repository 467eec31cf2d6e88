package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The worked example of docs/maps/README.md does what the page says. */
class GuideTest {
  private static final Path GUIDE = Path.of("docs/maps/README.md");

  @TempDir Path dir;

  private static List<String> example(String name) throws IOException {
    List<String> lines = Files.readAllLines(GUIDE);
    int start = lines.indexOf("<!-- example: " + name + " -->") + 1;
    boolean fenced = lines.get(start).startsWith("```");
    List<String> block = new ArrayList<>();
    for (String line : lines.subList(fenced ? start + 1 : start, lines.size())) {
      if (fenced ? line.equals("```") : line.isBlank()) {
        return block;
      }
      block.add(line);
    }
    throw new IllegalStateException("the example has no end: " + name);
  }

  @Test
  void theExampleWorks() throws Exception {
    Path toml = dir.resolve("larkfield.toml");
    Path file = dir.resolve("2031-10-04 GLA-TAR.csv");
    Files.write(toml, example("map"));
    Files.write(file, example("sheet"));
    SheetMap map = SheetMap.read(toml, Schemas.ALL);
    Sheet sheet = SheetReader.read(file, map);

    List<String> expected = example("result");
    List<String> columns = columns(expected.get(0));
    List<String> actual = new ArrayList<>(expected.subList(0, 2));
    for (SheetRow row : sheet.rows()) {
      List<String> cells =
          columns.stream()
              .map(
                  c ->
                      c.equals("line")
                          ? Long.toString(row.line())
                          : row.cell(c).map(Cell::text).orElse(""))
              .toList();
      actual.add("| " + String.join(" | ", cells).replace("|  |", "| |") + " |");
    }
    assertEquals(String.join("\n", expected), String.join("\n", actual));

    assertEquals(1, sheet.setAside().size());
    assertEquals(6, sheet.setAside().get(0).row().line());
    assertEquals(
        "a change of players, no touch", sheet.setAside().get(0).row().skipReason().orElseThrow());
    assertEquals(List.of("Rating"), map.notUsed(sheet.headers()));
    assertEquals(-62.5, sheet.rows().get(1).cell("x_m").orElseThrow().number(-100, 100));
    assertEquals("2031-10-04 GLA-TAR", sheet.rows().get(0).cell("game").orElseThrow().text());
  }

  private static List<String> columns(String header) {
    return Stream.of(header.split("\\|", -1)).map(String::strip).filter(c -> !c.isEmpty()).toList();
  }

  @Test
  void theTablesNameEverySettingThatAMapMayGive() throws IOException {
    String page = Files.readString(GUIDE);
    List<String> missing =
        Schemas.PLAY.settings().stream()
            .filter(s -> !s.table().equals("test"))
            .filter(s -> !page.contains("`" + s.key()) || !page.contains("[" + s.table() + "]"))
            .map(SettingSpec::fullName)
            .toList();
    assertEquals(List.of(), missing);
  }
}
