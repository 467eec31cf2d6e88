package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.output.OutputFolder;

/**
 * A review that is killed at any instant, over a book that is there: when the next run has begun,
 * the last book or the new one stands, whole, and so does what else was in the folder.
 * StoppedRunTest stops after every step; here the instants are random, from a seed.
 */
class KilledReviewTest {

  private static final String HEADER =
      "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against\n";
  private static final String ROWS =
      "1,19:00,Herons,4 Berg,recovery,,-25,5,5,5\n"
          + "1,18:56,Herons,4 Berg,release,lost,-5,6,5,5\n"
          + "1,18:53,Wolves,9 Vik,faceoff,,21,-6.7,5,5\n";

  /** Between two looks, in nanoseconds; a swap takes some hundred times as long. */
  private static final long A_MOMENT = 100_000;

  private static final String SWAPPING = ".two-strides-";

  @TempDir Path dir;

  private Map<String, String> last;
  private Map<String, String> next;
  private Path nextSheet;
  private Path book;

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(book)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        files.put(book.relativize(p).toString(), Files.readString(p, StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  private Path sheet(String name, String rows) throws IOException {
    return Files.writeString(dir.resolve(name), HEADER + rows);
  }

  private void lastBook() throws IOException {
    SampleBook.of(book, List.of(dir.resolve("last.csv")));
  }

  /** The last book and the new one, each with a file that the other does not have. */
  private void books() throws IOException {
    book = dir.resolve("book");
    nextSheet = sheet("next.csv", ROWS.replace("4 Berg", "7 Falk"));
    sheet("last.csv", ROWS + "1,18:40,Herons,4 Berg,dribble,,-5,6,5,5\n");
    SampleBook.of(book, List.of(nextSheet));
    Files.writeString(book.resolve("data/mine.csv"), "mine");
    next = files();
    lastBook();
    last = files();
    assertTrue(last.containsKey("set-aside/last.csv") && !next.containsKey("set-aside/last.csv"));
  }

  /** How a kill came out. */
  private enum Stood {
    LAST,
    NEXT,
    LAST_PUT_BACK
  }

  /**
   * Kills a run and looks.
   *
   * @param after nanoseconds after the run's beginning, or after the first file's move
   * @param swapping which of the two
   */
  private Stood kill(long after, boolean swapping) throws Exception {
    Process run =
        new ProcessBuilder(Child.program("review", nextSheet, "--out", book))
            .redirectErrorStream(true)
            .redirectOutput(dir.resolve("said.txt").toFile())
            .start();
    while (swapping && run.isAlive() && !underWay()) {
      LockSupport.parkNanos(A_MOMENT);
    }
    long end = System.nanoTime() + after;
    while (System.nanoTime() < end && run.isAlive()) {
      LockSupport.parkNanos(Math.min(A_MOMENT, Math.max(1, end - System.nanoTime())));
    }
    run.destroyForcibly();
    assertTrue(run.waitFor(1, TimeUnit.MINUTES));
    boolean mixed = underWay();
    OutputFolder.at(book, List.of()).close();
    Map<String, String> found = files();
    if (found.equals(next)) {
      lastBook();
      return Stood.NEXT;
    }
    assertEquals(last.keySet(), found.keySet(), after + " ns");
    assertEquals(last, found, after + " ns");
    return mixed ? Stood.LAST_PUT_BACK : Stood.LAST;
  }

  private boolean underWay() throws IOException {
    try (Stream<Path> all = Files.list(book)) {
      return all.filter(p -> p.getFileName().toString().startsWith(SWAPPING))
          .anyMatch(p -> Files.exists(p.resolve("plan.txt")));
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  private void kills(int times) throws Exception {
    books();
    long start = System.nanoTime();
    Child whole = Child.run(Child.program("review", nextSheet, "--out", book));
    long length = System.nanoTime() - start;
    assertEquals(0, whole.code(), whole.said());
    lastBook();
    Random random = new Random(20311004);
    Map<Stood, Integer> counts = new TreeMap<>();
    for (int i = 0; i < times; i++) {
      boolean swapping = i % 2 == 1;
      long most = swapping ? TimeUnit.MILLISECONDS.toNanos(40) : length;
      counts.merge(kill((long) (random.nextDouble() * most), swapping), 1, Integer::sum);
    }
    System.err.println("Of " + times + " kills: " + counts);
    assertEquals(times, counts.values().stream().mapToInt(n -> n).sum());
  }

  @Test
  void tenKillsLoseNothing() throws Exception {
    kills(10);
  }

  @Test
  @Tag("long")
  void fiftyKillsLoseNothing() throws Exception {
    kills(50);
  }
}
