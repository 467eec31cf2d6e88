package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What may stand at the place of a book, what may happen to it, and that nothing is lost: the list
 * is {@code out-scenarios.csv}, README.txt beside it says how a row is written.
 */
class OutScenariosTest {

  private static final String SHEET =
      "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against\n"
          + "1,19:00,Herons,4 Berg,recovery,,-25,5,5,5\n"
          + "1,18:56,Herons,4 Berg,release,lost,-5,6,5,5\n"
          + "1,18:53,Wolves,9 Vik,faceoff,,21,-6.7,5,5\n"
          + "1,18:50,Wolves,9 Vik,recovery,,3,3,5,5\n";

  private static final String WORK = ".two-strides-0123456789abcdef";
  private static final String LIST = "book-files.txt";
  private static final String LOCK = ".two-strides-lock";

  /** A small disk's unit, what a step's number counts, and enough for a book; bytes. */
  private static final int BLOCK = 4096;

  private static final int KILO = 1000;
  private static final int PLENTY = 20_000_000;

  @TempDir static Path shared;

  @TempDir Path top;

  /** Files of the last book, and of the one that a run writes, by their paths in the book. */
  private static Map<String, String> last;

  private static Map<String, String> next;

  /**
   * A scenario.
   *
   * @param name what it is
   * @param layout steps that lay it out
   * @param command words of the command line behind {@code review}
   * @param exit exit code that the run must end with
   * @param says what it must say
   * @param then what stands there afterwards
   */
  record Scenario(
      String name, List<String> layout, String command, int exit, String says, String then) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Scenario> scenarios() throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader in =
        new InputStreamReader(
            OutScenariosTest.class.getResourceAsStream("/twostrides/output/out-scenarios.csv"),
            StandardCharsets.UTF_8)) {
      return format.parse(in).stream()
          .map(
              r ->
                  new Scenario(
                      r.get("name"),
                      Stream.of(r.get("layout").split("; ?")).filter(s -> !s.isEmpty()).toList(),
                      r.get("command"),
                      Integer.parseInt(r.get("exit")),
                      r.get("says"),
                      r.get("then")))
          .toList();
    }
  }

  @BeforeAll
  static void books() throws IOException {
    Path sheet = Files.writeString(shared.resolve("g.csv"), SHEET);
    next = tree(SampleBook.of(shared.resolve("next"), List.of(sheet)));
    // The last book had a row set aside and one player more, so that some of its files go.
    String more =
        "1,18:40,Herons,4 Berg,dribble,,-5,6,5,5\n1,18:30,Herons,7 Lund,recovery,,-20,2,5,5\n";
    Files.writeString(sheet, SHEET + more);
    last = tree(SampleBook.of(shared.resolve("last"), List.of(sheet)));
    assertTrue(last.containsKey("set-aside/g.csv") && !next.containsKey("set-aside/g.csv"));
    assertEquals(
        next.size(),
        next.keySet().stream().map(p -> p.toLowerCase(Locale.ROOT)).distinct().count(),
        "a disk that knows no capitals holds the book, too");
  }

  /** Everything below a folder: files with their bytes, links with their target, folders. */
  private static Map<String, String> tree(Path top) throws IOException {
    Map<String, String> tree = new TreeMap<>();
    try (Stream<Path> all = Files.walk(top)) {
      for (Path p : all.filter(p -> !p.equals(top)).toList()) {
        tree.put(
            top.relativize(p).toString(),
            Files.isSymbolicLink(p)
                ? "link to " + Files.readSymbolicLink(p)
                : Files.isDirectory(p, LinkOption.NOFOLLOW_LINKS)
                    ? "folder"
                    : Files.readString(p, StandardCharsets.ISO_8859_1));
      }
    }
    return tree;
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path p : all.toList()) {
        Path at = to.resolve(from.relativize(p).toString());
        if (!Files.isDirectory(at)) {
          Files.copy(p, at, LinkOption.NOFOLLOW_LINKS);
        }
      }
    }
  }

  private static Path put(Path file, String text, StandardOpenOption... how) throws IOException {
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text, how);
  }

  /** One step of a layout. */
  private static void lay(Path dir, String step) throws IOException {
    String[] words = step.split(" ", 2);
    String[] both = words[1].split(" -> ", 2);
    Path at = dir.resolve(both[0]);
    switch (words[0]) {
      case "book" -> copy(shared.resolve("last"), Files.createDirectories(at));
      case "mine" -> put(at, "mine: " + both[0]);
      case "sheet" -> put(at, SHEET);
      case "folder" -> Files.createDirectories(at);
      case "link" -> Files.createSymbolicLink(at, Path.of(both[1]));
      case "delete" -> Files.delete(at);
      case "move" -> {
        Files.createDirectories(dir.resolve(both[1]).getParent());
        Files.move(at, dir.resolve(both[1]));
      }
      case "line" -> put(at, both[1] + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
      case "held" -> put(at.resolve(LOCK), "process 1 on another-machine\n");
      case "closed" -> assertTrue(at.toFile().setWritable(false));
      default -> throw new IOException("what is \"" + step + "\"?");
    }
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void nothingIsLost(Scenario s) throws Exception {
    Path dir = Files.createDirectory(top.resolve("case"));
    put(dir.resolve("sheets/g.csv"), SHEET);
    List<String> disk = new ArrayList<>();
    for (String step : s.layout) {
      if (DISK.containsKey(step.split(" ", 2)[0])) {
        disk.add(step);
      } else {
        lay(dir, step);
      }
      if (step.startsWith("closed ") && Files.isWritable(dir.resolve(step.substring(7)))) {
        disk.add("nobody");
      }
    }
    Map<String, String> before = tree(dir);
    Child run = disk.isEmpty() ? here(dir, s) : onADiskOfItsOwn(before, disk, s);
    assertEquals(s.exit, run.code(), run.said());
    assertTrue(run.said().contains(s.says), run.said());
    assertFalse(run.said().contains("\tat ") || run.said().contains("Exception"), run.said());
    Map<String, String> found = tree(disk.isEmpty() ? dir : top.resolve("seen"));
    if (s.then.equals("kept")) {
      List<String> missing = new ArrayList<>(before.values());
      found.values().forEach(missing::remove);
      missing.removeIf(text -> text.equals("folder"));
      assertEquals(List.of(), missing, "what is found nowhere any more");
    } else {
      assertEquals(List.of(), differences(expected(s, before), found));
    }
  }

  private static List<String> differences(Map<String, String> expected, Map<String, String> found) {
    Set<String> paths = new TreeSet<>(expected.keySet());
    paths.addAll(found.keySet());
    return paths.stream()
        .filter(p -> !Objects.equals(expected.get(p), found.get(p)))
        .map(
            p ->
                p
                    + (!found.containsKey(p)
                        ? " is gone"
                        : expected.containsKey(p) ? " is another" : " is new"))
        .toList();
  }

  /** What shall be there afterwards. */
  private static Map<String, String> expected(Scenario s, Map<String, String> before) {
    Map<String, String> expected = new TreeMap<>(before);
    if (s.then.equals("same")) {
      return expected;
    }
    String[] then = s.then.split(" ", 2);
    Path book = Path.of(then[1]);
    Map<String, String> whole = then[0].equals("next") ? next : last;
    // The last book's files, and those that a run which was stopped had put into their places.
    Stream.concat(
            before.getOrDefault(book.resolve(LIST).toString(), "").lines(),
            before.getOrDefault(book.resolve(WORK + "/plan.txt").toString(), "").lines())
        .map(own -> book.resolve(own.replaceFirst("^new ", "")))
        .forEach(
            own -> {
              expected.remove(own.toString());
              for (Path d = own.getParent(); !d.equals(book); d = d.getParent()) {
                String folder = d.toString();
                if (expected.keySet().stream().noneMatch(p -> p.startsWith(folder + "/"))) {
                  expected.remove(folder);
                }
              }
            });
    expected.keySet().removeIf(p -> p.startsWith(book.resolve(".two-strides-").toString()));
    for (Path d = book; d != null; d = d.getParent()) {
      expected.put(d.toString(), "folder");
    }
    whole.forEach((path, text) -> expected.put(book.resolve(path).toString(), text));
    return expected;
  }

  private static Object[] words(Path dir, Scenario s) {
    return Stream.concat(
            Stream.of("review"),
            Stream.of(s.command.split(" ")).map(w -> w.startsWith("-") ? w : path(dir, w)))
        .toArray();
  }

  /** A path as somebody would type it: seen from where the program runs, behind a tilde. */
  private static Path path(Path dir, String word) {
    return word.startsWith("~")
        ? Path.of("").toAbsolutePath().relativize(dir.resolve(word.substring(1)))
        : dir.resolve(word);
  }

  private static Child here(Path dir, Scenario s) throws IOException {
    Optional<Path> held =
        s.layout.stream()
            .filter(step -> step.startsWith("held "))
            .map(step -> dir.resolve(step.substring(5)).resolve(LOCK))
            .findFirst();
    if (held.isEmpty()) {
      Run run = Run.of(words(dir, s));
      return new Child(run.code(), run.out() + run.err());
    }
    // As another process holds it: the system's lock, on a byte far behind the words.
    try (FileChannel lock = FileChannel.open(held.get(), StandardOpenOption.WRITE)) {
      assertTrue(lock.tryLock(Long.MAX_VALUE - 1, 1, false).isValid());
      Run run = Run.of(words(dir, s));
      return new Child(run.code(), run.out() + run.err());
    }
  }

  /** What a step does to a disk, in the shell's words. */
  private static final Map<String, String> DISK =
      Map.of(
          "room", "",
          // Whoever may write everywhere becomes somebody who may not.
          "nobody", "set -- unshare -U --map-user=1000 --map-group=1000 \"$@\"",
          "stuck", "mount --bind $P $P",
          "mounted",
              "mv $P moved && mkdir $P && mount -t tmpfs none $P && cp -a moved/. $P && rm -r moved",
          "readonly", "mount -o remount,ro .");

  /**
   * The case on a small disk that only one process sees and that goes with it; what was on it then
   * lies in the folder {@code seen}.
   */
  private Child onADiskOfItsOwn(Map<String, String> before, List<String> steps, Scenario s)
      throws Exception {
    Assumptions.assumeTrue(Child.mayMount());
    long size = 0;
    for (String text : before.values()) {
      size += text.equals("folder") ? 0 : (text.length() + BLOCK - 1L) / BLOCK * BLOCK;
    }
    StringBuilder script =
        new StringBuilder("set -e; mount -t tmpfs -o size=$1 none disk; shift; ");
    script.append("cp -a case/. disk; cd disk; ");
    for (String step : steps) {
      String[] words = (step + " ").split(" ", 2);
      size += words[0].equals("room") ? KILO * Long.parseLong(words[1].strip()) : PLENTY;
      script.append("P=").append(words[1]).append("; ").append(DISK.get(words[0])).append("\n");
    }
    script.append("cd ..; set +e; \"$@\"; code=$?; cp -a disk/. seen; exit $code");
    Path disk = Files.createDirectory(top.resolve("disk"));
    Files.createDirectory(top.resolve("seen"));
    List<String> line =
        new ArrayList<>(List.of("unshare", "-rm", "sh", "-c", script.toString(), "sh", "" + size));
    line.addAll(Child.program(words(disk, s)));
    return Child.ended(
        new ProcessBuilder(line).directory(top.toFile()).redirectErrorStream(true).start());
  }
}
