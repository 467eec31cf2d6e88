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
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing of the user's is lost by writing a book; the cases are listed in OutputFolderTest. */
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

  @Test
  void aRunJsonAloneMakesNoBook() throws IOException {
    sheet("d/run.json", "{}\n");
    sheet("d/thesis.doc", "three years");
    Map<String, String> before = files(dir.resolve("d"));
    Run r = Run.of("review", sheet("g.csv", SHEET), "--out", dir.resolve("d"));
    assertEquals(Main.UNWRITABLE, r.code(), r.err());
    assertTrue(r.err().contains("no review book: run.json, thesis.doc"), r.err());
    assertEquals(before, files(dir.resolve("d")));
  }

  @Test
  void sheetsAndVideosInTheOldBookStay() throws IOException {
    Path book = dir.resolve("book");
    assertEquals(0, Run.of("review", sheet("g.csv", SHEET), "--out", book).code());
    Path sheet = sheet("book/season/g.csv", SHEET);
    Path playlists = book.resolve("clips/players");
    String video = "g.mp4";
    try (Stream<Path> all = Files.list(playlists)) {
      Path playlist = all.filter(f -> f.toString().endsWith(".xspf")).findFirst().orElseThrow();
      assertTrue(Files.readString(playlist).contains("<location>" + video + "#"), "the default");
    }
    sheet("book/clips/players/" + video, "a video");
    assertEquals(0, Run.of("review", sheet, "--out", book).code());
    assertEquals(0, Run.of("review", sheet, "--out", book, "--no-names").code());
    assertEquals("a video", Files.readString(playlists.resolve(video)));
    assertEquals(SHEET, Files.readString(sheet));
  }

  @Test
  void aSheetThatTheRunWouldReplaceIsNotRead() throws IOException {
    Path book = dir.resolve("book");
    assertEquals(0, Run.of("review", sheet("g.csv", SHEET + DOUBTFUL), "--out", book).code());
    Path corrected = sheet("book/set-aside/g.csv", SHEET);
    Map<String, String> before = files(book);
    Run r = Run.of("review", corrected, "--out", book);
    assertEquals(Main.UNWRITABLE, r.code(), r.err());
    assertTrue(r.err().contains("set-aside/g.csv is a file of the last book"), r.err());
    assertEquals(before, files(book));
  }

  @Test
  void aFileOfTheUsersWhereTheBookHasOneIsNamed() throws IOException {
    Path book = dir.resolve("book");
    assertEquals(0, Run.of("review", sheet("g.csv", SHEET), "--out", book).code());
    sheet("book/set-aside/problems.csv", "mine");
    Map<String, String> before = files(book);
    Run r = Run.of("review", sheet("g.csv", SHEET + DOUBTFUL), "--out", book);
    assertEquals(Main.UNWRITABLE, r.code(), r.err());
    assertTrue(r.err().contains("new book has files: set-aside/problems.csv."), r.err());
    assertEquals(before, files(book));
  }

  @Test
  void foldersNamedLikeOursBesideTheBookAreTheUsers() throws IOException {
    Path book = dir.resolve("book");
    sheet("book.writing/thesis.doc", "mine");
    sheet("book.old/thesis.doc", "mine");
    Path sheet = sheet("g.csv", SHEET);
    assertEquals(0, Run.of("review", sheet, "--out", book).code());
    assertEquals(0, Run.of("review", sheet, "--out", book).code());
    assertEquals("mine", Files.readString(dir.resolve("book.writing/thesis.doc")));
    assertEquals("mine", Files.readString(dir.resolve("book.old/thesis.doc")));
  }

  @Test
  void anOutThatIsALinkStaysALink() throws IOException {
    Path link = Files.createSymbolicLink(dir.resolve("book"), dir.resolve("disk"));
    Run gone = Run.of("review", sheet("g.csv", SHEET), "--out", link);
    assertEquals(Main.UNWRITABLE, gone.code(), gone.err());
    Files.createDirectory(dir.resolve("disk"));
    for (int i = 0; i < 2; i++) {
      assertEquals(0, Run.of("review", sheet("g.csv", SHEET), "--out", link).code());
      assertTrue(Files.isSymbolicLink(link));
      assertTrue(Files.isRegularFile(dir.resolve("disk/index.html")));
    }
  }

  /**
   * A run that was killed between two moves: the next one puts the book back, whatever it finds.
   */
  @Test
  void theNextStartBringsTheOldBookBack() throws IOException {
    Path book = dir.resolve("book");
    assertEquals(0, Run.of("review", sheet("g.csv", SHEET), "--out", book).code());
    Map<String, String> before = files(book);
    sheet(
        "book/.two-strides-0123456789abcdef/plan.txt",
        "old index.html\nold run.json\nnew x.html\n");
    Path kept = Files.createDirectory(book.resolve(".two-strides-0123456789abcdef/old"));
    Files.move(book.resolve("index.html"), kept.resolve("index.html"));
    sheet("book/x.html", "the new book's");
    Run r = Run.of("review", sheet("bad.csv", "period\n1\n"), "--out", book);
    assertEquals(Main.UNREADABLE, r.code(), r.err());
    assertEquals(before, files(book));
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
      String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(run.waitFor(5, TimeUnit.MINUTES));
      if (run.exitValue() == Main.DONE) {
        made++;
      } else {
        assertEquals(Main.UNWRITABLE, run.exitValue(), said);
        assertTrue(said.contains("Another run is writing into the folder " + book), said);
        assertTrue(said.contains("process " + other(runs, run).pid() + " on "), said);
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
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            classes,
            "twostrides.cli.Main",
            "review",
            sheet.toString(),
            "--out",
            book.toString())
        .redirectErrorStream(true)
        .start();
  }
}
