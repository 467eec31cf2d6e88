package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bytes become text by the charset that is marked or declared, or the file is refused. */
class EncodingTest {
  private static final String TEXT =
      "period,clock,action,player\n1,12:00,touch,Šárka Čermáková\n1,11:00,touch,Bjørk Ærø\n";

  @TempDir Path dir;

  @ParameterizedTest
  @CsvSource({
    "UTF-8, '', ''",
    "UTF-8, EFBBBF, ''",
    "UTF-16LE, FFFE, ''",
    "UTF-16BE, FEFF, ''",
    "UTF-16LE, '', UTF-16LE",
    "UTF-16BE, '', UTF-16",
    // The mark in the file wins over what the map says.
    "UTF-16LE, FFFE, windows-1252",
    "UTF-8, EFBBBF, windows-1252",
    "UTF-8, EFBBBF, UTF-8",
  })
  void readsText(String charset, String mark, String declared) throws Exception {
    Path file = write(TEXT, Charset.forName(charset), mark);
    Sheet sheet = SheetReader.read(file, map(declared));
    assertEquals("period", sheet.headers().get(0));
    assertEquals("Šárka Čermáková", sheet.rows().get(0).cell("player").orElseThrow().text());
    assertEquals("Bjørk Ærø", sheet.rows().get(1).cell("player").orElseThrow().text());
  }

  @ParameterizedTest
  @CsvSource({"windows-1250, Šárka Čermáková", "windows-1252, Bjørk Ærø", "ISO-8859-2, Žaneta"})
  void readsOlderCharsetsWhenDeclared(String charset, String player) throws Exception {
    Path file =
        write("period,clock,action,player\n1,1,touch," + player, Charset.forName(charset), "");
    Sheet sheet = SheetReader.read(file, map(charset));
    assertEquals(player, sheet.rows().get(0).cell("player").orElseThrow().text());
    SheetException refused =
        assertThrows(
            SheetException.class, () -> SheetReader.read(file, SheetMap.plain(Schemas.PLAY)));
    assertEquals(2, refused.line().orElseThrow());
    assertTrue(refused.toDo().contains("declare its charset in a map"), refused.getMessage());
  }

  @Test
  void namesTheLineOfABadByte() throws IOException {
    Path file =
        write("period,clock,action\r\n1,1,touch\r\n1,1,\u00e8", StandardCharsets.ISO_8859_1, "");
    SheetException refused = assertThrows(SheetException.class, () -> SheetReader.headers(file));
    assertEquals(
        file
            + ", line 3: found the byte 0xE8, which is not text in UTF-8, expected text in UTF-8."
            + " What to do: Save the sheet as CSV in UTF-8, or declare its charset in a map, for"
            + " example charset = \"windows-1252\" under [file].",
        refused.getMessage());
  }

  @Test
  void namesBytesThatADeclaredCharsetLacks() throws IOException, SheetException {
    Path file = dir.resolve("sheet.csv");
    Files.write(file, new byte[] {'a', '\n', (byte) 0x81});
    SheetMap map = map("windows-1252");
    SheetException refused =
        assertThrows(SheetException.class, () -> SheetReader.headers(file, map));
    assertEquals(2, refused.line().orElseThrow());
    assertTrue(refused.found().startsWith("the byte 0x81"), refused.getMessage());
  }

  @Test
  void refusesHalfACharacterAtTheEnd() throws IOException {
    Path file = dir.resolve("sheet.csv");
    Files.write(file, new byte[] {'a', '\n', (byte) 0xC5});
    SheetException refused = assertThrows(SheetException.class, () -> SheetReader.headers(file));
    assertEquals(2, refused.line().orElseThrow());
  }

  @Test
  void refusesUnmarkedUtf16AndWorkbooks() throws IOException {
    Path wide = write("period,clock\n", StandardCharsets.UTF_16LE, "");
    SheetException refused = assertThrows(SheetException.class, () -> SheetReader.headers(wide));
    assertTrue(refused.toDo().contains("UTF-16LE"), refused.getMessage());
    Path packed = write("PK\u0003\u0004xl/worksheets", StandardCharsets.UTF_8, "");
    refused = assertThrows(SheetException.class, () -> SheetReader.headers(packed));
    assertTrue(refused.found().contains("workbook"), refused.getMessage());
  }

  @Test
  void saysThatAFileIsMissing() {
    Path missing = dir.resolve("none.csv");
    SheetException refused = assertThrows(SheetException.class, () -> SheetReader.headers(missing));
    assertEquals("no file that can be opened", refused.found());
    refused = assertThrows(SheetException.class, () -> SheetReader.headers(dir));
    assertEquals("a folder", refused.found());
  }

  private SheetMap map(String charset) throws IOException, SheetException {
    if (charset.isEmpty()) {
      return SheetMap.plain(Schemas.PLAY);
    }
    Path toml = dir.resolve("map.toml");
    Files.writeString(toml, "sheet = \"play\"\n[file]\ncharset = \"" + charset + "\"\n");
    return SheetMap.read(toml, Schemas.ALL);
  }

  private Path write(String text, Charset charset, String mark) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    for (int i = 0; i < mark.length(); i += 2) {
      bytes.write(Integer.parseInt(mark.substring(i, i + 2), 16));
    }
    bytes.write(text.getBytes(charset));
    Path file = dir.resolve("sheet.csv");
    Files.write(file, bytes.toByteArray());
    return file;
  }
}
