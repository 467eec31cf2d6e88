package twostrides.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a run leaves of the folders that it finds or makes. What may stand at the place of a book,
 * and what becomes of it, is the list of OutScenariosTest.
 */
class OutputFolderTest {

  @TempDir Path dir;

  private Path oldBook() throws Exception {
    Book.write(dir.resolve("out"), "a");
    return dir.resolve("out");
  }

  /** A run that gives up leaves no folder that was not there before. */
  @Test
  void foldersMadeForNothingGo() throws Exception {
    OutputFolder.at(dir.resolve("a/b/out"), List.of()).close();
    assertEquals(new TreeMap<>(), Book.tree(dir));
    Files.createDirectory(dir.resolve("a"));
    OutputFolder.at(dir.resolve("a/b/out"), List.of()).close();
    OutputFolder.at(dir.resolve("a"), List.of()).close();
    assertEquals(new TreeMap<>(Map.of("a", "folder")), Book.tree(dir));
  }

  @ParameterizedTest
  @CsvSource({
    "data/exits.csv, true",
    "data/../data/exits.csv, true",
    "data/mine.csv, false",
    "game.csv, false"
  })
  void anInputIsReadAndNeverReplaced(String input, boolean ours) throws Exception {
    Path out = oldBook();
    Path sheet = out.resolve(input);
    if (!ours) {
      Book.put(sheet, "mine");
    }
    SortedMap<String, String> before = Book.tree(dir);
    if (ours) {
      OutputException e =
          assertThrows(OutputException.class, () -> Book.write(out, "b", List.of(sheet), s -> {}));
      assertTrue(e.getMessage().contains(sheet + " is a file of the last book"), e.getMessage());
      assertEquals(before, Book.tree(dir));
    } else {
      Book.write(out, "b", List.of(sheet), s -> {});
      assertEquals("mine", Files.readString(sheet));
    }
  }

  private static Set<PosixFilePermission> mode(Path folder) throws IOException {
    return Files.getPosixFilePermissions(folder);
  }

  /** Whoever closed a folder of the book to others finds it closed after the next run, too. */
  @Test
  void foldersKeepTheirModes() throws Exception {
    Path out = oldBook();
    Set<PosixFilePermission> mine = PosixFilePermissions.fromString("rwx------");
    for (Path folder : List.of(out, out.resolve("data"), out.resolve("players"))) {
      Files.setPosixFilePermissions(folder, mine);
    }
    Book.write(out, "a");
    assertEquals(mine, mode(out));
    assertEquals(mine, mode(out.resolve("data")));
    assertEquals(mine, mode(out.resolve("players")));
  }

  /** A run that fails half way puts the files back into the folders as they were. */
  @Test
  void foldersKeepTheirModesWhenAMoveFails() throws Exception {
    Path out = oldBook();
    Set<PosixFilePermission> mine = PosixFilePermissions.fromString("rwx------");
    Files.setPosixFilePermissions(out.resolve("data"), mine);
    assertThrows(
        OutputException.class,
        () ->
            Book.write(
                out,
                "a",
                List.of(),
                what -> {
                  if (what.equals("placed run.json")) {
                    throw new IOException("the disk is full");
                  }
                }));
    assertEquals(mine, mode(out.resolve("data")));
  }

  /** A book once closed against writing is replaced all the same, and is closed again then. */
  @Test
  void aReadOnlyFolderInTheOldBookStopsNoRun() throws Exception {
    Path out = oldBook();
    Path data = out.resolve("data");
    Set<PosixFilePermission> closed = PosixFilePermissions.fromString("r-xr-x---");
    Files.setPosixFilePermissions(data, closed);
    if (Files.isWritable(data)) {
      System.err.println(
          "SKIPPED: this user may write everywhere, also where only reading is allowed");
      Assumptions.abort();
    }
    Book.write(out, "b");
    assertEquals("book b", Files.readString(data.resolve("exits.csv")));
    assertEquals(closed, mode(data));
    Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwxr-x---"));
  }
}
