package twostrides.game;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetRow;

/**
 * Which games the sheets of a run have had: no period of a game may stand in two sheets, and no
 * game under two ids. A sheet that is refused has had none.
 */
final class GamesTaken {

  /** Rows from which on no two games agree in all their clocks and teams by chance. Assumed. */
  private static final int TELLING = 50;

  /**
   * When a row was, and whose: two games that agree in this, row for row, are one.
   *
   * @param period period
   * @param elapsed seconds since the period began
   * @param team the acting team
   */
  record When(int period, double elapsed, Optional<String> team) {
    static When of(PlayRow row) {
      return new When(row.period(), row.elapsed(), row.team());
    }

    static When of(TaggedExit exit) {
      return new When(exit.period(), exit.elapsed(), Optional.of(exit.team()));
    }

    /** Alike for rows that are alike: a league's are too many to keep. */
    private static UUID key(List<When> rows) {
      ByteBuffer all = ByteBuffer.allocate(rows.size() * (2 * Integer.BYTES + Double.BYTES));
      rows.forEach(r -> all.putInt(r.period).putDouble(r.elapsed).putInt(r.team.hashCode()));
      return UUID.nameUUIDFromBytes(all.array());
    }
  }

  private final Map<String, String> sheetOfPeriod = new HashMap<>();
  private final Map<UUID, String> gameOfRows = new HashMap<>();

  /**
   * Takes all rows of a sheet, or none.
   *
   * @param sheet the sheet
   * @param when when one of its rows was
   * @param into where they go
   * @throws SheetException when it has what another sheet had, or rows of several games as one
   */
  <R> void take(RowsOfSheet<R> sheet, Function<R, When> when, GamesUnread<R, ?> into)
      throws SheetException {
    Map<String, String> periods = new LinkedHashMap<>();
    Map<String, List<ReadRow<R>>> games = new LinkedHashMap<>();
    String game = "";
    int of = -1;
    for (ReadRow<R> r : sheet.rows()) {
      int period = when.apply(r.row()).period();
      if (period != of || !r.gameId().equals(game)) {
        game = r.gameId();
        of = period;
        String name = game + ", period " + of;
        if (periods.putIfAbsent(name, r.source().file()) == null) {
          refuseKnown(r.source(), name);
        }
      }
      games.computeIfAbsent(game, g -> new ArrayList<>()).add(r);
    }
    Map<UUID, String> said = new HashMap<>();
    for (Map.Entry<String, List<ReadRow<R>>> one : games.entrySet()) {
      List<When> rows = one.getValue().stream().map(r -> when.apply(r.row())).toList();
      refuseTwice(sheet, one.getKey(), rows, said);
    }
    into.add(sheet.file(), sheet.frame(), games);
    sheetOfPeriod.putAll(periods);
    gameOfRows.putAll(said);
  }

  private void refuseKnown(SheetRow row, String period) throws SheetException {
    String other = sheetOfPeriod.get(period);
    if (other != null) {
      throw SheetException.atLine(
          row.file(),
          row.line(),
          "rows of game " + period + ", which stands in " + other + " too",
          "each period of a game in one sheet",
          "Where both sheets are one game, leave one of them out. Where they are two games: "
              + GamesApart.gameKey(row, "{ file_name = true }"));
    }
  }

  /** A copy of a sheet under another name would count its game twice. */
  private void refuseTwice(
      RowsOfSheet<?> sheet, String id, List<When> rows, Map<UUID, String> ofThisSheet)
      throws SheetException {
    if (rows.size() < TELLING) {
      return;
    }
    UUID key = When.key(rows);
    String said = "game " + id + " of " + sheet.name();
    String other = gameOfRows.getOrDefault(key, ofThisSheet.put(key, said));
    if (other != null) {
      throw SheetException.ofFile(
          sheet.file().toString(),
          said + " with the rows of " + other,
          "each game once",
          "Leave one of the two out: they are the same game under two ids.");
    }
  }
}
