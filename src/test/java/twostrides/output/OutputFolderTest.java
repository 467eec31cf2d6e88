package twostrides.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What may stand at the place of a book. Each case is laid out in an empty folder; the place of the
 * book in it is {@code out}. A run either writes the whole book and leaves everything else as it
 * was, or refuses and leaves everything as it was.
 */
class OutputFolderTest {

  @TempDir Path dir;

  /** Lays a case out; what it gives back is where the book shall be. */
  private interface Layout {
    Path in(Path dir) throws Exception;
  }

  private static final Layout OLD_BOOK =
      dir -> {
        Book.write(dir.resolve("out"), "a");
        return dir.resolve("out");
      };

  /** An old book and one more file, by its path in the folder of the case. */
  private static Layout beside(String file) {
    return dir -> {
      Path out = OLD_BOOK.in(dir);
      Book.put(dir.resolve(file), "mine");
      return out;
    };
  }

  /** No book, only files, by their paths in the folder of the case. */
  private static Layout only(String... files) {
    return dir -> {
      for (String f : files) {
        Book.put(dir.resolve(f), "{}");
      }
      return dir.resolve("out");
    };
  }

  private static Layout linkTo(Layout target) {
    return dir -> {
      Path there = target.in(Files.createDirectories(dir.resolve("disk")));
      return Files.createSymbolicLink(dir.resolve("out"), there);
    };
  }

  private static Named<Layout> layout(String name, Layout layout) {
    return Named.of(name, layout);
  }

  static Stream<Named<Layout>> places() {
    return Stream.of(
        layout("nothing there", only()),
        layout("an empty folder", d -> Files.createDirectory(d.resolve("out"))),
        layout("parents missing", d -> d.resolve("a/b/out")),
        layout(
            "a roundabout way", d -> Files.createDirectory(d.resolve("a")).resolve("../b/../out")),
        layout("seen from here", d -> Path.of("").toAbsolutePath().relativize(d).resolve("out")),
        layout("a link to an empty folder", linkTo(d -> Files.createDirectory(d.resolve("x")))),
        layout("a link to an old book", linkTo(OLD_BOOK)),
        layout("an old book", OLD_BOOK),
        layout("a file beside the pages", beside("out/notes.txt")),
        layout("a hidden folder", beside("out/.git/config")),
        layout("a video beside the playlists", beside("out/clips/game-1.mp4")),
        layout("sheets in the old book", beside("out/season/game-1.csv")),
        layout("a folder of other things", beside("out/mine/deep/thesis.doc")),
        layout("a corrected sheet beside those set aside", beside("out/set-aside/mine.csv")),
        layout(
            "another book inside",
            d -> {
              Path out = OLD_BOOK.in(d);
              Book.write(out.resolve("last-year"), "z");
              return out;
            }),
        layout(
            "an empty folder of the user's",
            d -> {
              Path out = OLD_BOOK.in(d);
              Files.createDirectory(out.resolve("empty"));
              return out;
            }),
        layout(
            "a page that the user deleted",
            d -> {
              Path out = OLD_BOOK.in(d);
              Files.delete(out.resolve("index.html"));
              return out;
            }),
        layout("the user's own out.writing", beside("out.writing/thesis.doc")),
        layout("the user's own out.old", beside("out.old/thesis.doc")));
  }

  @ParameterizedTest
  @MethodSource("places")
  void theBookIsWrittenAndTheRestStays(Layout layout) throws Exception {
    Path out = layout.in(dir);
    SortedMap<String, String> expected = Book.tree(dir);
    Path folder = dir.relativize(Files.exists(out) ? out.toRealPath() : dir.resolve(plain(out)));
    for (String f : all("a")) {
      expected.remove(folder.resolve(f).toString());
    }
    expected.remove(folder.resolve("players").toString());
    for (Path d = folder; d != null; d = d.getParent()) {
      expected.put(d.toString(), "folder");
    }
    for (String f : all("b")) {
      expected.put(folder.resolve(f).toString(), "book b");
      if (f.contains("/")) {
        expected.put(folder.resolve(f).getParent().toString(), "folder");
      }
    }
    Book.write(out, "b");
    SortedMap<String, String> found = new TreeMap<>(Book.tree(dir));
    found.replace(folder.resolve(FileList.NAME).toString(), "book b");
    assertEquals(expected, found);
  }

  private static Path plain(Path out) {
    return out.toAbsolutePath().normalize();
  }

  private static List<String> all(String letter) {
    List<String> all = new ArrayList<>(Book.files(letter));
    all.add(FileList.NAME);
    return all;
  }

  /**
   * A place that is refused.
   *
   * @param layout what stands there
   * @param says what the message says
   */
  private record Refused(Layout layout, String says) {}

  private static Named<Refused> refused(String name, String says, Layout layout) {
    return Named.of(name, new Refused(layout, says));
  }

  static Stream<Named<Refused>> refusals() {
    return Stream.of(
        refused("a file", "is a file", only("out")),
        refused(
            "below a file",
            "cannot be made",
            d -> Book.put(d.resolve("thesis.doc"), "mine").resolve("out")),
        refused("where nobody may write", "cannot be made", d -> Path.of("/proc/two-strides/out")),
        refused("a folder that may only be read", "cannot be made", OutputFolderTest::readOnly),
        refused(
            "a link to nothing",
            "is a link to",
            d -> Files.createSymbolicLink(d.resolve("out"), d.resolve("gone"))),
        refused("a link to a file", "is a file", linkTo(only("out"))),
        refused("other files", "no review book: thesis.doc", only("out/thesis.doc")),
        refused("only a hidden file", "no review book: .hidden", only("out/.hidden")),
        refused(
            "any run.json", "no review book: run.json, t.doc", only("out/run.json", "out/t.doc")),
        refused(
            "a book of an older version",
            "older version",
            only("out/run.json", "out/index.html", "out/thesis.doc")),
        refused(
            "a foreign file where the book has one",
            "not the book's own stand where the new book has files: players/b-berg.html.",
            beside("out/players/b-berg.html")),
        refused(
            "a foreign folder where the book has a file",
            "new book has files: players/b-berg.html.",
            beside("out/players/b-berg.html/thesis.doc")),
        refused(
            "a foreign file where the book has a folder",
            "new book has files: data.",
            d -> {
              Path out = OLD_BOOK.in(d);
              Files.delete(out.resolve("data/exits.csv"));
              Files.delete(out.resolve("data"));
              Book.put(out.resolve("data"), "mine");
              return out;
            }),
        refused(
            "a link in the place of a page",
            "new book has files: index.html.",
            d -> {
              Path out = OLD_BOOK.in(d);
              Files.move(out.resolve("index.html"), d.resolve("kept.html"));
              Files.createSymbolicLink(out.resolve("index.html"), d.resolve("kept.html"));
              return out;
            }),
        refused(
            "a link in the place of a folder of the book",
            "new book has files: data.",
            d -> {
              Path out = OLD_BOOK.in(d);
              Files.move(out.resolve("data"), d.resolve("elsewhere"));
              Files.createSymbolicLink(out.resolve("data"), d.resolve("elsewhere"));
              return out;
            }),
        refused("a list that leads out", "line 2: found \"../thesis.doc\"", lists("../thesis.doc")),
        refused("a list that leads away", "line 2: found \"/etc/hosts\"", lists("/etc/hosts")),
        refused("a list that turns", "line 2: found \"a/../../b\"", lists("a/../../b")));
  }

  private static Layout lists(String path) {
    return d -> {
      Path out = OLD_BOOK.in(d);
      Book.put(d.resolve("thesis.doc"), "mine");
      Files.writeString(out.resolve(FileList.NAME), "# list\n" + path + "\n");
      return out;
    };
  }

  /** Whoever may do everything may write there too. */
  private static Path readOnly(Path dir) throws IOException {
    Path out = Files.createDirectory(dir.resolve("out"));
    if (!out.toFile().setWritable(false) || Files.isWritable(out)) {
      System.err.println(
          "SKIPPED: this user may write everywhere, also where only reading is allowed");
      Assumptions.abort();
    }
    return out;
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void aRefusalSaysWhyAndChangesNothing(Refused c) throws Exception {
    Path out = c.layout.in(dir);
    SortedMap<String, String> before = Book.tree(dir);
    OutputException e = assertThrows(OutputException.class, () -> Book.write(out, "b"));
    assertTrue(e.getMessage().contains(c.says), e.getMessage());
    assertTrue(e.getMessage().contains(out.toString()), e.getMessage());
    assertEquals(before, Book.tree(dir));
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
    Path out = OLD_BOOK.in(dir);
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
    Path out = OLD_BOOK.in(dir);
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
    Path out = OLD_BOOK.in(dir);
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
    Path out = OLD_BOOK.in(dir);
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
