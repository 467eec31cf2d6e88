package twostrides.tag;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import twostrides.sheet.SheetException;

/** What is found when a sheet is opened with its journal, and how that is said. */
final class Opening {

  /** What a row says of its game. */
  private static final Set<String> GAME = Set.of("game", "date", "home", "away", TagSheet.PERIOD);

  private Opening() {}

  /**
   * The rows as a journal makes them.
   *
   * @throws SheetException when a line in it is none of ours
   */
  static History replay(SheetPlace place, Journal journal) throws SheetException {
    History history = new History();
    int line = 0;
    for (List<String> step : journal.lines()) {
      line++;
      try {
        history.take(step);
      } catch (RuntimeException e) {
        throw Journal.foreign(place.journal(), line, Json.line(step));
      }
    }
    return history;
  }

  /** The game of the last row: whoever goes on with a sheet most likely goes on with that. */
  static Map<String, String> lastGame(List<TagRow> rows) {
    Map<String, String> game = new LinkedHashMap<>();
    if (!rows.isEmpty()) {
      game.putAll(rows.get(rows.size() - 1).cells());
      game.keySet().retainAll(GAME);
    }
    return game;
  }

  /** What was found, a sentence; empty when there was nothing. */
  static String said(
      History history, boolean ours, String stands, TagSheet.Read read, boolean torn) {
    String tail = torn ? " One exit was being saved when the program was stopped: it is not." : "";
    if (!history.begun() || !ours) {
      return (read.rows().isEmpty() ? "" : count(read.rows()) + " read from the sheet.") + tail;
    }
    String kept = count(history.rows());
    if (stands.equals(SheetPlace.NONE) && !history.rows().isEmpty()) {
      return "The sheet was gone: " + kept + " brought back from the journal." + tail;
    }
    return (history.rows().isEmpty() ? "" : kept + " brought back.") + tail;
  }

  /** How many exits, and how many other rows: "3 exits and 2 more". */
  static String count(List<TagRow> rows) {
    long n = rows.stream().filter(r -> r.cells().containsKey(TagSheet.WAY_OUT)).count();
    return n
        + (n == 1 ? " exit" : " exits")
        + (n == rows.size() ? "" : " and " + (rows.size() - n) + " more");
  }
}
