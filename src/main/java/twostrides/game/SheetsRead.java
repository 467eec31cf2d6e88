package twostrides.game;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import twostrides.rink.Rink;
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
 * @param frames how each game of play sheets writes clock and places, by its id
 * @param mended how many cells or rows were put right and used, by what it was
 */
public record SheetsRead(
    List<Game> games,
    List<TaggedGame> tagged,
    int rowsRead,
    List<DoubtfulRow> setAside,
    List<SheetException> unreadable,
    Map<String, Frame> frames,
    Map<Mend, Integer> mended) {

  /** Copies. */
  public SheetsRead {
    games = List.copyOf(games);
    tagged = List.copyOf(tagged);
    setAside = List.copyOf(setAside);
    unreadable = List.copyOf(unreadable);
    frames = Map.copyOf(frames);
    mended = Collections.unmodifiableMap(new TreeMap<>(mended));
  }

  /** Rows that went into the tables; two events of one row are one. */
  public int rowsUsed() {
    return (int) games.stream().flatMap(g -> g.rows().stream()).filter(r -> !r.second()).count()
        + tagged.stream().mapToInt(g -> g.exits().size()).sum();
  }

  /** Seconds of a period by game id; where a game has both kinds of sheet, the play sheet's. */
  public Map<String, Double> periodLengths() {
    Map<String, Double> lengths = new TreeMap<>();
    games.forEach(g -> lengths.put(g.id(), g.periodLength()));
    tagged.forEach(g -> lengths.putIfAbsent(g.id(), g.periodLength()));
    return Collections.unmodifiableMap(lengths);
  }

  /** The rink to draw: that of the first game, as the sheets share one map. */
  public Rink rink() {
    return Stream.concat(games.stream().map(Game::rink), tagged.stream().map(TaggedGame::rink))
        .findFirst()
        .orElse(Rink.NORTH_AMERICAN);
  }
}
