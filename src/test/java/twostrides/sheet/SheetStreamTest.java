package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet read row by row gives what the same sheet read whole gives. */
class SheetStreamTest {
  private static final String HEADER = "period,clock,action,player,note";

  @TempDir Path dir;

  /** Takes rows as text, so that they compare. */
  private static final class Lines implements SheetStream.Taker {
    private final List<String> rows = new ArrayList<>();
    private final List<String> doubtful = new ArrayList<>();
    private Set<String> present = Set.of();

    @Override
    public void header(Set<String> columnsPresent) {
      present = columnsPresent;
    }

    @Override
    public void row(SheetRow row) {
      rows.add(said(row));
    }

    @Override
    public void setAside(DoubtfulRow row) {
      doubtful.add(said(row));
    }

    private static String said(DoubtfulRow row) {
      return row.row() + " " + row.problems();
    }

    private static String said(SheetRow row) {
      return row.line() + " " + row.cells() + " " + row.raw();
    }
  }

  private void same(byte[] bytes) throws Exception {
    Path file = dir.resolve("sheet.csv");
    Files.write(file, bytes);
    SheetMap map = SheetMap.plain(Schemas.PLAY);
    Sheet whole;
    try {
      whole = SheetReader.read(file, map);
    } catch (SheetException e) {
      SheetException streamed =
          assertThrows(SheetException.class, () -> SheetStream.read(file, map, new Lines()));
      assertEquals(e.getMessage(), streamed.getMessage());
      return;
    }
    Lines lines = new Lines();
    SheetStream.read(file, map, lines);
    assertEquals(whole.rows().stream().map(Lines::said).toList(), lines.rows);
    assertEquals(whole.setAside().stream().map(Lines::said).toList(), lines.doubtful);
    assertEquals(whole.columnsPresent(), lines.present);
  }

  @Test
  void rowsAndMessagesAreTheSameForSeededSheets() throws Exception {
    Random random = new Random(20311004);
    List<String> cells =
        List.of("1", "", "pass", "\"a,b\"", "\"two\nlines\"", "\"\"\"q\"\"\"", " x ", "Å", ",");
    List<String> ends = List.of("\n", "\r\n", "\r", "\n\n", "\n \n");
    for (int sheet = 0; sheet < 300; sheet++) {
      String end = ends.get(random.nextInt(ends.size()));
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "" : end).append(HEADER);
      int rows = random.nextInt(12);
      for (int i = 0; i < rows; i++) {
        text.append(end);
        for (int c = 0; c < 5; c++) {
          text.append(c > 0 ? "," : "").append(cells.get(random.nextInt(cells.size())));
        }
      }
      text.append(random.nextInt(4) == 0 ? "\n\"open" : "");
      text.append(random.nextBoolean() ? end : "");
      same(text.toString().getBytes(StandardCharsets.UTF_8));
    }
  }

  @Test
  void longSheetsAreReadPastEveryBuffer() throws Exception {
    StringBuilder text = new StringBuilder(HEADER);
    for (int i = 0; i < 20_000; i++) {
      text.append(i % 7 == 0 ? "\r\n" : "\n").append("1,").append(i).append(",pass,\"é ").append(i);
      text.append(i % 11 == 0 ? "\n\",n" : "\",n").append(i % 1000 == 0 ? ",too many" : "");
    }
    same(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void brokenFilesGiveTheSameMessage() throws Exception {
    Charset western = Charset.forName("windows-1252");
    same((HEADER + "\n1,2,pass,Håkan,\n").getBytes(western));
    same((HEADER + "\n1,2,pass,a\0b,\n").getBytes(StandardCharsets.UTF_8));
    same("\n \n".getBytes(StandardCharsets.UTF_8));
    same(new byte[0]);
    same("period,period\n".getBytes(StandardCharsets.UTF_8));
    same("clock,action\n1,2\n".getBytes(StandardCharsets.UTF_8));
    for (Charset charset :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      same(("\uFEFF" + HEADER.replace(',', ';') + "\n1;2;pass;Å;\n").getBytes(charset));
    }
    Path missing = dir.resolve("missing.csv");
    SheetMap map = SheetMap.plain(Schemas.PLAY);
    assertEquals(
        assertThrows(SheetException.class, () -> SheetReader.read(missing, map)).getMessage(),
        assertThrows(SheetException.class, () -> SheetStream.read(missing, map, new Lines()))
            .getMessage());
  }
}
