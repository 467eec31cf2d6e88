package twostrides.game;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;

/**
 * What a run kept of the games that it read, and what became of every row.
 *
 * @param played of games of play sheets, by date, then id
 * @param tagged games of tag sheets, by date, then id
 * @param rowsRead rows of all sheets, headers not counted
 * @param rowsUsed rows that went into the games; two events of one row are one
 * @param setAside doubtful rows, in the order of the sheets and their lines
 * @param unreadable files that could not be read at all and were set aside whole
 * @param mended how many cells or rows were put right and used, by what it was
 * @param <P> what is kept of a game of play sheets
 */
public record GamesRead<P>(
    List<P> played,
    List<TaggedGame> tagged,
    int rowsRead,
    int rowsUsed,
    List<DoubtfulRow> setAside,
    List<SheetException> unreadable,
    Map<Mend, Integer> mended)
    implements RowAccount {

  /** Copies. */
  public GamesRead {
    played = List.copyOf(played);
    tagged = List.copyOf(tagged);
    setAside = List.copyOf(setAside);
    unreadable = List.copyOf(unreadable);
    mended = Collections.unmodifiableMap(new TreeMap<>(mended));
  }

  /**
   * The same with something else of the games of play sheets.
   *
   * @param others what is kept of them, in the same order
   */
  public <Q> GamesRead<Q> with(List<Q> others) {
    return new GamesRead<>(others, tagged, rowsRead, rowsUsed, setAside, unreadable, mended);
  }
}
