package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files, folders and patterns become one ordered list. */
class SheetFilesTest {
  @TempDir Path dir;

  @BeforeEach
  void files() throws IOException {
    for (String name :
        List.of(
            "b.csv",
            "a.TSV",
            "c.txt",
            "d.md",
            ".hidden.csv",
            "more/a.csv",
            "more/deep/e.csv",
            "odd[1].csv")) {
      Path file = dir.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, "period\n");
    }
  }

  private List<String> find(String... args) throws SheetException {
    List<String> resolved = Stream.of(args).map(a -> dir + "/" + a).toList();
    return SheetFiles.find(resolved).stream().map(f -> dir.relativize(f).toString()).toList();
  }

  @Test
  void aFolderGivesItsOwnSheets() throws Exception {
    assertEquals(List.of("a.TSV", "b.csv", "c.txt", "odd[1].csv"), find(""));
    assertEquals(List.of("more/a.csv"), find("more"));
  }

  @Test
  void patternsReachAsFarAsTheySay() throws Exception {
    assertEquals(List.of("b.csv", "odd[1].csv"), find("[a-z]*.csv"));
    assertEquals(List.of("more/a.csv"), find("*/*.csv"));
    assertEquals(List.of("more/a.csv", "more/deep/e.csv"), find("more/{*,**/*}.csv"));
    assertEquals(List.of("d.md"), find("?.md"));
  }

  @Test
  void aFileWhoseNameLooksLikeAPatternIsAFile() throws Exception {
    assertEquals(List.of("odd[1].csv"), find("odd[1].csv"));
  }

  @Test
  void eachFileComesOnceInTheOrderOfNames() throws Exception {
    List<String> expected = List.of("a.TSV", "more/a.csv", "b.csv", "c.txt", "odd[1].csv");
    assertEquals(expected, find("more/a.csv", "b.csv", "more/../b.csv", "", "*.csv"));
    assertEquals(expected, find("", "more/a.csv"));
  }

  @Test
  void namesTheArgumentThatFindsNothing() {
    for (String arg : List.of("none.csv", "*.xlsx", "no/such/*.csv", "[", "more/deep/none")) {
      SheetException e = assertThrows(SheetException.class, () -> find("b.csv", arg), arg);
      assertEquals(dir + "/" + arg, e.file());
      assertTrue(e.getMessage().contains("found no sheet by that name"), e.getMessage());
    }
  }
}
