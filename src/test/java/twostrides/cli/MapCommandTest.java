package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that writes a map to start from. */
class MapCommandTest {

  private static final String SHEET =
      "Per,Clock,Club,Event,Skater\n1,19:00,Herons,Pass,4\n1,18:00,Wolves,Pass,5\n"
          + "1,17:00,Wolves,Shot,5\n";

  @TempDir Path dir;

  private Path sheet() throws IOException {
    return Files.writeString(dir.resolve("g.csv"), SHEET);
  }

  @Test
  void anUnmappedSheetIsToldOfTheCommandAndThePage() throws IOException {
    Run run = Run.of("check", sheet());
    assertEquals(Main.UNREADABLE, run.code());
    assertTrue(run.err().lines().findFirst().orElseThrow().contains("two-strides map " + sheet()));
    assertTrue(run.err().lines().findFirst().orElseThrow().contains("docs/sheets.md"), run.err());
  }

  @Test
  void theMapIsWrittenAndWorks() throws IOException {
    Path out = dir.resolve("starter.toml");
    Run console = Run.of("map", sheet());
    assertEquals(Main.DONE, console.code(), console.err());
    Run run = Run.of("map", sheet(), "--out", out);
    assertEquals(Main.DONE, run.code(), run.err());
    assertEquals(Files.readString(out), console.out());
    assertTrue(run.out().contains("with 2 open questions (# ?)"), run.out());
    Run check = Run.of("check", sheet(), "--map", out);
    assertEquals(Main.DONE, check.code(), check.err());
    assertTrue(check.out().contains("3 rows read = 3 rows used"), check.out());
    Run again = Run.of("map", sheet(), "--out", out);
    assertEquals(Main.USAGE, again.code());
    assertTrue(again.err().contains("expected a file that is not there yet"), again.err());
  }

  @Test
  void shippedMapsAreListed() {
    Run run = Run.of("map", "--list");
    assertEquals(Main.DONE, run.code());
    assertTrue(run.out().contains("men-2024 "), run.out());
    assertEquals(Main.USAGE, Run.of("map").code());
  }
}
