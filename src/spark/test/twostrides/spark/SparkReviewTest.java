package twostrides.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.cli.Main;

/** Twenty games of the invented league on a cluster of this machine. */
class SparkReviewTest {

  private static final int GAMES = 20;

  @TempDir Path dir;

  private String run(String... args) {
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said, true);
    assertEquals(0, Main.run(out, out, args), said.toString());
    return said.toString();
  }

  private static Map<String, String> files(Path book) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(book)) {
      for (Path f : all.filter(Files::isRegularFile).toList()) {
        files.put(book.relativize(f).toString(), Files.readString(f));
      }
    }
    return files;
  }

  @Test
  void theBytesAreThoseOfOneMachine() throws Exception {
    String league = dir.resolve("league").toString();
    run("demo", "--games", String.valueOf(GAMES), "--out", league);
    Path plain = dir.resolve("plain");
    Path book = dir.resolve("book");
    run("review", league, "--tables-only", "--out", plain.toString());
    String[] review = {
      "review", league, "--tables-only", "--cache", dir + "/kept", "--out", book.toString()
    };
    SparkReview.readGames(
        new SparkConf()
            .setMaster("local[2]")
            .setAppName("test")
            .set("spark.ui.enabled", "false")
            .set("spark.log.level", "ERROR"),
        List.of(review));
    String said = run(review);
    assertTrue(
        said.contains("Cache: known from an earlier run %d of %d sheets.".formatted(GAMES, GAMES)),
        said);
    Map<String, String> one = files(plain);
    assertTrue(one.containsKey("data/flags.csv"), one.keySet().toString());
    assertEquals(one, files(book));
  }
}
