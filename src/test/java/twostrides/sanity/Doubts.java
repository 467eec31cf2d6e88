package twostrides.sanity;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import twostrides.game.GamesRead;
import twostrides.game.SeasonReader;
import twostrides.game.SheetMemory;
import twostrides.game.Usual;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetMaps;

/** What is doubted of sheets, for tests. */
final class Doubts {
  private Doubts() {}

  static List<Doubt> of(List<Path> sheets, Optional<SheetMap> map) throws SheetException {
    SheetMaps maps = SheetMaps.of(map);
    GamesRead<Optional<GameSigns>> read =
        SeasonReader.read(
            sheets, maps, false, Usual.DEFAULT, n -> {}, GameSigns::of, SheetMemory.none());
    return SheetDoubts.of(
        read.played().stream().flatMap(Optional::stream).toList(), read.tagged(), maps);
  }
}
