package twostrides.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every code cell of every notebook runs, and prints what is stored in the notebook, to the letter.
 * To store what they print: {@code mvn test -Dtest=NotebooksTest -Dtwostrides.writeNotebooks=true}.
 */
class NotebooksTest {

  private static final Path FOLDER = Path.of("notebooks");

  /** Cells a reader still takes in at one sitting. */
  private static final int MOST_CELLS = 14;

  /** What an analyst needs; pages, charts and commands are not for notebooks. */
  private static final Set<String> PACKAGES =
      Set.of(
          "sheet",
          "rink",
          "game",
          "exits",
          "race",
          "season",
          "findings",
          "stats",
          "rulebook",
          "demo");

  private static List<Path> notebooks() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".ipynb")).sorted().toList();
    }
  }

  @TestFactory
  Stream<DynamicTest> everyCellPrintsWhatIsStored() throws IOException {
    return notebooks().stream()
        .map(file -> DynamicTest.dynamicTest(String.valueOf(file.getFileName()), () -> run(file)));
  }

  private static void run(Path file) throws IOException {
    boolean write = Boolean.getBoolean("twostrides.writeNotebooks");
    Notebook notebook = Notebook.read(file);
    int number = 0;
    try (Shell shell = new Shell()) {
      for (Notebook.Cell cell : notebook.code()) {
        number++;
        String printed = shell.run(cell.source());
        if (write) {
          cell.store(number, printed);
        } else {
          assertEquals(cell.printed(), printed, file + ", cell " + cell.id());
          assertEquals(number, cell.json().get("execution_count"), file + ", cell " + cell.id());
        }
      }
    }
    if (write) {
      Files.writeString(file, notebook.text());
    }
  }

  @TestFactory
  Stream<DynamicTest> everyNotebookIsWellFormed() throws IOException {
    return notebooks().stream()
        .map(file -> DynamicTest.dynamicTest(String.valueOf(file.getFileName()), () -> form(file)));
  }

  private static void form(Path file) throws IOException {
    Notebook notebook = Notebook.read(file);
    assertEquals(notebook.text(), Files.readString(file), "form of the JSON");
    assertEquals(4, notebook.top("nbformat"));
    assertEquals(5, notebook.top("nbformat_minor"));
    Map<?, ?> metadata = (Map<?, ?>) notebook.top("metadata");
    assertEquals("java", ((Map<?, ?>) metadata.get("language_info")).get("name"));
    assertEquals("java", ((Map<?, ?>) metadata.get("kernelspec")).get("language"));
    List<Notebook.Cell> cells = notebook.cells();
    assertTrue(cells.size() <= MOST_CELLS, cells.size() + " cells");
    assertEquals(
        cells.size(), cells.stream().map(Notebook.Cell::id).collect(Collectors.toSet()).size());
    assertEquals("markdown", cells.get(0).kind());
    for (Notebook.Cell cell : notebook.code()) {
      // Java's own shell takes a line that can end as ended: a call that goes on ends in its dot.
      assertTrue(cell.source().lines().noneMatch(l -> l.strip().startsWith(".")), cell.source());
    }
  }

  @Test
  void theyUseWhatAnAnalystNeeds() throws IOException {
    Pattern ours = Pattern.compile("twostrides\\.([a-z]+)\\.");
    for (Path file : notebooks()) {
      for (Notebook.Cell cell : Notebook.read(file).code()) {
        Matcher m = ours.matcher(cell.source());
        while (m.find()) {
          assertTrue(PACKAGES.contains(m.group(1)), file + ": twostrides." + m.group(1));
        }
      }
    }
  }

  @Test
  void theReadmeNamesEveryNotebook() throws IOException {
    String readme = Files.readString(FOLDER.resolve("README.md"));
    List<Path> all = notebooks();
    assertEquals(4, all.size());
    for (Path file : all) {
      assertTrue(readme.contains("](" + file.getFileName() + ")"), file.toString());
    }
  }

  @Test
  void whatDoesNotRunIsNotPassed() {
    try (Shell shell = new Shell()) {
      assertEquals("3\n", shell.run("int a = 1;\nSystem.out.println(a + 2);"));
      assertThrows(AssertionError.class, () -> shell.run("int b = c;"), "does not compile");
      assertThrows(
          AssertionError.class, () -> shell.run("int f() { return g(); }"), "g is missing");
      assertThrows(AssertionError.class, () -> shell.run("a / 0;"), "throws");
      assertThrows(AssertionError.class, () -> shell.run("a + 1"), "a value nobody prints");
      assertThrows(
          AssertionError.class,
          () -> shell.run("twostrides.notebook.Notebook n = null;"),
          "tests and what is package-private are out of reach");
    }
  }
}
