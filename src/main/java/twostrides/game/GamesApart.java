package twostrides.game;

import static java.util.stream.Collectors.joining;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntBinaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetRow;

/**
 * Refuses rows that were taken for one game and are several, or run against the clock as a whole:
 * set aside row by row, most of a sheet would be lost and the rest be a game that nobody played.
 */
final class GamesApart<T> {

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

  private final String id;
  private final List<ReadRow<T>> rows;

  private GamesApart(String id, List<ReadRow<T>> rows) throws SheetException {
    this.id = id;
    this.rows = rows;
    differ("dates", 1, r -> r.about().date().map(Object::toString));
    differ("pairs of teams", 1, GamesApart::pair);
  }

  /**
   * Looks at the rows of a game.
   *
   * @param id the game's id
   * @param rows its rows in the sheet's order
   * @throws SheetException when they are several games, or the clock runs backward as a whole
   */
  static void check(String id, List<ReadRow<PlayRow>> rows) throws SheetException {
    GamesApart<PlayRow> game = new GamesApart<>(id, rows);
    game.differ("teams", TEAMS_OF_A_GAME, r -> r.row().team());
    game.order(PlayRow::period, PlayRow::elapsed);
  }

  /**
   * Looks at the rows of a tagged game.
   *
   * @param id the game's id
   * @param rows its rows in the sheet's order
   * @throws SheetException when they are several games
   */
  static void checkTags(String id, List<ReadRow<TaggedExit>> rows) throws SheetException {
    new GamesApart<>(id, rows)
        .differ(
            "pairs of teams",
            1,
            r ->
                r.row()
                    .opponent()
                    .map(o -> Stream.of(o, r.row().team()).sorted().collect(joining(" and "))));
  }

  /** How several games in one file are told apart: with the columns that this sheet has. */
  private static String nameAGame(SheetRow row) {
    List<String> told =
        Stream.of(SheetForms.DATE, SheetForms.AWAY, SheetForms.HOME)
            .flatMap(c -> row.header(c).stream())
            .map(h -> "{" + h + "}")
            .toList();
    if (told.isEmpty()) {
      return "Give each game an id: add a column game to the sheet"
          + row.map().map(m -> " (game = \"...\" under [columns] in " + m + " names it)").orElse("")
          + ", or make a file of each game.";
    }
    return gameKey(row, "{ text = \"" + String.join(" ", told) + "\" }");
  }

  /** How rows are given a game's id: a line for a map that there is, or a map to write. */
  static String gameKey(SheetRow row, String source) {
    return "Give each game an id: "
        + row.map()
            .map(m -> "in " + m + " write, under [columns], game = " + source)
            .orElse(
                "add a column game to the sheet, or save the three lines sheet = \"play\", [columns]"
                    + " and game = "
                    + source
                    + " as games.toml and add --map games.toml")
        + ".";
  }

  private static Optional<String> pair(ReadRow<?> r) {
    return r.about().home().flatMap(h -> r.about().away().map(a -> a + " at " + h));
  }

  /** How often something is said, in the order of the sheet; slips do not count. */
  private Map<String, Integer> often(Function<ReadRow<T>, Optional<String>> what) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    rows.forEach(r -> what.apply(r).ifPresent(w -> counts.merge(w, 1, Integer::sum)));
    counts.values().removeIf(n -> n < LEAST_ROWS || n < LEAST_SHARE * rows.size());
    return counts;
  }

  private void differ(String what, int most, Function<ReadRow<T>, Optional<String>> of)
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
          nameAGame(rows.get(0).source())
              + (what.equals("teams")
                  ? " Where two of the names are one team, write them alike, or translate one under"
                      + " [values.team] in a sheet map."
                  : ""));
    }
  }

  private void order(ToIntFunction<T> period, ToDoubleFunction<T> elapsed) throws SheetException {
    IntBinaryOperator count =
        (p, c) ->
            against(r -> p * period.applyAsInt(r) * PERIOD_APART + c * elapsed.applyAsDouble(r));
    int against = count.applyAsInt(1, 1);
    if (against < LEAST_AGAINST || against < LEAST_AGAINST_SHARE * rows.size()) {
      return;
    }
    String found = "a clock that runs backward in " + against + " of " + rows.size() + " rows";
    String expected = "the rows of game " + id + " in the order of play";
    if (fits(count.applyAsInt(1, -1))) {
      throw refused(
          found + " and would not if it were read the other way",
          expected,
          "Write clock.direction = \"up\" where the clock shows time played, \"down\" where it shows"
              + " time left: the other one than now.");
    }
    if (fits(count.applyAsInt(-1, -1))) {
      throw refused(
          found + ": the last row stands first", expected, "Sort the sheet by period and clock.");
    }
    throw refused(
        found,
        expected,
        nameAGame(rows.get(0).source()) + " If it is one game, sort it by period and clock.");
  }

  private boolean fits(int against) {
    return against <= LEAST_SHARE * rows.size();
  }

  private int against(ToDoubleFunction<T> time) {
    int n = 0;
    for (boolean b :
        OrderOfPlay.against(
            rows.stream().mapToDouble(r -> time.applyAsDouble(r.row())).toArray())) {
      n += b ? 1 : 0;
    }
    return n;
  }

  private SheetException refused(String found, String expected, String toDo) {
    return SheetException.ofFile(rows.get(0).source().file(), found, expected, toDo);
  }
}
