package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run's hashes are those of the bytes that it read, whatever becomes of the file meanwhile. */
class FilesReadTest {

  private static final String SHEET = "period,clock,team,action\n1,20:00,Herons,pass\n";

  @TempDir Path dir;

  private static <T> T during(Callable<T> run) {
    return FilesRead.during(
        () -> {
          try {
            return run.call();
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          } catch (Exception e) {
            throw new AssertionError(e.getMessage(), e);
          }
        });
  }

  private static Optional<String> sum(String text) throws Exception {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return Optional.of(
        HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
  }

  private static Object stream(Path file) throws SheetException {
    SheetStream.read(
        file,
        SheetMap.plain(Schemas.PLAY),
        new SheetStream.Taker() {
          @Override
          public void header(Set<String> columnsPresent) {}

          @Override
          public void row(SheetRow row) {}

          @Override
          public void setAside(DoubtfulRow row) {}
        });
    return file;
  }

  @Test
  void aSheetThatIsGoneMeanwhileKeepsTheHashOfWhatWasRead() throws Exception {
    Path file = Files.writeString(dir.resolve("g.csv"), SHEET);
    Optional<String> read =
        during(
            () -> {
              SheetReader.read(file, SheetMap.plain(Schemas.PLAY));
              Files.delete(file);
              return FilesRead.sha256(file);
            });
    assertEquals(sum(SHEET), read);
    assertEquals(Optional.empty(), FilesRead.sha256(file), "the run is over");
  }

  @Test
  void aStreamedSheetHasTheHashOfItsBytes() throws Exception {
    Path file = Files.writeString(dir.resolve("g.csv"), SHEET);
    Object streamed =
        during(
            () -> {
              stream(file);
              Files.writeString(file, "other");
              return FilesRead.sha256(file);
            });
    assertEquals(sum(SHEET), streamed);
  }

  @Test
  void aSheetThatGrowsBetweenTwoReadingsIsRefused() throws Exception {
    Path file = Files.writeString(dir.resolve("g.csv"), SHEET);
    for (boolean streamed : new boolean[] {false, true}) {
      Files.writeString(file, SHEET);
      SheetException refused =
          during(
              () -> {
                SheetReader.headers(file);
                Files.writeString(file, SHEET + "1,19:58,Wolves,pass\n");
                return assertThrows(
                    SheetException.class,
                    () -> {
                      if (streamed) {
                        stream(file);
                      } else {
                        SheetReader.read(file, SheetMap.plain(Schemas.PLAY));
                      }
                    });
              });
      assertEquals(
          file
              + ": found other bytes than a moment ago, expected a file that stays as it is while it"
              + " is read. What to do: Wait until it is saved, or copy it to a folder of your own,"
              + " and run again.",
          refused.getMessage());
    }
  }

  @Test
  void whatWasNotReadHasNoHash() throws IOException {
    Path file = Files.writeString(dir.resolve("g.csv"), SHEET);
    assertEquals(Optional.empty(), during(() -> FilesRead.sha256(file)));
  }

  @Test
  void aRunWithinARunKeepsItsOwn() throws Exception {
    Path file = Files.writeString(dir.resolve("g.csv"), SHEET);
    Optional<String> outer =
        during(
            () -> {
              SheetReader.headers(file);
              Files.writeString(file, "a,b\n");
              assertEquals(
                  sum("a,b\n"),
                  during(
                      () -> {
                        SheetReader.headers(file);
                        return FilesRead.sha256(file);
                      }));
              return FilesRead.sha256(file);
            });
    assertEquals(sum(SHEET), outer);
  }
}
