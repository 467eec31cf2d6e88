package twostrides.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One run at a time in a folder, and a run that is gone holds nobody off. */
class OutputLockTest {

  @TempDir Path dir;

  /** Another process that holds the lock when this returns. */
  private static Process holder(Path out) throws IOException {
    Process process = Halting.start(out, "b", "wait");
    BufferedReader said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    assertEquals("locked", said.readLine());
    return process;
  }

  @Test
  void aSecondRunIsRefusedAndToldWhoHoldsTheFolder() throws Exception {
    Path out = dir.resolve("out");
    Book.write(out, "a");
    Process other = holder(out);
    try {
      for (Path way : List.of(out, Files.createSymbolicLink(dir.resolve("link"), out))) {
        OutputException e = assertThrows(OutputException.class, () -> Book.write(way, "c"));
        assertTrue(e.getMessage().contains("Another run is writing"), e.getMessage());
        assertTrue(e.getMessage().contains(": process " + other.pid() + " on "), e.getMessage());
        assertTrue(e.getMessage().matches("(?s).*, started 2\\d{3}-.*"), e.getMessage());
      }
      other.getOutputStream().write('\n');
      other.getOutputStream().flush();
      assertTrue(other.waitFor(1, TimeUnit.MINUTES));
      assertEquals(0, other.exitValue());
    } finally {
      other.destroyForcibly();
    }
    assertEquals("book b", Files.readString(out.resolve("index.html")));
    Book.write(out, "c");
    assertEquals("book c", Files.readString(out.resolve("index.html")));
    assertFalse(Files.exists(out.resolve(OutputLock.NAME)));
  }

  @Test
  void aKilledRunHoldsNobodyOff() throws Exception {
    Path out = dir.resolve("out");
    Process other = holder(out);
    other.destroyForcibly();
    assertTrue(other.waitFor(1, TimeUnit.MINUTES));
    assertTrue(Files.readString(out.resolve(OutputLock.NAME)).contains("process " + other.pid()));
    Book.write(out, "c");
    assertFalse(Files.exists(out.resolve(OutputLock.NAME)));
  }

  @Test
  void twoRunsOfOneProcessDoNotMixEither() throws Exception {
    Path out = dir.resolve("out");
    try (OutputFolder first = OutputFolder.at(out, List.of())) {
      OutputException e = assertThrows(OutputException.class, () -> Book.write(out, "c"));
      assertTrue(
          e.getMessage().contains("process " + ProcessHandle.current().pid()), e.getMessage());
      // The refused run must not have let go of the first one's lock.
      assertEquals(Halting.REFUSED, Halting.run(out, "b", 1));
      Files.writeString(first.writing().resolve("index.html"), "first");
      first.finish();
    }
    assertEquals("first", Files.readString(out.resolve("index.html")));
    Book.write(out, "c");
  }
}
