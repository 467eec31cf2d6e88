package twostrides.tracking;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import twostrides.sheet.Cell;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetRow;
import twostrides.sheet.SheetStream;

/**
 * The games that a tracking sheet names, from one look through it: which sheets have to be read for
 * a game.
 *
 * @param rows rows of each game named
 * @param unnamed rows that name none
 * @param firstUnnamed line of the first of them, from 1
 * @param broken rows that are doubtful whatever their cells mean
 */
public record GamesNamed(
    Map<String, Integer> rows, int unnamed, OptionalLong firstUnnamed, int broken) {

  /** Sorts and copies. */
  public GamesNamed {
    rows = new TreeMap<>(rows);
  }

  /**
   * Looks through a sheet.
   *
   * @param file the sheet
   * @param map the map, if it needs one
   * @throws SheetException when it cannot be read at all
   */
  public static GamesNamed in(Path file, Optional<SheetMap> map) throws SheetException {
    Look look = new Look();
    SheetStream.read(file, map.orElseGet(() -> SheetMap.plain(TrackForm.TRACKING)), look);
    return new GamesNamed(look.rows, look.unnamed, look.firstUnnamed, look.broken);
  }

  /**
   * The game that a sheet which names none belongs to: the only one, or the one whose id begins its
   * file name; of two such ids the longer.
   *
   * @param file the sheet
   * @param ids the games
   */
  public static Optional<String> ofNameless(Path file, Collection<String> ids) {
    String name = String.valueOf(file.getFileName());
    return ids.stream()
        .filter(id -> ids.size() == 1 || name.startsWith(id))
        .max(Comparator.comparingInt(String::length));
  }

  private static final class Look implements SheetStream.Taker {
    private final Map<String, Integer> rows = new TreeMap<>();
    private int unnamed;
    private OptionalLong firstUnnamed = OptionalLong.empty();
    private int broken;

    @Override
    public void header(Set<String> columnsPresent) {}

    @Override
    public void row(SheetRow row) {
      Optional<Cell> game = row.cell(TrackForm.GAME);
      if (game.isPresent()) {
        rows.merge(game.get().text(), 1, Integer::sum);
      } else {
        firstUnnamed = unnamed == 0 ? OptionalLong.of(row.line()) : firstUnnamed;
        unnamed++;
      }
    }

    @Override
    public void setAside(DoubtfulRow row) {
      broken++;
    }
  }
}
