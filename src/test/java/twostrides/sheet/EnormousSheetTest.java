package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that no memory holds, and lines that are none, are refused with a message. */
class EnormousSheetTest {

  private static final String HEADER = "period,clock,action\n";

  @TempDir Path dir;

  private static String refusal(Path file, boolean streamed) {
    SheetMap map = SheetMap.plain(Schemas.PLAY);
    return assertThrows(
            SheetException.class,
            () -> {
              if (streamed) {
                SheetStream.read(file, map, new Nobody());
              } else {
                SheetReader.read(file, map);
              }
            })
        .getMessage();
  }

  /** A hole of the file system: it takes no room on the disk. */
  private Path twoGigabytes() throws IOException {
    Path file = Files.writeString(dir.resolve("huge.csv"), HEADER);
    try (RandomAccessFile hole = new RandomAccessFile(file.toFile(), "rw")) {
      hole.setLength(2_500_000_000L);
    }
    return file;
  }

  @Test
  void aSheetOfMoreThanTwoGigabytesIsRefused() throws IOException {
    Path file = twoGigabytes();
    assertEquals(
        file
            + ": found a file of 2500 MB, expected one of at most 1000 MB. What to do: Look whether"
            + " it is the right file; if it is, split it by game, the header line in each part, and"
            + " name the folder of the parts.",
        refusal(file, false));
    assertEquals(
        refusal(file, false),
        assertThrows(SheetException.class, () -> SheetMap.read(file, Schemas.ALL)).getMessage());
  }

  /** Read row by row, a sheet may be as long as it likes; this one holds zero characters. */
  @Test
  void aLongSheetThatBreaksOffIsRefusedAtItsRow() throws IOException {
    Path file = twoGigabytes();
    assertEquals(
        file
            + ", line 2: found a zero character, which no text holds, expected text in UTF-8. What to"
            + " do: If the sheet was saved as UTF-16 without a byte order mark, declare charset ="
            + " \"UTF-16LE\" in a map, under [file]; otherwise save it again as CSV in UTF-8.",
        refusal(file, true));
  }

  /** The place is known from the first reading; a gigabyte is not read again, and not held. */
  @Test
  void aLongStreamWhoseLastByteIsBadIsRefusedAtItsLine() throws IOException {
    Path file = Files.writeString(dir.resolve("long.csv"), HEADER);
    byte[] row = "1,20:00,pass\r\n".getBytes(StandardCharsets.UTF_8);
    try (OutputStream out =
        new BufferedOutputStream(Files.newOutputStream(file, StandardOpenOption.APPEND))) {
      for (int i = 0; i < 200_000; i++) {
        out.write(row);
      }
      out.write(0xFF);
    }
    assertEquals(
        file + ", line 200002: found the byte 0xFF, which is not text in UTF-8",
        refusal(file, true).replaceFirst(", expected.*", ""));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void oneEnormousLineIsRefused(boolean streamed) throws IOException {
    Path file = dir.resolve("line.csv");
    Files.writeString(file, HEADER + "1,2,x\n1,2," + "x".repeat(SheetText.LONGEST_LINE));
    assertEquals(
        file
            + ", line 3: found more than 1000000 characters without a line end, expected a line for"
            + " each row. What to do: Look whether it is the right file; if it is, save it again as"
            + " CSV (UTF-8).",
        refusal(file, streamed));
    Files.writeString(file, "a,".repeat(SheetText.LONGEST_LINE));
    assertEquals(
        file + ", line 1: found more than 1000000 characters without a line end",
        refusal(file, streamed).replaceFirst(", expected.*", ""));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void anEnormousRowOfShortLinesIsRefused(boolean streamed) throws IOException {
    Path file = dir.resolve("row.csv");
    String cell = "x,\n".repeat(Records.LONGEST_ROW / 3 + 1);
    Files.writeString(file, HEADER + "1,2,\"" + cell + "\"\n");
    assertEquals(
        file + ", line 2: found a row of more than 10000000 characters",
        refusal(file, streamed).replaceFirst(", expected.*", ""));
  }

  private static final class Nobody implements SheetStream.Taker {
    @Override
    public void header(Set<String> columnsPresent) {}

    @Override
    public void row(SheetRow row) {}

    @Override
    public void setAside(DoubtfulRow row) {}
  }
}
