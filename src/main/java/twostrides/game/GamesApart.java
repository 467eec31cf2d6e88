package twostrides.game;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import twostrides.sheet.SheetException;

/**
 * Refuses rows that were taken for one game and are several, or run against the clock as a whole:
 * set aside row by row, most of a sheet would be lost and the rest be a game that nobody played.
 */
final class GamesApart {

  /** Rows that it takes to be no slip. Assumed. */
  private static final int LEAST_ROWS = 10;

  /** Share of a game's rows that it takes. Assumed. */
  private static final double LEAST_SHARE = 0.05;

  /** Rows against the clock that are no longer single slips, and their share. Assumed. */
  private static final int LEAST_AGAINST = 20;

  private static final double LEAST_AGAINST_SHARE = 0.2;

  private static final int TEAMS_OF_A_GAME = 2;

  /** Farther apart than any clock reading, so that periods order before clocks. */
  private static final double PERIOD_APART = 1e6;

  private static final String NAME_A_GAME =
      "Name a game column: a column game in the sheet, or game under [columns] in the sheet map,"
          + " for example game = { text = \"{Date} {Away} at {Home}\" }; or make a file of each game.";

  private final String id;
  private final List<ReadRow<PlayRow>> rows;

  private GamesApart(String id, List<ReadRow<PlayRow>> rows) {
    this.id = id;
    this.rows = rows;
  }

  /**
   * Looks at the rows of a game.
   *
   * @param id the game's id
   * @param rows its rows in the sheet's order
   * @throws SheetException when they are several games, or the clock runs backward as a whole
   */
  static void check(String id, List<ReadRow<PlayRow>> rows) throws SheetException {
    GamesApart game = new GamesApart(id, rows);
    game.differ("dates", 1, r -> r.about().date().map(Object::toString));
    game.differ("pairs of teams", 1, GamesApart::pair);
    game.differ("teams", TEAMS_OF_A_GAME, r -> r.row().team());
    game.order();
  }

  private static Optional<String> pair(ReadRow<PlayRow> r) {
    return r.about().home().flatMap(h -> r.about().away().map(a -> a + " at " + h));
  }

  /** How often something is said, in the order of the sheet; slips do not count. */
  private Map<String, Integer> often(Function<ReadRow<PlayRow>, Optional<String>> what) {
    Map<String, Integer> written = new LinkedHashMap<>();
    rows.forEach(r -> what.apply(r).ifPresent(w -> written.merge(w, 1, Integer::sum)));
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, String> spelling = new LinkedHashMap<>();
    written.forEach(
        (w, n) -> counts.merge(spelling.computeIfAbsent(key(w), k -> w), n, Integer::sum));
    counts.values().removeIf(n -> n < LEAST_ROWS || n < LEAST_SHARE * rows.size());
    return counts;
  }

  /** One spelling for all: a team in two spellings is no second game. */
  private static String key(String written) {
    return Normalizer.normalize(written, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s+", "");
  }

  private void differ(String what, int most, Function<ReadRow<PlayRow>, Optional<String>> of)
      throws SheetException {
    Map<String, Integer> found = often(of);
    if (found.size() > most) {
      String examples = String.join(", ", found.keySet().stream().limit(4).toList());
      throw refused(
          found.size()
              + " "
              + what
              + " in the rows of game "
              + id
              + ": "
              + examples
              + (found.size() > 4 ? " and so on" : ""),
          "one game of two teams on one day",
          NAME_A_GAME);
    }
  }

  private void order() throws SheetException {
    int against = against(1, 1);
    if (against < LEAST_AGAINST || against < LEAST_AGAINST_SHARE * rows.size()) {
      return;
    }
    String found = "a clock that runs backward in " + against + " of " + rows.size() + " rows";
    String expected = "the rows of game " + id + " in the order of play";
    if (fits(against(1, -1))) {
      throw refused(
          found + " and would not if it were read the other way",
          expected,
          "Write clock.direction = \"up\" where the clock shows time played, \"down\" where it shows"
              + " time left: the other one than now.");
    }
    if (fits(against(-1, -1))) {
      throw refused(
          found + ": the last row stands first", expected, "Sort the sheet by period and clock.");
    }
    throw refused(
        found, expected, NAME_A_GAME + " If it is one game, sort it by period and clock.");
  }

  private boolean fits(int against) {
    return against <= LEAST_SHARE * rows.size();
  }

  private int against(int period, int clock) {
    double[] times =
        rows.stream()
            .mapToDouble(r -> period * r.row().period() * PERIOD_APART + clock * r.row().elapsed())
            .toArray();
    int n = 0;
    for (boolean b : OrderOfPlay.against(times)) {
      n += b ? 1 : 0;
    }
    return n;
  }

  private SheetException refused(String found, String expected, String toDo) {
    return SheetException.ofFile(rows.get(0).source().file(), found, expected, toDo);
  }
}
