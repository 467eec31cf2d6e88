package twostrides.sanity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.checks.Printed;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.SheetsRead;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;

/** The open games through their maps: nothing is doubted, and every period runs the right way. */
class OpenSheetsTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path OPEN =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  @ParameterizedTest
  @CsvSource({
    "womens-2022-open-data, *.events.csv",
    "women-2018-19, women-2018-19/sheets/*.csv",
    "women-2023, women-2023/sheets/*.csv",
    "men-2024, men-2024/sheets/*.csv",
    "women-league-2021, women-league-2021/sheets/*.csv",
    "tracked-2023, tracked-2023/native/*.csv"
  })
  void nothingIsDoubted(String map, String sheets) throws Exception {
    if (!Files.isDirectory(OPEN.resolve("women-2023"))) {
      System.err.println("SKIPPED: no open games at " + OPEN + " (set -Dtwostrides.openData)");
    }
    assumeTrue(Files.isDirectory(OPEN.resolve("women-2023")), "no open games at " + OPEN);
    Optional<SheetMap> used =
        Optional.of(SheetMap.read(Path.of("docs/maps", map + ".toml"), SheetForms.ALL));
    List<Path> files = SheetFiles.find(List.of(OPEN.resolve(sheets).toString()));
    assertEquals(List.of(), Doubts.of(files, used));
    SheetsRead s = SeasonReader.read(files, used, false, n -> {});
    int shots = 0;
    int far = 0;
    int periods = 0;
    for (Game g : s.games()) {
      for (int period : g.rows().stream().map(PlayRow::period).distinct().toList()) {
        for (String team : List.of(g.home(), g.away())) {
          List<PlayRow> taken =
              g.rows().stream()
                  .filter(r -> r.action() == Action.SHOT && r.place().isPresent())
                  .filter(r -> r.period() == period && r.team().equals(Optional.of(team)))
                  .toList();
          long ahead = taken.stream().filter(r -> r.place().get().x() > 0).count();
          assertTrue(2 * ahead >= taken.size(), g.id() + ", " + period + ", " + team);
          shots += taken.size();
          far += Math.toIntExact(ahead);
          periods += taken.isEmpty() ? 0 : 1;
        }
      }
    }
    assertEquals(s.rowsRead(), s.rowsUsed() + s.setAside().size());
    assertTrue(s.setAside().size() <= 0.005 * s.rowsRead(), s.setAside().size() + " set aside");
    FIGURES.say(
        "%s: %d rows read, %d used, %d set aside; %d of %d shots in the far half, in every one of %d"
            + " teams' periods most of them",
        map, s.rowsRead(), s.rowsUsed(), s.setAside().size(), far, shots, periods);
  }
}
