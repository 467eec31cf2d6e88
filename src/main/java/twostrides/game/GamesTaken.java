package twostrides.game;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
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
    private static String key(List<When> rows) {
      ByteBuffer all = ByteBuffer.allocate(rows.size() * (2 * Integer.BYTES + Double.BYTES));
      rows.forEach(r -> all.putInt(r.period).putDouble(r.elapsed).putInt(r.team.hashCode()));
      return UUID.nameUUIDFromBytes(all.array()).toString();
    }
  }

  private final Map<String, String> sheetOfPeriod = new HashMap<>();
  private final Map<String, String> gameOfRows = new HashMap<>();

  /**
   * Takes all rows of a sheet, or none.
   *
   * @param sheet the sheet
   * @param when when one of its rows was
   * @param into where they go
   * @return what it has had
   * @throws SheetException when it has what another sheet had, or rows of several games as one
   */
  <R> List<SheetKept.Had> take(RowsOfSheet<R> sheet, Function<R, When> when, GamesUnread<R, ?> into)
      throws SheetException {
    Map<String, List<ReadRow<R>>> games = new LinkedHashMap<>();
    sheet.rows().forEach(r -> games.computeIfAbsent(r.gameId(), g -> new ArrayList<>()).add(r));
    List<SheetKept.Had> has = new ArrayList<>();
    games.forEach((id, rows) -> has.add(had(id, rows.stream().map(r -> when.apply(r.row())))));
    if (!isNew(has)) {
      refuse(sheet, when, has);
    }
    into.add(sheet.file(), sheet.frame(), games);
    add(SheetFiles.display(sheet.file()), sheet.name(), has);
    return has;
  }

  private static SheetKept.Had had(String game, Stream<When> when) {
    List<When> rows = when.toList();
    return new SheetKept.Had(
        game,
        rows.stream().map(When::period).collect(Collectors.toCollection(TreeSet::new)),
        rows.size() < TELLING ? Optional.empty() : Optional.of(When.key(rows)));
  }

  /**
   * Whether no sheet had any of it before.
   *
   * @param games what a sheet has
   */
  boolean isNew(List<SheetKept.Had> games) {
    Set<String> own = new HashSet<>();
    return games.stream()
        .allMatch(
            g ->
                g.periods().stream().noneMatch(p -> sheetOfPeriod.containsKey(period(g.game(), p)))
                    && g.rows().stream().allMatch(k -> own.add(k) && !gameOfRows.containsKey(k)));
  }

  /**
   * Adds what a sheet has had.
   *
   * @param file the sheet, as the user named it
   * @param name its file name
   * @param games its games
   */
  void add(String file, String name, List<SheetKept.Had> games) {
    for (SheetKept.Had g : games) {
      g.periods().forEach(p -> sheetOfPeriod.put(period(g.game(), p), file));
      g.rows().ifPresent(k -> gameOfRows.put(k, said(g.game(), name)));
    }
  }

  private static String period(String game, int period) {
    return game + ", period " + period;
  }

  private static String said(String game, String sheet) {
    return "game " + game + " of " + sheet;
  }

  private <R> void refuse(RowsOfSheet<R> sheet, Function<R, When> when, List<SheetKept.Had> games)
      throws SheetException {
    for (ReadRow<R> r : sheet.rows()) {
      refuseKnown(r.source(), period(r.gameId(), when.apply(r.row()).period()));
    }
    Map<String, String> ofThisSheet = new HashMap<>();
    for (SheetKept.Had g : games) {
      if (g.rows().isPresent()) {
        refuseTwice(sheet, said(g.game(), sheet.name()), g.rows().get(), ofThisSheet);
      }
    }
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
      RowsOfSheet<?> sheet, String said, String rows, Map<String, String> ofThisSheet)
      throws SheetException {
    String other = gameOfRows.getOrDefault(rows, ofThisSheet.put(rows, said));
    if (other != null) {
      throw SheetException.ofFile(
          sheet.file().toString(),
          said + " with the rows of " + other,
          "each game once",
          "Leave one of the two out: they are the same game under two ids.");
    }
  }
}
