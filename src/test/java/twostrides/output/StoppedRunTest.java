package twostrides.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that stops or fails after any step: the last book and foreign files are all there. */
class StoppedRunTest {

  @TempDir Path dir;

  private int laidOut;

  /** An old book with files of the user's beside it, in it and among its files. */
  private Path oldBook() throws Exception {
    Path here = Files.createDirectory(dir.resolve("case-" + ++laidOut));
    Book.write(here.resolve("out"), "a");
    for (String f : List.of("out/notes.txt", "out/clips/game-1.mp4", "out/mine/g.csv", "out.old")) {
      Book.put(here.resolve(f), "mine");
    }
    return here.resolve("out");
  }

  private Path copy(Path from) throws IOException {
    Path to = dir.resolve("case-" + ++laidOut);
    try (Stream<Path> all = Files.walk(from)) {
      for (Path p : all.toList()) {
        Files.copy(p, to.resolve(from.relativize(p)));
      }
    }
    return to;
  }

  private static void assertForeignFilesStand(Path out, String when) throws IOException {
    for (String f : List.of("notes.txt", "clips/game-1.mp4", "mine/g.csv", "../out.old")) {
      assertEquals("mine", Files.readString(out.resolve(f)), when);
    }
  }

  /** A run that begins and gives up, as one with nothing to show: it only puts things right. */
  private static void beginAndGiveUp(Path out) throws Exception {
    OutputFolder.at(out, List.of()).close();
  }

  private SortedMap<String, String> whole(String letter) throws Exception {
    Path out = oldBook();
    if (!letter.equals("a")) {
      Book.write(out, letter);
    }
    return Book.tree(out.getParent());
  }

  @Test
  void aKillAfterAnyStepLosesNothing() throws Exception {
    SortedMap<String, String> before = whole("a");
    SortedMap<String, String> after = whole("b");
    int step = 0;
    int kept = 0;
    int code;
    do {
      Path out = oldBook();
      code = Halting.run(out, "b", ++step);
      String when = "stopped after step " + step;
      assertForeignFilesStand(out, when);
      beginAndGiveUp(out);
      SortedMap<String, String> found = Book.tree(out.getParent());
      assertTrue(found.equals(before) || found.equals(after), () -> when + ": " + found);
      kept += found.equals(before) ? 1 : 0;
      assertEquals(kept == step, found.equals(before), "the new book, once there, stays: " + when);
      Book.write(out, "b");
      assertEquals(after, Book.tree(out.getParent()), when);
    } while (code == Halting.STOPPED);
    assertEquals(0, code);
    // Lock, work folder, plan twice, 6 old files, folders, 6 new files; then plan and work folder.
    assertEquals(17, kept, "steps after which the old book counts");
    assertEquals(20, step, "two more, and the run that nothing stops");
  }

  @Test
  void aKillWhileThingsArePutBackLosesNothing() throws Exception {
    SortedMap<String, String> before = whole("a");
    Path stopped = oldBook();
    assertEquals(Halting.STOPPED, Halting.run(stopped, "b", 17));
    // Lock, 6 new files out, 6 old ones back, plan, work folder.
    for (int step = 1; step <= 15; step++) {
      Path out = copy(stopped.getParent()).resolve("out");
      assertEquals(Halting.STOPPED, Halting.run(out, "c", step));
      String when = "stopped again after step " + step;
      assertForeignFilesStand(out, when);
      beginAndGiveUp(out);
      assertEquals(before, Book.tree(out.getParent()), when);
    }
  }

  /** The first book of a folder: stopped, it leaves nothing that the next run trips over. */
  @Test
  void aFirstRunThatIsKilledIsForgotten() throws Exception {
    for (int step : new int[] {1, 2, 4, 7}) {
      Path out = dir.resolve("first-" + step);
      assertEquals(Halting.STOPPED, Halting.run(out, "b", step));
      Book.write(out, "c");
      List<String> expected = new ArrayList<>(Book.files("c"));
      expected.add(FileList.NAME);
      assertEquals(new FileList(expected), FileList.below(out));
    }
  }

  @Test
  void aMoveThatFailsPutsTheOldBookBack() throws Exception {
    SortedMap<String, String> before = whole("a");
    List<String> failed = new ArrayList<>();
    for (int step = 3; step <= 17; step++) {
      Path out = oldBook();
      int last = step;
      List<String> done = new ArrayList<>();
      OutputException e =
          assertThrows(
              OutputException.class,
              () ->
                  Book.write(
                      out,
                      "b",
                      List.of(),
                      what -> {
                        done.add(what);
                        if (done.size() == last) {
                          failed.add(what);
                          throw new IOException("the disk is full");
                        }
                      }));
      assertTrue(e.getMessage().contains("the disk is full"), e.getMessage());
      assertTrue(e.getMessage().contains("as it was before"), e.getMessage());
      assertEquals(before, Book.tree(out.getParent()), failed.get(failed.size() - 1));
    }
    assertTrue(failed.contains("kept index.html") && failed.contains("placed index.html"));
  }

  /** Somebody saves a file in the moment in which its place is free: it is never written over. */
  @Test
  void aFileThatAppearsMeanwhileIsKept() throws Exception {
    Path out = oldBook();
    Swap.Step saves =
        what -> {
          if (what.equals("kept run.json")) {
            Files.writeString(out.resolve("index.html"), "mine");
          }
        };
    OutputException e =
        assertThrows(OutputException.class, () -> Book.write(out, "b", List.of(), saves));
    assertTrue(
        e.getMessage().contains("since something else stands there: index.html"), e::getMessage);
    assertEquals("mine", Files.readString(out.resolve("index.html")));
    assertEquals("book a", Files.readString(out.resolve("data/exits.csv")));
    assertThrows(OutputException.class, () -> beginAndGiveUp(out));
    Files.move(out.resolve("index.html"), dir.resolve("mine.html"));
    beginAndGiveUp(out);
    assertEquals(whole("a"), Book.tree(out.getParent()));
  }
}
