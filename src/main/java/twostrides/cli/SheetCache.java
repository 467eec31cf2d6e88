package twostrides.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import twostrides.game.SheetKept;
import twostrides.game.SheetMemory;
import twostrides.sheet.SheetException;

/**
 * Play sheets of earlier runs, found by their names and bytes.
 *
 * @param <P> what is kept of a game
 */
final class SheetCache<P> implements SheetMemory<P> {

  private final CacheShelf<SheetKept<P>> shelf;
  private final Map<Path, Optional<String>> keys = new ConcurrentHashMap<>();

  SheetCache(CacheShelf<SheetKept<P>> shelf) {
    this.shelf = shelf;
  }

  @Override
  public Optional<SheetKept<P>> of(Path sheet) throws SheetException {
    Optional<String> key = shelf.key(List.of(), List.of(sheet));
    keys.put(sheet, key);
    return shelf.known(key);
  }

  @Override
  public void keep(Path sheet, SheetKept<P> gave) {
    shelf.keep(keys.get(sheet), gave);
  }
}
