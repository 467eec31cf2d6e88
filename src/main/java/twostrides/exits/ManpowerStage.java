package twostrides.exits;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.PenaltyRead;
import twostrides.game.PlayRow;
import twostrides.game.Strength;
import twostrides.rulebook.penalty.PenaltyRules;

/**
 * Strength at every row, from the manpower columns and from the penalty rows. Where a sheet has
 * both they are compared: the manpower table has one row for each run of rows on which they
 * disagree alike.
 */
final class ManpowerStage {

  private final ManpowerSource wins;
  private final PenaltyRules rules;
  private final Map<String, Strength[]> strengths = new HashMap<>();
  private final Shape.Filler out = shape().filler();
  private int compared;

  private ManpowerStage(PenaltyRules rules, ManpowerSource wins) {
    this.rules = rules;
    this.wins = wins;
  }

  /** The manpower table's columns, in the order in which they are written out. */
  static Shape shape() {
    return new Shape("manpower")
        .text(Columns.GAME)
        .count(Columns.PERIOD)
        .number(Columns.ELAPSED_S)
        .text(Columns.TEAM)
        .count(Columns.ROWS)
        .text(Columns.BY_COLUMNS, Columns.BY_PENALTIES, Columns.STRENGTH_USED, Columns.REASON)
        .text(Columns.SHEET)
        .count(Columns.LINE, Columns.LAST_LINE);
  }

  /**
   * What came of the games.
   *
   * @param strengths strength by game id and row
   * @param disagreements the manpower table
   * @param compared rows that have both
   */
  record Read(Map<String, Strength[]> strengths, Table disagreements, int compared) {
    Strength at(Game g, int row) {
      return strengths.get(g.id())[row];
    }
  }

  /**
   * Reads every game.
   *
   * @param games the games
   * @param settings what the run chose
   */
  static Read run(List<Game> games, Settings settings) {
    ManpowerStage stage = new ManpowerStage(settings.book().penaltyRules(), settings.manpower());
    games.forEach(stage::game);
    return new Read(stage.strengths, stage.out.table(), stage.compared);
  }

  private void game(Game g) {
    PenaltyRead penalties = PenaltyRead.of(g, rules);
    Strength[] used = new Strength[g.rows().size()];
    Run run = null;
    for (int i = 0; i < used.length; i++) {
      PlayRow r = g.rows().get(i);
      Strength byColumns = r.manpower().strength();
      boolean columns = byColumns != Strength.UNKNOWN && r.team().isPresent();
      // A stoppage and the penalty itself stand at the change: before it or after, as sheets like.
      boolean atTheChange = r.action() == Action.STOPPAGE || r.action() == Action.PENALTY;
      boolean both = columns && penalties.anyPenalty() && !atTheChange;
      used[i] = byColumns;
      if (r.team().isPresent()
          && penalties.anyPenalty()
          && (!columns || wins == ManpowerSource.PENALTIES)) {
        used[i] = penalties.strength(i);
      }
      if (!both) {
        continue;
      }
      compared++;
      Optional<Difference> difference = difference(r, penalties.skaters(i));
      if (run != null && !difference.equals(Optional.of(run.difference))) {
        run.write(g);
        run = null;
      }
      if (difference.isPresent()) {
        run = run == null ? new Run(difference.get(), i, r, penalties, used[i]) : run;
        run.last = r;
        run.rows++;
      }
    }
    if (run != null) {
      run.write(g);
    }
    strengths.put(g.id(), used);
  }

  /** What the columns and the penalties say of a team in a period. */
  private record Difference(
      Optional<String> team, int period, String byColumns, String byPenalties) {}

  /** What the columns and the penalties say, when they differ; extra attackers taken off. */
  private static Optional<Difference> difference(PlayRow r, int[] byPenalties) {
    int own = skaters(r.manpower().own(), r.manpower().ownNetEmpty());
    int other = skaters(r.manpower().other(), r.manpower().otherNetEmpty());
    return own == byPenalties[0] && other == byPenalties[1]
        ? Optional.empty()
        : Optional.of(
            new Difference(
                r.team(),
                r.period(),
                own + " on " + other,
                byPenalties[0] + " on " + byPenalties[1]));
  }

  private static int skaters(OptionalInt written, Optional<Boolean> netEmpty) {
    int n = written.orElseThrow();
    // A sixth skater says by himself that the net is empty.
    return netEmpty.orElse(n > 5) ? n - 1 : n;
  }

  /** Rows in a row of one team on which the two disagree alike. */
  private final class Run {
    private final Difference difference;
    private final int first;
    private final PlayRow from;
    private final PenaltyRead penalties;
    private final Strength used;
    private PlayRow last;
    private int rows;

    Run(Difference difference, int first, PlayRow from, PenaltyRead penalties, Strength used) {
      this.difference = difference;
      this.first = first;
      this.from = from;
      this.penalties = penalties;
      this.used = used;
      this.last = from;
    }

    void write(Game g) {
      out.row()
          .text(Columns.GAME, g.id())
          .count(Columns.PERIOD, from.period())
          .number(Columns.ELAPSED_S, from.elapsed())
          .text(Columns.TEAM, from.team())
          .count(Columns.ROWS, rows)
          .text(Columns.BY_COLUMNS, difference.byColumns())
          .text(Columns.BY_PENALTIES, difference.byPenalties())
          .text(Columns.STRENGTH_USED, used.label())
          .text(Columns.REASON, penalties.why(first))
          .text(Columns.SHEET, from.sheet())
          .count(Columns.LINE, Math.toIntExact(from.line()))
          .count(Columns.LAST_LINE, Math.toIntExact(last.line()));
    }
  }
}
