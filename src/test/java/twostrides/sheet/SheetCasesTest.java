package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The cases under {@code src/test/resources/twostrides/sheet}; its README says how to add one. */
class SheetCasesTest {
  private static final Path RESOURCES = Path.of("src/test/resources/twostrides/sheet");

  @TempDir Path temp;

  @TestFactory
  List<DynamicTest> sheetsReadAsExpected() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path folder : sorted(RESOURCES.resolve("cases"))) {
      for (LineEnd end : LineEnd.values()) {
        String name = folder.getFileName() + " with " + end;
        tests.add(DynamicTest.dynamicTest(name, () -> check(folder, end)));
      }
    }
    assertFalse(tests.isEmpty());
    return tests;
  }

  private void check(Path folder, LineEnd end) throws IOException, SheetException {
    Path dir = Files.createDirectories(temp.resolve(folder.getFileName() + "-" + end));
    Path sheet = dir.resolve("sheet.csv");
    Files.writeString(sheet, Files.readString(folder.resolve("sheet.csv")).replace("\n", end.text));
    Path toml = folder.resolve("map.toml");
    SheetMap map =
        Files.exists(toml) ? SheetMap.read(toml, Schemas.ALL) : SheetMap.plain(Schemas.PLAY);
    String actual = String.join("\n", outcome(sheet, map)).replace(dir + "/", "");
    assertEquals(Files.readString(folder.resolve("expected.txt")).strip(), actual);
  }

  private static List<String> outcome(Path file, SheetMap map) {
    Sheet sheet;
    try {
      sheet = SheetReader.read(file, map);
    } catch (SheetException e) {
      return List.of("error: " + e.getMessage());
    }
    record At(long line, String text) {}
    List<At> lines = new ArrayList<>();
    sheet.rows().forEach(r -> lines.add(new At(r.line(), "row " + r.line() + ":" + cells(r, map))));
    for (DoubtfulRow doubtful : sheet.setAside()) {
      for (Problem problem : doubtful.problems()) {
        long line = doubtful.row().line();
        assertEquals(line, problem.line());
        lines.add(new At(line, "aside " + line + ": " + problem.message()));
      }
    }
    lines.sort(Comparator.comparingLong(At::line));
    List<String> text = new ArrayList<>(lines.stream().map(At::text).toList());
    List<String> notUsed = map.notUsed(sheet.headers());
    if (!notUsed.isEmpty()) {
      text.add("not used: " + Wording.list(notUsed));
    }
    return text;
  }

  private static String cells(SheetRow row, SheetMap map) {
    StringBuilder text = new StringBuilder();
    for (String column : map.schema().columnNames()) {
      row.cell(column)
          .ifPresent(
              c -> text.append(" " + column + "=[" + c.text().replaceAll("\r\n|\r|\n", "↵") + "]"));
    }
    return text.toString();
  }

  @TestFactory
  List<DynamicTest> mistakesInMapsAreNamed() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path toml : sorted(RESOURCES.resolve("maps"))) {
      if (toml.toString().endsWith(".toml")) {
        tests.add(DynamicTest.dynamicTest(toml.getFileName().toString(), () -> checkMistake(toml)));
      }
    }
    assertFalse(tests.isEmpty());
    return tests;
  }

  private static void checkMistake(Path toml) throws IOException {
    String first = Files.readString(toml).lines().findFirst().orElseThrow();
    String message;
    try {
      SheetMap map = SheetMap.read(toml, Schemas.ALL);
      SheetReader.read(toml.resolveSibling("sheet.csv"), map);
      message = "no mistake found";
    } catch (SheetException e) {
      message = e.getMessage();
    }
    assertEquals(first, "# expect: " + message.replace(toml.getParent() + "/", ""));
  }

  private static List<Path> sorted(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private enum LineEnd {
    LF("\n"),
    CRLF("\r\n"),
    CR("\r");

    private final String text;

    LineEnd(String text) {
      this.text = text;
    }
  }
}
