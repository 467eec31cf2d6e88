package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Workbooks, written here part by part as a spreadsheet does. */
class WorkbookTest {

  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  /** Formats of cells by the number in their attribute s. */
  private static final List<String> FORMATS =
      List.of(
          "General",
          "yyyy\\-mm\\-dd",
          "h:mm",
          "h:mm:ss",
          "mm:ss",
          "0.00",
          "dd.mm.yyyy hh:mm",
          "\"day\" 0",
          "[h]:mm:ss",
          "[mm]:ss.0");

  @TempDir Path dir;

  private Path book(Map<String, String> sheets) throws IOException {
    Map<String, String> parts = new LinkedHashMap<>();
    StringBuilder types = new StringBuilder();
    StringBuilder listed = new StringBuilder();
    StringBuilder links = new StringBuilder();
    String rel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    int n = 0;
    for (Map.Entry<String, String> sheet : sheets.entrySet()) {
      n++;
      types.append(
          "<Override PartName='/xl/worksheets/sheet%d.xml' ContentType='application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml'/>"
              .formatted(n));
      listed.append("<sheet name='%s' sheetId='%d' r:id='r%d'/>".formatted(sheet.getKey(), n, n));
      links.append(
          "<Relationship Id='r%d' Type='%s/worksheet' Target='worksheets/sheet%d.xml'/>"
              .formatted(n, rel, n));
      parts.put(
          "xl/worksheets/sheet%d.xml".formatted(n),
          "<worksheet xmlns='%s'><sheetData>%s</sheetData></worksheet>"
              .formatted(MAIN, sheet.getValue()));
    }
    StringBuilder formats = new StringBuilder();
    StringBuilder styles = new StringBuilder();
    for (int i = 0; i < FORMATS.size(); i++) {
      formats.append(
          "<numFmt numFmtId='%d' formatCode='%s'/>"
              .formatted(170 + i, FORMATS.get(i).replace("\"", "&quot;")));
      styles.append("<xf numFmtId='%d'/>".formatted(170 + i));
    }
    parts.put(
        "[Content_Types].xml",
        "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'><Override PartName='/xl/workbook.xml' ContentType='application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml'/><Override PartName='/xl/styles.xml' ContentType='application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml'/><Override PartName='/xl/sharedStrings.xml' ContentType='application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml'/>"
            + types
            + "</Types>");
    parts.put(
        "_rels/.rels",
        "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'><Relationship Id='r1' Type='%s/officeDocument' Target='xl/workbook.xml'/></Relationships>"
            .formatted(rel));
    parts.put(
        "xl/workbook.xml",
        "<workbook xmlns='%s' xmlns:r='%s'><sheets>%s</sheets></workbook>"
            .formatted(MAIN, rel, listed));
    parts.put(
        "xl/_rels/workbook.xml.rels",
        "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>"
            + links
            + "<Relationship Id='s' Type='%s/styles' Target='styles.xml'/><Relationship Id='t' Type='%s/sharedStrings' Target='sharedStrings.xml'/></Relationships>"
                .formatted(rel, rel));
    parts.put(
        "xl/styles.xml",
        "<styleSheet xmlns='%s'><numFmts>%s</numFmts><cellXfs>%s</cellXfs></styleSheet>"
            .formatted(MAIN, formats, styles));
    parts.put(
        "xl/sharedStrings.xml",
        "<sst xmlns='%s'><si><t>period</t></si><si><t>Herons</t></si></sst>".formatted(MAIN));
    Path file = dir.resolve("g.xlsx");
    try (OutputStream disk = Files.newOutputStream(file);
        ZipOutputStream out = new ZipOutputStream(disk)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return file;
  }

  private static String text(String at, String text) {
    return "<c r='%s' t='inlineStr'><is><t>%s</t></is></c>".formatted(at, text);
  }

  private static String number(String at, int format, String value) {
    return "<c r='%s' s='%d'><v>%s</v></c>".formatted(at, format, value);
  }

  private static String row(int n, String cells) {
    return "<row r='%d'>%s</row>".formatted(n, cells);
  }

  private List<String> cells(String row, char decimal) throws Exception {
    Path file = book(Map.of("Game", row(1, text("A1", "a") + text("B1", "b")) + row(3, row)));
    FileSettings settings =
        new FileSettings(Optional.empty(), Optional.empty(), decimal, Optional.empty());
    Records.Entry entry = WorkbookRecords.read(file, settings).entries().get(1);
    assertEquals(3, entry.line());
    return new ArrayList<>(entry.cells());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "0, 26, 26",
        "5, 26.0, 26",
        "0, 12.300000000000001, 12.3",
        "0, -7.5E-2, -0.075",
        "1, 48125, 2031-10-04",
        "6, 48125.8125, 2031-10-04 19:30",
        "2, 0.54652777777777772, 13:07",
        "3, 0.54652777777777772, 13:07",
        "3, 9.1087962962962971E-3, 13:07",
        "4, 9.1087962962962971E-3, 13:07",
        "8, 0.83333333333333337, 20:00",
        "9, 6.9560185185185185E-3, 10:01",
        "9, 6.9618055555555554E-3, 10:01.5",
        "7, 3, 3"
      })
  void aNumberIsWhatACsvFileWouldHold(int format, String value, String read) throws Exception {
    assertEquals(List.of(read, ""), cells(number("A3", format, value), '.'));
  }

  @Test
  void theDecimalMarkIsTheMaps() throws Exception {
    assertEquals(List.of("12,5", "x"), cells(number("A3", 0, "12.5") + text("B3", "x"), ','));
  }

  @Test
  void formulasBooleansAndEmptyCellsAreText() throws Exception {
    assertEquals(
        List.of("5", "TRUE"),
        cells("<c r='A3'><f>2+3</f><v>5</v></c><c r='B3' t='b'><v>1</v></c>", '.'));
    assertEquals(
        List.of("Herons", "", "3"),
        cells("<c r='A3' t='s'><v>1</v></c>" + number("C3", 0, "3"), '.'));
  }

  private String refused(Path file, Optional<String> rows) {
    FileSettings settings = new FileSettings(Optional.empty(), Optional.empty(), '.', rows);
    return assertThrows(SheetException.class, () -> WorkbookRecords.read(file, settings))
        .getMessage();
  }

  @Test
  void oneOfSeveralSheetsIsNamed() throws Exception {
    String head = row(1, text("A1", "period"));
    Map<String, String> sheets = new LinkedHashMap<>(Map.of("Notes", ""));
    sheets.put("Game 1", head + row(2, number("A2", 0, "1")));
    sheets.put("Game 2", head + row(2, number("A2", 0, "2")));
    Path file = book(sheets);
    assertTrue(
        refused(file, Optional.empty())
            .contains(
                "several sheets with rows in the workbook: \"Game 1\", \"Game 2\", expected one that"
                    + " holds the rows. What to do: Name it in a sheet map, under [file]: rows ="
                    + " \"Game 1\"."));
    assertTrue(refused(file, Optional.of("Game 3")).contains("no sheet \"Game 3\""));
    FileSettings second =
        new FileSettings(Optional.empty(), Optional.empty(), '.', Optional.of("game 2"));
    assertEquals(List.of("2"), WorkbookRecords.read(file, second).entries().get(1).cells());
  }

  @Test
  void whatIsNoWorkbookIsRefused() throws Exception {
    for (String text : List.of("period,clock\n1,2\n", "PK\u0003\u0004", "")) {
      Path file = Files.writeString(dir.resolve("g.xlsx"), text);
      assertTrue(refused(file, Optional.empty()).contains("a workbook that cannot be read"));
    }
    Path entity = book(Map.of("Game", row(1, text("A1", "&lol;"))));
    assertTrue(refused(entity, Optional.empty()).contains("a workbook that cannot be read"));
  }

  @Test
  void aWorkbookThatUnpacksToMoreThanTheMemoryIsRefused() throws Exception {
    Path file = dir.resolve("g.xlsx");
    byte[] blanks = new byte[1 << 20];
    try (OutputStream disk = Files.newOutputStream(file);
        ZipOutputStream out = new ZipOutputStream(disk)) {
      out.putNextEntry(new ZipEntry("xl/workbook.xml"));
      for (long n = 0; n <= WorkbookRecords.LARGEST; n += blanks.length) {
        out.write(blanks);
      }
    }
    assertTrue(Files.size(file) < 1_000_000);
    assertTrue(refused(file, Optional.empty()).contains("more than 500 MB when unpacked"));
  }

  /** Through reader and map: a row is used, a doubtful cell is named with file, row and column. */
  @Test
  void aSheetIsReadAsItsCsvFile() throws Exception {
    Path file =
        book(
            Map.of(
                "Game",
                row(
                        1,
                        "<c r='A1' t='s'><v>0</v></c>"
                            + text("B1", "clock")
                            + text("C1", "team")
                            + text("D1", "action"))
                    + row(
                        2,
                        number("A2", 0, "1")
                            + number("B2", 2, "0.54652777777777772")
                            + text("C2", "Herons")
                            + text("D2", "pass"))
                    + row(
                        4,
                        number("A4", 0, "1")
                            + text("B4", "12:60")
                            + "<c r='C4' t='s'><v>1</v></c>"
                            + number("F4", 0, "7"))));
    Sheet sheet = SheetReader.read(file, SheetMap.plain(Schemas.PLAY));
    assertEquals(2, sheet.rowsRead());
    assertEquals("13:07", sheet.rows().get(0).cell("clock").orElseThrow().text());
    assertEquals("1,12:60,Herons,,,7", sheet.setAside().get(0).row().raw());
    assertTrue(
        sheet
            .setAside()
            .get(0)
            .problems()
            .get(0)
            .message()
            .startsWith(file + ", line 4: found \"6 cells: 1,12:60,Herons,,,7\""));
    List<SheetRow> streamed = new ArrayList<>();
    SheetStream.read(
        file,
        SheetMap.plain(Schemas.PLAY),
        new SheetStream.Taker() {
          @Override
          public void header(Set<String> columnsPresent) {}

          @Override
          public void row(SheetRow row) {
            streamed.add(row);
          }

          @Override
          public void setAside(DoubtfulRow row) {}
        });
    assertEquals(1, streamed.size());
  }
}
