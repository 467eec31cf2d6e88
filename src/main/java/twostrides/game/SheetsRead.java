package twostrides.game;

import java.util.List;
import java.util.Map;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;

/**
 * Everything a run read, with nothing lost: rows read = rows used + rows set aside.
 *
 * @param games games of play sheets, by date, then id
 * @param tagged games of tag sheets, by date, then id
 * @param rowsRead rows of all sheets, headers not counted
 * @param rowsUsed rows that went into the tables; two events of one row are one
 * @param setAside doubtful rows, in the order of the sheets and their lines
 * @param unreadable files that could not be read at all and were set aside whole
 * @param mended how many cells or rows were put right and used, by what it was
 */
public record SheetsRead(
    List<Game> games,
    List<TaggedGame> tagged,
    int rowsRead,
    int rowsUsed,
    List<DoubtfulRow> setAside,
    List<SheetException> unreadable,
    Map<Mend, Integer> mended)
    implements RowAccount {

  /**
   * Games that were kept as they are.
   *
   * @param games the games, and what became of every row
   */
  public static SheetsRead of(GamesRead<Game> games) {
    return new SheetsRead(
        games.played(),
        games.tagged(),
        games.rowsRead(),
        games.rowsUsed(),
        games.setAside(),
        games.unreadable(),
        games.mended());
  }
}
