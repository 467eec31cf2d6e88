package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sheets, maps and drawings on a disk that fills up: each file is whole or as it was, and the next
 * run goes on. Books on such a disk are rows of out-scenarios.csv.
 */
class FullDiskTest {

  private static final String NO_ROOM =
      "(No space left on device). Nothing is left half written. Look that the disk is not full";

  @TempDir Path dir;

  @BeforeEach
  void disks() throws Exception {
    Assumptions.assumeTrue(Child.mayMount());
    Files.createDirectories(dir.resolve("disk"));
    Files.createDirectories(dir.resolve("seen"));
  }

  /** A command line in a place of its own, where the folder {@code disk} is a small disk. */
  private List<String> onASmallDisk(String size, String script, List<String> program) {
    List<String> line = new ArrayList<>(List.of("unshare", "-rm", "sh", "-c"));
    line.add("cd " + dir + "; mount -t tmpfs -o size=" + size + " none disk; " + script);
    line.add("sh");
    line.addAll(program);
    return line;
  }

  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(p).toString(), Files.readString(p));
      }
    }
    return files;
  }

  @Test
  void aDemoThatFindsNoRoomLeavesWholeSheetsAndGoesOnLater() throws Exception {
    assertEquals(0, Run.of("demo", "--games", 1, "--seed", 1, "--out", dir.resolve("one")).code());
    assertEquals(0, Run.of("demo", "--games", 2, "--seed", 2, "--out", dir.resolve("two")).code());
    Map<String, String> one = files(dir.resolve("one"));
    Map<String, String> two = files(dir.resolve("two"));
    int room = one.values().stream().mapToInt(String::length).sum() + 150_000;
    Child run =
        Child.run(
            onASmallDisk(
                String.valueOf(room),
                "cp -a one disk/demo; \"$@\" --out disk/demo; echo \"exit $?\"; cp -a disk/demo seen/half;"
                    + " mount -o remount,size=20m disk;"
                    + " \"$@\" --out disk/demo && cp -a disk/demo seen/whole",
                Child.program("demo", "--games", 2, "--seed", 2)));
    assertEquals(0, run.code(), run.said());
    assertTrue(run.said().contains(NO_ROOM) && run.said().contains("exit 4"), run.said());
    Map<String, String> half = files(dir.resolve("seen/half"));
    half.remove("demo-files.sha256");
    assertTrue(half.size() < two.size() - 1, half.keySet().toString());
    half.forEach(
        (path, text) ->
            assertTrue(
                text.equals(one.get(path)) || text.equals(two.get(path)), path + " is half"));
    assertEquals(two, files(dir.resolve("seen/whole")));
  }

  @Test
  void mapsAndDrawingsAreThereWholeOrNotAtAll() throws Exception {
    Path sheet = Path.of("sample-data").toAbsolutePath();
    String script =
        "echo mine > disk/r.svg; head -c 1m /dev/zero > disk/filler 2> /dev/null;"
            + " \"$@\" map '%s' --out disk/m.toml; echo \"exit $?\";"
            + " \"$@\" whatif --release -5,6 --pressure light --out disk/r.svg > said; echo \"exit $?\";"
            + " rm disk/filler; cp -a disk/. seen";
    Child run = Child.run(onASmallDisk("64k", script.formatted(sheet), Child.program()));
    String refused =
        "A file could not be read or written " + NO_ROOM + ", and run again.\nexit 4\n";
    assertEquals(refused + refused, run.said());
    assertEquals(Map.of("r.svg", "mine\n"), files(dir.resolve("seen")));
  }

  /**
   * What the page was told is saved stands in the journal, and tagging goes on when there is room.
   */
  @Test
  void anExitThatFindsNoRoomIsNotCalledSavedAndNoOtherIsLost() throws Exception {
    String exit =
        "{\"home\":\"Herons\",\"away\":\"Wolves\",\"period\":\"1\",\"clock\":\"10:00\",\"team\":\"Herons\","
            + "\"player\":\"4 Berg\",\"way_out\":\"chip\",\"x_m\":\"-9.5\",\"y_m\":\"3.2\",\"ended\":\"icing\"}";
    Path sheet = dir.resolve("disk/tags.csv");
    List<String> program = Child.program("tag", "--no-open", "--sheet", sheet);
    int saved = 0;
    try (TagProcess tag =
        TagProcess.of(
            onASmallDisk("96k", "head -c 60k /dev/zero > disk/filler; exec \"$@\"", program))) {
      HttpResponse<String> r = tag.post("add", exit);
      while (r.statusCode() == 200) {
        assertTrue(++saved < 2000, "the disk never fills up");
        r = tag.post("add", exit);
      }
      assertEquals(500, r.statusCode(), r.body());
      assertTrue(r.body().contains("No space left on device"), r.body());
      assertTrue(r.body().contains("nothing was saved"), r.body());
      assertEquals(saved, exits(tag));
      // The disk as the program sees it.
      Path seen = tag.root().resolve(dir.getRoot().relativize(dir).toString());
      Files.delete(seen.resolve("disk/filler"));
      assertEquals(200, tag.post("add", exit).statusCode());
      assertEquals(++saved, exits(tag));
      Files.copy(seen.resolve("disk/tags.csv.journal"), dir.resolve("tags.csv.journal"));
    }
    try (TagProcess again = TagProcess.start(dir.resolve("tags.csv"))) {
      assertEquals(saved, exits(again));
    }
  }

  private static int exits(TagProcess tag) throws IOException, InterruptedException {
    return (int) Pattern.compile("\"id\":").matcher(tag.get("state")).results().count();
  }
}
