package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing of the user's is lost by writing a book; the cases are listed in out-scenarios.csv. */
class OutFolderTest {

  private static final String SHEET =
      "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against,video_s\n"
          + "1,19:00,Herons,4 Berg,recovery,,-25,5,5,5,60\n"
          + "1,18:56,Herons,4 Berg,release,lost,-5,6,5,5,64\n"
          + "1,18:53,Wolves,9 Vik,faceoff,,21,-6.7,5,5,90\n"
          + "1,18:50,Wolves,9 Vik,recovery,,3,3,5,5,93\n";

  private static final String DOUBTFUL = "1,18:40,Herons,4 Berg,dribble,,-5,6,5,5,99\n";

  @TempDir Path dir;

  private Path sheet(String name, String text) throws IOException {
    Path file = dir.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(p).toString(), Files.readString(p, StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  /** What the book lists as its own is what it holds, and nothing of the run stays behind. */
  @Test
  void aBookListsItsFiles() throws IOException {
    Path book = dir.resolve("book");
    assertEquals(0, Run.of("review", sheet("g.csv", SHEET + DOUBTFUL), "--out", book).code());
    List<String> listed =
        Files.readAllLines(book.resolve("book-files.txt")).stream()
            .filter(l -> !l.startsWith("#"))
            .toList();
    assertEquals(List.copyOf(files(book).keySet()), listed);
    assertEquals(listed, listed.stream().filter(f -> !f.startsWith(".")).toList());
  }

  /** Two processes at once: one book or the other, never some of each; who loses is told. */
  @Test
  void twoRunsIntoOneFolderNeverMix() throws Exception {
    Path one = sheet("one/g1.csv", SHEET);
    Path two = sheet("two/g2.csv", SHEET.replace("Herons", "Terns").replace("Berg", "Falk"));
    Map<String, String> first = files(SampleBook.of(dir.resolve("first"), List.of(one)));
    Map<String, String> second = files(SampleBook.of(dir.resolve("second"), List.of(two)));
    Path book = dir.resolve("book");
    List<Process> runs = List.of(start(one, book), start(two, book));
    int made = 0;
    for (Process run : runs) {
      Child ended = Child.ended(run);
      if (ended.code() == Main.DONE) {
        made++;
      } else {
        assertEquals(Main.UNWRITABLE, ended.code(), ended.said());
        String says = "Another run is writing into the folder " + book;
        assertTrue(ended.said().contains(says), ended.said());
        says = "process " + other(runs, run).pid() + " on ";
        assertTrue(ended.said().contains(says), ended.said());
      }
    }
    assertTrue(made > 0, "one of them has to come through");
    Map<String, String> found = files(book);
    assertTrue(found.equals(first) || found.equals(second), () -> found.keySet().toString());
    assertFalse(first.equals(second));
  }

  private static Process other(List<Process> runs, Process run) {
    return runs.get(0) == run ? runs.get(1) : runs.get(0);
  }

  private static Process start(Path sheet, Path book) throws IOException {
    return new ProcessBuilder(Child.program("review", sheet, "--out", book))
        .redirectErrorStream(true)
        .start();
  }
}
