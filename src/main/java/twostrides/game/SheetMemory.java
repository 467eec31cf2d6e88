package twostrides.game;

import java.nio.file.Path;
import java.util.Optional;
import twostrides.sheet.SheetException;

/**
 * What play sheets gave in earlier runs. A sheet that is remembered need not be read; what a run
 * finds is the same with and without.
 *
 * @param <P> what is kept of a game
 */
public interface SheetMemory<P> {

  /**
   * What a sheet gave; empty where it has to be read.
   *
   * @param sheet the file; asked on any thread
   * @throws SheetException when the run read other bytes from it before
   */
  Optional<SheetKept<P>> of(Path sheet) throws SheetException;

  /**
   * Remembers what a sheet gave by itself.
   *
   * @param sheet the file; told on any thread
   * @param gave what it gave
   */
  void keep(Path sheet, SheetKept<P> gave);

  /** Remembers nothing. */
  static <P> SheetMemory<P> none() {
    return new SheetMemory<>() {
      @Override
      public Optional<SheetKept<P>> of(Path sheet) {
        return Optional.empty();
      }

      @Override
      public void keep(Path sheet, SheetKept<P> gave) {
        // Nothing to remember it in.
      }
    };
  }
}
