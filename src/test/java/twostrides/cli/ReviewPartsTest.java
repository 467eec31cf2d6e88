package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewPartsTest {

  @TempDir Path dir;

  @Test
  void everySheetIsAPartWithItsTrackingAndTheReviewsOptions() throws Exception {
    Path a = Files.writeString(dir.resolve("a.csv"), "");
    Path b = Files.writeString(dir.resolve("a1.csv"), "");
    Path places = Files.createDirectory(dir.resolve("places"));
    Path ofA = Files.writeString(places.resolve("a.tracking.csv"), "");
    Path ofB = Files.writeString(places.resolve("a1.tracking.csv"), "");
    Path other = Files.writeString(places.resolve("other.csv"), "");
    List<List<String>> parts =
        ReviewParts.of(
            List.of(
                "review",
                dir.toString(),
                "--cache=kept",
                "--keep-going",
                "--png",
                "--out",
                "o",
                "--compare-rulebook",
                "touch",
                "--compare-rulebook",
                "nhl",
                "--tracking",
                places.toString(),
                "--window",
                "12"));
    List<String> options =
        List.of(
            "--cache",
            "kept",
            "--keep-going",
            "--compare-rulebook",
            "touch",
            "--compare-rulebook",
            "nhl",
            "--window",
            "12");
    assertEquals(2, parts.size(), "not " + other);
    for (List<String> part : parts) {
      assertEquals(List.of("review", "--tables-only"), part.subList(0, 2));
      assertTrue(part.containsAll(options), part.toString());
    }
    assertTrue(parts.get(0).containsAll(List.of(a.toString(), "--tracking", ofA.toString())));
    assertTrue(parts.get(1).containsAll(List.of(b.toString(), "--tracking", ofB.toString())));
    assertTrue(!parts.get(0).contains(ofB.toString()) && !parts.get(0).contains("--png"));
    assertTrue(parts.stream().noneMatch(p -> p.contains(other.toString()) || p.contains("o")));
  }

  @Test
  void whatIsNoReviewWithACacheIsRefused() {
    for (List<String> line :
        List.of(
            List.of("check", "x.csv"),
            List.of("review", "x.csv"),
            List.of("review", "--cache", "kept"),
            List.<String>of())) {
      assertThrows(IllegalArgumentException.class, () -> ReviewParts.of(line), line.toString());
    }
  }

  /** What the parts leave is all that the review needs, and its tables are those of one run. */
  @Test
  void theReviewFindsAllOfItInTheCache() throws Exception {
    Path sheets = Files.createDirectory(dir.resolve("sheets"));
    for (Path game : SampleBook.games().subList(4, 6)) {
      Files.copy(game, sheets.resolve(game.getFileName()));
    }
    List<String> review =
        List.of(
            "review",
            sheets.toString(),
            "--simulations",
            "100",
            "--tables-only",
            "--cache",
            dir.resolve("kept").toString(),
            "--out",
            dir.resolve("tables").toString());
    ReviewParts.of(review).forEach(ReviewParts::run);
    Run run = Run.of(review.toArray());
    assertTrue(run.out().contains("earlier run 2 of 2 sheets."), run.out() + run.err());
    Run plain =
        Run.of("review", sheets, "--simulations", 100, "--tables-only", "--out", dir + "/p");
    assertEquals(0, plain.code(), plain.err());
    for (String table : List.of("exits", "releases", "flags", "restarts", "kills")) {
      assertEquals(text("p", table), text("tables", table));
    }
  }

  private String text(String book, String table) throws IOException {
    return Files.readString(dir.resolve(book).resolve("data").resolve(table + ".csv"));
  }
}
