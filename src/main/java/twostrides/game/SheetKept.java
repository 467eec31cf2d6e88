package twostrides.game;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import twostrides.sheet.DoubtfulRow;

/**
 * What a play sheet gave by itself, its rows forgotten: enough to go on from in a later run.
 *
 * @param rowsRead its rows, used or not
 * @param frame how it writes clock and places
 * @param setAside rows that cannot be used
 * @param mended what was put right
 * @param games its games
 * @param <P> what is kept of a game
 */
public record SheetKept<P>(
    int rowsRead,
    Frame frame,
    List<DoubtfulRow> setAside,
    List<Mend> mended,
    List<OfGame<P>> games) {

  /** Copies the lists. */
  public SheetKept {
    setAside = List.copyOf(setAside);
    mended = List.copyOf(mended);
    games = List.copyOf(games);
  }

  /**
   * A game of the sheet.
   *
   * @param had which periods of it are in the sheet
   * @param settled what came of its rows
   */
  record OfGame<P>(Had had, GamesUnread.Settled<P> settled) {}

  /**
   * What tells whether another sheet has the same.
   *
   * @param game the game's id
   * @param periods its periods in the sheet
   * @param rows alike for rows that are alike; empty where there are too few to tell
   */
  record Had(String game, Set<Integer> periods, Optional<String> rows) {}

  /** Which games it has had. */
  List<Had> had() {
    return games.stream().map(OfGame::had).toList();
  }
}
