package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that somebody saves or deletes while the program reads them. */
class ChangingSheetTest {

  private static final String HEADER =
      "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against\n";
  private static final String ROW =
      "1,19:00,Herons,4 Berg,recovery,,-25,5,5,5\n1,19:00,Wolves,9 Vik,recovery,,-25,5,5,5\n";
  private static final Pattern ROWS =
      Pattern.compile("(?s)\"sha256\" : \"([0-9a-f]{64})\".*\"rows\" : \\{\\s*\"read\" : (\\d+)");

  private static final int ROWS_BEFORE = 200;

  private static final int RUNS = 6;

  @TempDir Path dir;

  /** Changes the sheet again and again until the program has ended. */
  private interface Change {
    void once(Path sheet) throws IOException, InterruptedException;
  }

  private Run during(Path sheet, Path book, Change change) throws Exception {
    AtomicBoolean ended = new AtomicBoolean();
    Thread other =
        new Thread(
            () -> {
              try {
                while (!ended.get()) {
                  change.once(sheet);
                }
              } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
              }
            });
    other.start();
    try {
      return Run.of("review", sheet, "--out", book);
    } finally {
      ended.set(true);
      other.join();
    }
  }

  /** The book counts exactly the rows of the bytes whose hash it gives, or there is no book. */
  private void assertTrueToItsHash(Run run, Path book) throws Exception {
    if (run.code() == Main.DONE) {
      Matcher m = ROWS.matcher(Files.readString(book.resolve("run.json")));
      assertTrue(m.find());
      String counted = HEADER + ROW.repeat(Integer.parseInt(m.group(2)) / 2);
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(counted.getBytes(StandardCharsets.UTF_8));
      assertEquals(HexFormat.of().formatHex(sum), m.group(1));
    } else {
      assertEquals(Main.UNREADABLE, run.code(), run.err());
      assertTrue(run.err().contains("Nothing was written."), run.err());
      assertTrue(Files.notExists(book));
    }
    assertTrue(
        List.of(Main.DONE, Main.UNREADABLE).contains(run.code()) && !run.err().contains("\tat "));
  }

  @Test
  void aSheetThatGrowsIsCountedAsItWasReadOrRefused() throws Exception {
    Path sheet = Files.writeString(dir.resolve("g.csv"), HEADER + ROW.repeat(ROWS_BEFORE));
    for (int i = 0; i < RUNS; i++) {
      Path book = dir.resolve("book-" + i);
      long wait = 60L * i;
      Run run =
          during(
              sheet,
              book,
              s -> {
                Files.writeString(s, ROW, StandardOpenOption.APPEND);
                Thread.sleep(wait);
              });
      assertTrueToItsHash(run, book);
      Files.writeString(sheet, HEADER + ROW.repeat(ROWS_BEFORE));
    }
  }

  @Test
  void aSheetThatComesAndGoesIsCountedWholeOrRefused() throws Exception {
    Path sheet = dir.resolve("g.csv");
    Path aside = Files.writeString(dir.resolve("aside"), HEADER + ROW.repeat(ROWS_BEFORE));
    for (int i = 0; i < RUNS; i++) {
      Path book = dir.resolve("book-" + i);
      Run run =
          during(
              sheet,
              book,
              s -> {
                Files.copy(aside, s);
                Thread.sleep(2);
                Files.delete(s);
              });
      assertTrueToItsHash(run, book);
    }
  }
}
