package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
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
   */
  private record Machine(String language, String zone, int threads, String folder) {}

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
                Thread.currentThread().setContextClassLoader(getClass().getClassLoader());
                Run demo = Run.of("demo", "--games", 2, "--seed", 7, "--out", season);
                assertEquals(0, demo.code(), demo.err());
                Path doubtful = season.resolve("game-03.csv");
                Files.writeString(doubtful, "period,clock,team,action\n1,19:00,Herons,dance\n");
                Path places = season.resolve("places");
                Run review =
                    Run.of(
                        "review", season, "--places", places, "--simulations", 300, "--out", book);
                assertEquals(0, review.code(), review.err() + review.out());
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
    SortedMap<String, String> first = book(new Machine("en-US", "America/Denver", 1, "a"));
    for (Machine machine :
        Stream.of(
                new Machine("de-DE", "Asia/Kathmandu", 2, "Anna's Ordner/Saison"),
                new Machine("tr-TR", "America/Denver", 2, "b"),
                new Machine("ar-EG-u-nu-arab", "Asia/Kathmandu", 1, "c/d/e"))
            .toList()) {
      assertEquals(first, book(machine), machine.toString());
    }
  }
}
