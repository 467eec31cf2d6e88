package twostrides.game;

import java.util.List;
import java.util.Map;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;

/** What became of every row of the sheets: rows read = rows used + rows set aside. */
public interface RowAccount {

  /** Rows of all sheets, headers not counted. */
  int rowsRead();

  /** Rows that went into the tables; two events of one row are one. */
  int rowsUsed();

  /** Doubtful rows, in the order of the sheets and their lines. */
  List<DoubtfulRow> setAside();

  /** Files that could not be read at all and were set aside whole. */
  List<SheetException> unreadable();

  /** How many cells or rows were put right and used, by what it was. */
  Map<Mend, Integer> mended();
}
