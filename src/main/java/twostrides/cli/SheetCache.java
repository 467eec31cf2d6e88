package twostrides.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import twostrides.game.SheetKept;
import twostrides.game.SheetMemory;
import twostrides.sheet.FilesRead;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;

/**
 * Play sheets of earlier runs, found by their names and bytes.
 *
 * @param <P> what is kept of a game
 */
final class SheetCache<P> implements SheetMemory<P> {

  private final CacheShelf<SheetKept<P>> shelf;
  private final Map<Path, List<String>> asked = new ConcurrentHashMap<>();

  SheetCache(CacheShelf<SheetKept<P>> shelf) {
    this.shelf = shelf;
  }

  @Override
  public Optional<SheetKept<P>> of(Path sheet) throws SheetException {
    if (!shelf.open()) {
      return Optional.empty();
    }
    // A file that cannot be read says why as it is read.
    List<String> about = List.of(SheetFiles.display(sheet), FilesRead.hashed(sheet).orElse("none"));
    asked.put(sheet, about);
    return shelf.find(about);
  }

  @Override
  public void keep(Path sheet, SheetKept<P> gave) {
    if (shelf.open()) {
      shelf.keep(asked.get(sheet), gave);
    }
  }
}
