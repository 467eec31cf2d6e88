package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same season gives the same bytes, whatever the machine speaks and wherever it lies. */
class SameBytesTest {

  @TempDir Path dir;

  /**
   * A machine.
   *
   * @param language its language
   * @param zone its time zone
   * @param threads threads that work at once
   * @param folder where the season lies on it
   * @param again whether the book is made once more, of what a cache has from the first time
   */
  private record Machine(String language, String zone, int threads, String folder, boolean again) {}

  private SortedMap<String, String> book(Machine machine) throws Exception {
    Path home = Files.createDirectories(dir.resolve(machine.folder()));
    Path season = home.resolve("season");
    Path book = home.resolve("book");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    ForkJoinPool pool = new ForkJoinPool(machine.threads());
    try {
      Locale.setDefault(Locale.forLanguageTag(machine.language()));
      TimeZone.setDefault(TimeZone.getTimeZone(machine.zone()));
      pool.submit(
              () -> {
                Run demo = Run.of("demo", "--games", 2, "--seed", 7, "--out", season);
                assertEquals(0, demo.code(), demo.err());
                Path doubtful = season.resolve("game-03.csv");
                Files.writeString(doubtful, "period,clock,team,action\n1,19:00,Herons,dance\n");
                Path places = season.resolve("places");
                List<Object> review =
                    new ArrayList<>(List.of("review", season, "--places", places));
                review.addAll(List.of("--simulations", 300, "--out", book));
                if (machine.again()) {
                  review.addAll(List.of("--cache", dir.resolve("kept")));
                  assertEquals(0, Run.of(review.toArray()).code());
                }
                Run run = Run.of(review.toArray());
                assertEquals(0, run.code(), run.err() + run.out());
                assertEquals(machine.again(), run.out().contains("earlier run 3 of 3 sheets"));
                return null;
              })
          .get();
    } finally {
      pool.shutdown();
      TimeZone.setDefault(zone);
      Locale.setDefault(locale);
    }
    SortedMap<String, String> bytes = new TreeMap<>();
    try (Stream<Path> all = Files.walk(home)) {
      all.filter(Files::isRegularFile)
          .forEach(f -> bytes.put(home.relativize(f).toString(), sum(f)));
    }
    return bytes;
  }

  private static String sum(Path file) {
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void fourLanguagesTwoZonesOneAndTwoThreadsAndOtherFoldersAgree() throws Exception {
    SortedMap<String, String> first = book(new Machine("en-US", "America/Denver", 1, "a", false));
    for (Machine machine :
        Stream.of(
                new Machine("de-DE", "Asia/Kathmandu", 2, "Anna's Ordner/Saison", true),
                new Machine("tr-TR", "America/Denver", 2, "b", false),
                new Machine("ar-EG-u-nu-arab", "Asia/Kathmandu", 1, "c/d/e", true))
            .toList()) {
      assertEquals(first, book(machine), machine.toString());
    }
  }
}
