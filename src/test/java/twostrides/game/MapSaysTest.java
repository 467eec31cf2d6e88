package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import twostrides.sheet.SetAside;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;

/**
 * What a map can say, as cases: a sheet read through {@code map.toml} gives the games of {@code
 * native.csv}, which is in our own columns. Each case's README.txt says what it shows.
 */
class MapSaysTest {

  private static final Path CASES = Path.of("src/test/resources/twostrides/game/maps");

  @TempDir Path dir;

  static List<String> cases() throws IOException {
    try (Stream<Path> folders = Files.list(CASES)) {
      return folders.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private static Path sheet(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> !f.endsWith("map.toml") && !f.endsWith("native.csv"))
          .filter(f -> !f.endsWith("README.txt"))
          .findFirst()
          .orElseThrow();
    }
  }

  /** The games without file names, and without lines, which JSON counts in its own way. */
  private static String read(Path sheet, Optional<Path> toml) throws SheetException {
    Optional<SheetMap> map = Optional.empty();
    if (toml.isPresent()) {
      map = Optional.of(SheetMap.read(toml.get(), SheetForms.ALL));
    }
    SheetsRead season =
        SeasonReader.read(SheetFiles.find(List.of(sheet.toString())), map, false, n -> {});
    assertEquals(
        List.of(),
        season.setAside().stream()
            .filter(d -> d.row().skipReason().isEmpty())
            .map(d -> d.problems().get(0).message())
            .toList());
    assertEquals(season.rowsRead(), season.rowsUsed() + season.setAside().size());
    assertFalse(season.games().isEmpty() && season.tagged().isEmpty());
    return (season.games().toString() + season.tagged())
        .replaceAll("sheet=[^,]*, line=\\d+(, second=\\w+)?", "")
        .replaceAll("id=(Wolves at Herons|native)", "id=G")
        .replace("PlayRow[", "\nPlayRow[")
        .replace("TaggedExit[", "\nTaggedExit[");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aMappedSheetGivesTheGamesOfTheNativeOne(String name) throws Exception {
    Path folder = CASES.resolve(name);
    assertEquals(
        read(folder.resolve("native.csv"), Optional.empty()).replace("id=sheet", "id=G"),
        read(sheet(folder), Optional.of(folder.resolve("map.toml"))).replace("id=sheet", "id=G"));
  }

  /** Of two events in one row neither is used without the other, and the row counts once. */
  @ParameterizedTest
  @CsvSource({"Wolves, 99, 5", "Storks, 18, 5", "Wolves, 18, 6"})
  void twoEventsOfARowAreSetAsideTogether(String team, String x, int used) throws Exception {
    Path folder = CASES.resolve("two-events-in-one-row");
    String more = "1,19:40,Wolves,4,REC,12,3,,,,\n1,19:30,Herons,8,REC,12,3,,,,\n";
    Path sheet =
        Files.writeString(
            dir.resolve("sheet.csv"),
            Files.readString(folder.resolve("sheet.csv"))
                    .replace("Wolves,4,18", team + ",4," + x)
                    .replace("1,19:50", "1,19:50,Wolves,4,REC,12,3,,,,\n1,19:50")
                + more);
    SheetsRead season =
        SeasonReader.read(
            List.of(sheet),
            Optional.of(SheetMap.read(folder.resolve("map.toml"), SheetForms.ALL)),
            false,
            n -> {});
    assertEquals(6, season.rowsRead());
    assertEquals(used, season.rowsUsed());
    assertEquals(6 - used, season.setAside().size());
  }

  @Test
  void packedSheetsAreReadAsTheyAre() throws Exception {
    Path plain = CASES.resolve("json-lines/native.csv");
    byte[] bytes = Files.readAllBytes(plain);
    Path gz = dir.resolve("native.csv.gz");
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(gz))) {
      out.write(bytes);
    }
    Path zip = dir.resolve("season.zip");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
      for (String entry : List.of("a/native.csv", "a/notes.md", "__MACOSX/a/native.csv")) {
        out.putNextEntry(new ZipEntry(entry));
        out.write(bytes);
      }
    }
    String expected = read(plain, Optional.empty());
    assertEquals(expected, read(gz, Optional.empty()));
    assertEquals(expected, read(zip, Optional.empty()));
    Path inZip = SheetFiles.find(List.of(zip.toString())).get(0);
    assertEquals(zip + "/a/native.csv", SheetFiles.display(inZip));
    assertEquals(List.of(zip), SheetFiles.onDisk(List.of(inZip)));
  }

  private String refused(String name, String text) throws IOException {
    Path file = Files.writeString(dir.resolve(name), text);
    SheetException e =
        assertThrows(
            SheetException.class,
            () ->
                SeasonReader.read(
                    List.of(file), Optional.of(SheetMap.plain(SheetForms.PLAY)), false, n -> {}));
    return e.getMessage().replace(file.toString(), name);
  }

  @Test
  void whatIsNoSheetInJsonIsNamed() throws Exception {
    String cutOff = refused("g.json", "[{\"period\": 1},\n{\"per");
    assertTrue(cutOff.startsWith("g.json, line 2: found something that is not JSON ("), cutOff);
    String twice = refused("g.jsonl", "{\"period\": 1, \"period\": 2}");
    assertTrue(twice.contains("Duplicate field"), twice);
    String two = refused("g.json", "{\"a\": {\"b\": [{\"x\": 1}]}, \"c\": [{\"x\": 1}]}");
    assertTrue(two.contains("several lists of objects: \"a.b\", \"c\""), two);
    assertTrue(two.contains("rows = \"a.b\""), two);
    for (String none : List.of("[]", "{}", "3", "[1, 2]", "{\"a\": [1]}", "")) {
      String message = refused("g.json", none);
      assertTrue(message.startsWith("g.json: found no list of objects"), message);
    }
    String gz = refused("g.csv.gz", "period,clock\n");
    assertTrue(gz.startsWith("g.csv.gz: found a file that cannot be unpacked"), gz);
  }

  private SheetsRead fixed(String rows, String map) throws IOException, SheetException {
    Path toml = Files.writeString(dir.resolve("m.toml"), "sheet = \"play\"\n" + map);
    Path sheet =
        Files.writeString(
            dir.resolve("g.csv"),
            "period,clock,home,away,team,action,x_m,y_m,home_attacks\n" + rows);
    SheetMap read = SheetMap.read(toml, SheetForms.ALL);
    return SeasonReader.read(List.of(sheet), Optional.of(read), false, n -> {});
  }

  @Test
  void aDirectionThatIsSaidInSomeRowsIsNeededInAll() throws Exception {
    String rows =
        "1,10:00,A,B,A,recovery,10,3,plus_x\n1,9:00,A,B,B,recovery,10,3,\n"
            + "1,8:00,A,B,B,recovery,,,\n1,7:00,A,B,B,recovery,10,3,upward\n";
    SheetsRead season = fixed(rows, "[place]\nview = \"rink_fixed\"\n");
    assertEquals(
        List.of(
            "3 plus_x or minus_x, as in other rows of game g", "5 one of: \"plus_x\", \"minus_x\""),
        season.setAside().stream()
            .map(d -> d.row().line() + " " + d.problems().get(0).expected())
            .toList());
    SheetsRead given =
        fixed(rows, "[place]\nview = \"rink_fixed\"\nhome_attacks_plus_x_in = [1]\n");
    assertEquals(1, given.setAside().size());
    SheetsRead acting = fixed(rows, "");
    assertTrue(
        acting.setAside().get(0).problems().get(0).expected().startsWith("no direction of attack"));
  }

  @Test
  void rowsOfJsonAreSetAsideAsCells() throws Exception {
    Path sheet =
        Files.writeString(
            dir.resolve("g.jsonl"),
            "{\"period\": 1, \"clock\": \"10:00\", \"team\": \"A, B\", \"action\": \"dance\"}\n");
    SheetsRead season =
        SeasonReader.read(
            List.of(sheet), Optional.of(SheetMap.plain(SheetForms.PLAY)), false, n -> {});
    SetAside.write(dir.resolve("aside"), season.setAside(), List.of());
    assertEquals(
        "period,clock,team,action\n1,10:00,\"A, B\",dance\n",
        Files.readString(dir.resolve("aside/g.csv")));
  }
}
