package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

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
import org.junit.jupiter.params.provider.MethodSource;
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
    Season season =
        SeasonReader.read(SheetFiles.find(List.of(sheet.toString())), map, false, n -> {});
    assertEquals(
        List.of(), season.setAside().stream().map(d -> d.problems().get(0).message()).toList());
    assertFalse(season.games().isEmpty());
    return season
        .games()
        .toString()
        .replaceAll("sheet=[^,]*, line=\\d+", "")
        .replaceAll("id=(Wolves at Herons|native)", "id=G")
        .replace("PlayRow[", "\nPlayRow[");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aMappedSheetGivesTheGamesOfTheNativeOne(String name) throws Exception {
    Path folder = CASES.resolve(name);
    assertEquals(
        read(folder.resolve("native.csv"), Optional.empty()).replace("id=sheet", "id=G"),
        read(sheet(folder), Optional.of(folder.resolve("map.toml"))).replace("id=sheet", "id=G"));
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
}
