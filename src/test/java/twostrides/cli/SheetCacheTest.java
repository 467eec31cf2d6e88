package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code --cache}: whatever lies in it, a run writes and says what it would without; only the one
 * line about the cache differs.
 */
class SheetCacheTest {

  @TempDir Path dir;

  private Path sheets;
  private Path cache;

  @BeforeEach
  void games() throws IOException {
    sheets = Files.createDirectory(dir.resolve("sheets"));
    cache = dir.resolve("cache");
    for (Path game : SampleBook.games().subList(0, 3)) {
      Files.copy(game, sheets.resolve(game.getFileName()));
    }
  }

  /** What a run wrote and said. */
  private record Result(int code, List<String> said, Map<String, String> files) {}

  private Result review(Object... options) throws IOException {
    Path out = dir.resolve("out");
    Run run =
        Run.of(
            Stream.concat(
                    Stream.of("review", sheets, "--simulations", 100, "--out", out),
                    Stream.of(options))
                .toArray());
    Map<String, String> files = new TreeMap<>();
    if (run.code() == 0) {
      try (Stream<Path> all = Files.walk(out)) {
        for (Path f : all.filter(Files::isRegularFile).toList()) {
          files.put(out.relativize(f).toString(), Files.readString(f));
        }
      }
    }
    return new Result(run.code(), Stream.of(run.out(), run.err()).toList(), files);
  }

  /** The run with the cache, which has to be the run without it; says how many sheets it knew. */
  private String cached(Object... options) throws IOException {
    Result without = review(options);
    List<Object> more = new ArrayList<>(Arrays.asList(options));
    more.addAll(List.of("--cache", cache));
    Result with = review(more.toArray());
    assertEquals(without.code(), with.code(), with.said().toString());
    List<String> lines = with.said().get(0).lines().toList();
    Predicate<String> ofCache = l -> l.startsWith("Cache: ");
    assertEquals(
        without.said().get(0).lines().toList(), lines.stream().filter(ofCache.negate()).toList());
    assertEquals(without.said().get(1), with.said().get(1));
    assertEquals(without.files().keySet(), with.files().keySet());
    without.files().forEach((name, text) -> assertEquals(text, with.files().get(name), name));
    return lines.stream().filter(ofCache).findFirst().orElse("no line");
  }

  private List<Path> kept() throws IOException {
    try (Stream<Path> files = Files.list(cache)) {
      return files.sorted().toList();
    }
  }

  private static String line(int known, int sheets) {
    return "Cache: known from an earlier run %d of %d sheets.".formatted(known, sheets);
  }

  @Test
  void theBookIsTheSameColdWarmAndWithAGameMore() throws IOException {
    assertEquals(line(0, 3), cached());
    assertEquals(line(3, 3), cached());
    Path fourth = SampleBook.games().get(3);
    Files.copy(fourth, sheets.resolve(fourth.getFileName()));
    assertEquals(line(3, 4), cached("--tables-only", "--json-lines"));
  }

  @Test
  void rowsSetAsideAndMendedAreAccountedForFromTheCache() throws IOException {
    Path game = sheets.resolve(SampleBook.games().get(1).getFileName());
    List<String> rows = new ArrayList<>(Files.readAllLines(game));
    rows.set(7, rows.get(7) + ",one cell more");
    rows.set(30, rows.get(30).replaceFirst("^([^,]*),[^,]*,", "$1,seventh,"));
    Files.write(game, rows);
    String first = cached("--tables-only");
    assertEquals(line(0, 3), first);
    assertEquals(line(3, 3), cached("--tables-only"));
    assertTrue(Files.exists(dir.resolve("out/set-aside/problems.csv")));
  }

  /** How many sheets a run knew, without asking whether its tables are right. */
  private String known(Object... options) {
    List<Object> all =
        new ArrayList<>(List.of("review", sheets, "--tables-only", "--simulations", 100));
    all.addAll(List.of("--cache", cache, "--out", dir.resolve("out")));
    all.addAll(Arrays.asList(options));
    return Run.of(all.toArray()).lines().stream()
        .filter(l -> l.startsWith("Cache: "))
        .findFirst()
        .orElse("no line");
  }

  @Test
  void aSheetOrASettingThatChangedIsReadAnew() throws IOException {
    Files.delete(sheets.resolve(SampleBook.games().get(0).getFileName()));
    assertEquals(line(0, 2), known());
    Path game = sheets.resolve(SampleBook.games().get(2).getFileName());
    List<String> rows = new ArrayList<>(Files.readAllLines(game));
    rows.remove(rows.size() - 1);
    Files.write(game, rows);
    assertEquals(line(1, 2), cached("--tables-only"));
    for (String[] other :
        new String[][] {
          {"--window", "12"},
          {"--rulebook", "touch"},
          {"--compare-rulebook", "touch"},
          {"--season", "2024-25"},
          {"--manpower", "penalties"},
          {"--seed", "2"},
          {"--level", "junior"},
          {"--rink", "iihf", "--trust-sheets"}
        }) {
      assertEquals(line(0, 2), known((Object[]) other), String.join(" ", other));
    }
    Path own = Files.writeString(dir.resolve("own.toml"), "starts-from = \"hybrid\"\n");
    assertEquals(line(0, 2), known("--rulebook", own));
    Files.writeString(own, "starts-from = \"touch\"\n");
    assertEquals(line(0, 2), known("--rulebook", own));
    assertEquals(line(2, 2), cached("--tables-only", "--flag-threshold", "0.5"));
  }

  /** Bytes that are damaged, cut short, empty, or those of another sheet, are not used. */
  @Test
  void whatIsDamagedIsReadFromItsSheet() throws IOException {
    cached("--tables-only");
    List<Path> kept = kept();
    assertEquals(3, kept.size());
    byte[] bytes = Files.readAllBytes(kept.get(0));
    bytes[bytes.length / 2] ^= 1;
    Files.write(kept.get(0), bytes);
    Files.write(kept.get(1), Arrays.copyOf(Files.readAllBytes(kept.get(1)), 100));
    Files.write(kept.get(2), new byte[0]);
    assertEquals(line(0, 3), cached("--tables-only"));
    assertEquals(line(3, 3), cached("--tables-only"));
  }

  /** A later sheet has more of a game that the cache has by itself. */
  @Test
  void aGameThatGoesOnInAnotherSheetIsReadWhole() throws IOException {
    Path game = sheets.resolve(SampleBook.games().get(0).getFileName());
    List<String> all = Files.readAllLines(game);
    Predicate<String> third = row -> row.contains(",Tarn Wolves,3,");
    List<String> early = all.stream().filter(third.negate()).toList();
    List<String> late = new ArrayList<>(List.of(all.get(0)));
    late.addAll(all.stream().filter(third).toList());
    Files.write(game, early);
    assertEquals(line(0, 3), cached("--tables-only"));
    Files.write(sheets.resolve("late.csv"), late);
    assertEquals(line(3, 4), cached("--tables-only"));
    assertEquals(line(3, 4), cached("--tables-only"));
  }

  @Test
  void theSameGameTwiceIsRefusedInTheSameWords() throws IOException {
    cached("--tables-only");
    Path copy = sheets.resolve("z.csv");
    Files.copy(SampleBook.games().get(0), copy);
    assertEquals("no line", cached("--tables-only"));
    Files.writeString(
        copy, Files.readString(copy).replace("2031-10-04 GLA-TAR", "2031-10-04 again"));
    assertEquals("no line", cached("--tables-only"));
    assertEquals("no line", cached("--tables-only"));
  }

  @Test
  void withoutNamesAllSheetsAreRead() throws IOException {
    cached("--tables-only");
    assertEquals(
        "Cache: known from an earlier run no sheet, as with --no-names or --sync all are read.",
        cached("--tables-only", "--no-names"));
  }

  @Test
  void aCacheThatCannotBeIsRefusedInWords() throws IOException {
    Path file = Files.writeString(dir.resolve("file"), "");
    Run run = Run.of("review", sheets, "--cache", file, "--out", dir.resolve("o"));
    assertEquals(2, run.code(), run.err());
    assertTrue(run.err().startsWith("--cache: found " + file + ", where nothing"), run.err());
    assertEquals("", Files.readString(file));
    Path book = dir.resolve("new");
    Run inside = Run.of("review", sheets, "--cache", book.resolve("kept"), "--out", book);
    assertEquals(2, inside.code(), inside.err());
    assertTrue(inside.err().contains("inside the book " + book + ", expected a folder beside it"));
    assertTrue(Files.notExists(book));
  }
}
