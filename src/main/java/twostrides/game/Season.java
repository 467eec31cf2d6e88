package twostrides.game;

import java.util.List;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;

/**
 * Everything a run read, with nothing lost: rows read = rows used + rows set aside.
 *
 * @param games games of play sheets, by date, then id
 * @param tagged games of tag sheets, by date, then id
 * @param rowsRead rows of all sheets, headers not counted
 * @param setAside doubtful rows, in the order of the sheets and their lines
 * @param unreadable files that could not be read at all and were set aside whole
 */
public record Season(
    List<Game> games,
    List<TaggedGame> tagged,
    int rowsRead,
    List<DoubtfulRow> setAside,
    List<SheetException> unreadable) {

  /** Copies the lists. */
  public Season {
    games = List.copyOf(games);
    tagged = List.copyOf(tagged);
    setAside = List.copyOf(setAside);
    unreadable = List.copyOf(unreadable);
  }

  /** Rows that went into the tables. */
  public int rowsUsed() {
    return games.stream().mapToInt(g -> g.rows().size()).sum()
        + tagged.stream().mapToInt(g -> g.exits().size()).sum();
  }
}
