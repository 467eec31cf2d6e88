package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code review --tables-only}: the book's tables, byte for byte, and no pages. */
class TablesOnlyTest {

  @TempDir static Path dir;

  private static Path sheet;

  @BeforeAll
  static void season() throws IOException {
    sheet = Files.copy(SampleBook.games().get(0), dir.resolve("game.csv"));
  }

  private static Run review(Path out, Object... options) {
    return Run.of(
        Stream.concat(
                Stream.of("review", sheet, "--simulations", 100, "--out", out), Stream.of(options))
            .toArray());
  }

  private static Map<String, String> files(Path book) throws IOException {
    try (Stream<Path> all = Files.walk(book)) {
      return all.filter(Files::isRegularFile)
          .collect(
              Collectors.toMap(
                  f -> book.relativize(f).toString().replace('\\', '/'),
                  TablesOnlyTest::text,
                  (a, b) -> a,
                  TreeMap::new));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void tablesAreThoseOfTheBookAndNoPageIsWritten() throws IOException {
    Path book = dir.resolve("book");
    assertEquals(0, review(book).code());
    Map<String, String> whole = files(book);
    Run run = review(book, "--tables-only");
    assertEquals(0, run.code(), run.err());
    Map<String, String> tables = files(book);
    whole.keySet().removeIf(f -> !f.startsWith("data/") && !f.equals("run.json"));
    assertTrue(whole.size() > 8, whole.keySet().toString());
    tables.remove("book-files.txt");
    assertEquals(whole, tables, "pages of the older book are gone, tables are the same");
    String last = run.out().lines().reduce((a, b) -> b).orElseThrow();
    assertEquals("The tables are in this folder: " + book.resolve("data"), last);
    assertFalse(run.out().contains(".html"), run.out());
  }

  @Test
  void picturesAreRefused() {
    Run run = review(dir.resolve("none"), "--tables-only", "--png");
    assertEquals(2, run.code());
    assertTrue(run.err().contains("--png: --tables-only draws nothing"), run.err());
  }
}
