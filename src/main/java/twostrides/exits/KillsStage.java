package twostrides.exits;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import tech.tablesaw.api.Table;

/** Penalty kills: one row a stretch in which a team is shorthanded, with what it did with it. */
final class KillsStage {

  private KillsStage() {}

  private static Shape shape() {
    return new Shape("kills")
        .text(Columns.GAME, Columns.DATE)
        .count(Columns.KILL)
        .text(Columns.TEAM, Columns.OPPONENT)
        .count(Columns.PERIOD)
        .number(Columns.ELAPSED_S)
        .count(Columns.END_PERIOD)
        .number(Columns.END_ELAPSED_S, Columns.SECONDS)
        .count(Columns.ATTEMPTS, Columns.CLEARED, Columns.KEPT_IN, Columns.RESTARTS)
        .number(Columns.RELIEF_TOTAL_S)
        .count(Columns.ATTEMPTS_AGAINST, Columns.GOALS_AGAINST)
        .number(Columns.VIDEO_S)
        .text(Columns.SHEET)
        .count(Columns.LINE);
  }

  /** What the exit attempts of one kill add up to. */
  private static final class Sum {
    private int attempts;
    private int kept;
    private int restarts;
    private double relief;
  }

  /**
   * Builds the kills table.
   *
   * @param exits the exits table of play sheets
   * @param play the moves
   * @param standing the kills
   */
  static Table run(Table exits, Play play, Standing standing) {
    Map<String, Sum> sums = sums(exits);
    Shape.Filler out = shape().filler();
    for (Standing.Kill k : standing.kills()) {
      Move first = play.moves().get(k.first());
      Move end = play.moves().get(k.end());
      Sum sum = sums.getOrDefault(key(first.game(), k.number()), new Sum());
      int shots = 0;
      int goals = 0;
      double seconds = 0;
      for (int i = k.first(); i < k.end(); i++) {
        Move m = play.moves().get(i);
        Move next = play.moves().get(i + 1);
        seconds += m.samePlay(next) ? next.elapsed() - m.elapsed() : 0;
        boolean against = m.shot() && !m.by(k.team());
        shots += against ? 1 : 0;
        goals += against && m.goal() ? 1 : 0;
      }
      out.row()
          .text(Columns.GAME, first.game())
          .text(Columns.DATE, play.game(first).date().map(LocalDate::toString))
          .count(Columns.KILL, k.number())
          .text(Columns.TEAM, k.team())
          .text(Columns.OPPONENT, play.game(first).opponentOf(k.team()))
          .count(Columns.PERIOD, first.period())
          .number(Columns.ELAPSED_S, first.elapsed())
          .count(Columns.END_PERIOD, end.period())
          .number(Columns.END_ELAPSED_S, end.elapsed())
          .number(Columns.SECONDS, seconds)
          .count(Columns.ATTEMPTS, sum.attempts)
          .count(Columns.CLEARED, sum.attempts - sum.kept)
          .count(Columns.KEPT_IN, sum.kept)
          .count(Columns.RESTARTS, sum.restarts)
          .number(Columns.RELIEF_TOTAL_S, sum.relief)
          .count(Columns.ATTEMPTS_AGAINST, shots)
          .count(Columns.GOALS_AGAINST, goals)
          .number(Columns.VIDEO_S, first.video())
          .text(Columns.SHEET, first.sheet())
          .count(Columns.LINE, first.line());
    }
    return out.table();
  }

  private static Map<String, Sum> sums(Table exits) {
    Map<String, Sum> sums = new HashMap<>();
    for (int i = 0; i < exits.rowCount(); i++) {
      var kill = Cells.count(exits, Columns.KILL, i);
      if (kill.isEmpty()) {
        continue;
      }
      Sum s =
          sums.computeIfAbsent(
              key(Cells.text(exits, Columns.GAME, i).orElse(""), kill.getAsInt()), k -> new Sum());
      s.attempts++;
      boolean kept =
          Cells.text(exits, Columns.WAY_OUT, i).orElse("").equals(WayOut.KEPT_IN.label());
      s.kept += kept ? 1 : 0;
      s.restarts += Cells.flag(exits, Columns.OWN_ZONE_RESTART, i).orElse(false) ? 1 : 0;
      // A puck kept in burns no time: the opponent never left.
      s.relief += kept ? 0 : Cells.number(exits, Columns.RELIEF_S, i).orElse(0);
    }
    return sums;
  }

  private static String key(String game, int kill) {
    return kill + " " + game;
  }
}
