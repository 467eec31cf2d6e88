package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Zoë is one player, however her accent is written, and a file name is said or refused. */
class ComposedNamesTest {

  private static final String ONE = "Zo\u00EB";
  private static final String TWO = "Zoe\u0308";

  @TempDir Path dir;

  private static List<String> names(Path sheet, SheetMap map) throws SheetException {
    List<String> names = new ArrayList<>();
    for (SheetRow row : SheetReader.read(sheet, map).rows()) {
      names.add(row.cell("team").orElseThrow().text());
    }
    List<String> streamed = new ArrayList<>();
    SheetStream.read(
        sheet,
        map,
        new SheetStream.Taker() {
          @Override
          public void header(Set<String> columnsPresent) {}

          @Override
          public void row(SheetRow row) {
            streamed.add(row.cell("team").orElseThrow().text());
          }

          @Override
          public void setAside(DoubtfulRow row) {}
        });
    assertEquals(names, streamed);
    return names;
  }

  private Path sheet(String header, String... teams) throws IOException {
    StringBuilder text = new StringBuilder("period,clock,action," + header + "\n");
    for (String team : teams) {
      text.append("1,19:00,pass,").append(team).append('\n');
    }
    return Files.writeString(dir.resolve("g.csv"), text);
  }

  @Test
  void accentsWrittenApartAreComposed() throws Exception {
    assertEquals(List.of(ONE, ONE), names(sheet("team", ONE, TWO), SheetMap.plain(Schemas.PLAY)));
  }

  @Test
  void aMapAndASheetMayWriteAccentsDifferently() throws Exception {
    for (List<String> pair : List.of(List.of(ONE, TWO), List.of(TWO, ONE))) {
      Path map =
          Files.writeString(
              dir.resolve("m.toml"),
              "sheet = \"play\"\n[columns]\nteam = \"%s\"\n[values.team]\n\"%s\" = \"Herons\"\n"
                  .formatted(pair.get(0), pair.get(0)));
      Path sheet = sheet(pair.get(1), pair.get(1));
      assertEquals(List.of("Herons"), names(sheet, SheetMap.read(map, Schemas.ALL)));
    }
  }

  @Test
  void aGameNamedByItsFileIsComposedToo() {
    assertEquals(ONE, Sheet.stem(Path.of(TWO + ".csv")));
  }

  /** What stands in a name for letters that the machine does not have would reach the book. */
  @Test
  void aNameThatTheMachineCannotSayIsRefused() throws IOException {
    Path file = Files.writeString(dir.resolve("zo\uFFFD.csv"), "a\n");
    for (String arg : List.of(file.toString(), dir.toString(), "gone\uFFFD.csv")) {
      SheetException e = assertThrows(SheetException.class, () -> SheetFiles.find(List.of(arg)));
      assertTrue(e.getMessage().contains("the character set of this machine"), e.getMessage());
      assertTrue(e.getMessage().contains("LC_ALL=C.UTF-8"), e.getMessage());
    }
  }
}
