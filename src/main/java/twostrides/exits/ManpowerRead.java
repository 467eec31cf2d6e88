package twostrides.exits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.PenaltyRead;
import twostrides.game.PlayRow;
import twostrides.game.Strength;

/**
 * Strength at every row of a game, from the manpower columns and from the penalty rows. Where a
 * sheet has both they are compared.
 *
 * @param strengths the acting team's strength at each row
 * @param gaps runs of rows on which the two disagree alike
 * @param compared rows that have both
 */
record ManpowerRead(List<Strength> strengths, List<ManpowerGap> gaps, int compared) {

  /** Skaters by both sources, where they disagree. */
  private record Difference(String team, int period, String byColumns, String byPenalties) {}

  static ManpowerRead of(Game game, Settings settings) {
    PenaltyRead penalties = PenaltyRead.of(game, settings.book().penaltyRules());
    List<PlayRow> rows = game.rows();
    Strength[] used = new Strength[rows.size()];
    List<ManpowerGap> gaps = new ArrayList<>();
    Optional<Difference> open = Optional.empty();
    List<Integer> run = new ArrayList<>();
    int compared = 0;
    for (int i = 0; i < used.length; i++) {
      PlayRow r = rows.get(i);
      Strength byColumns = r.manpower().strength();
      boolean columns = byColumns != Strength.UNKNOWN && r.team().isPresent();
      boolean penaltiesWin =
          r.team().isPresent()
              && penalties.anyPenalty()
              && (!columns || settings.manpower() == ManpowerSource.PENALTIES);
      used[i] = penaltiesWin ? penalties.strength(i) : byColumns;
      // A stoppage and the penalty itself stand at the change: before it or after, as sheets like.
      boolean atTheChange = r.action() == Action.STOPPAGE || r.action() == Action.PENALTY;
      if (!columns || !penalties.anyPenalty() || atTheChange) {
        continue;
      }
      compared++;
      Optional<Difference> here = difference(r, penalties.skaters(i));
      if (!here.equals(open)) {
        open.ifPresent(d -> gaps.add(gap(game, d, run, used, penalties)));
        run.clear();
      }
      open = here;
      if (here.isPresent()) {
        run.add(i);
      }
    }
    open.ifPresent(d -> gaps.add(gap(game, d, run, used, penalties)));
    return new ManpowerRead(List.of(used), gaps, compared);
  }

  private static Optional<Difference> difference(PlayRow r, int[] byPenalties) {
    int own = skaters(r.manpower().own(), r.manpower().ownNetEmpty());
    int other = skaters(r.manpower().other(), r.manpower().otherNetEmpty());
    return own == byPenalties[0] && other == byPenalties[1]
        ? Optional.empty()
        : Optional.of(
            new Difference(
                r.team().orElseThrow(),
                r.period(),
                own + " on " + other,
                byPenalties[0] + " on " + byPenalties[1]));
  }

  private static int skaters(OptionalInt written, Optional<Boolean> netEmpty) {
    int n = written.orElseThrow();
    // A sixth skater says by himself that the net is empty.
    return netEmpty.orElse(n > 5) ? n - 1 : n;
  }

  private static ManpowerGap gap(
      Game game, Difference d, List<Integer> run, Strength[] used, PenaltyRead penalties) {
    PlayRow from = game.rows().get(run.get(0));
    PlayRow last = game.rows().get(run.get(run.size() - 1));
    return new ManpowerGap(
        new When(
            game.fixture(),
            from.period(),
            from.elapsed(),
            OptionalDouble.empty(),
            from.sheet(),
            Math.toIntExact(from.line())),
        d.team(),
        run.size(),
        Math.toIntExact(last.line()),
        d.byColumns(),
        d.byPenalties(),
        used[run.get(0)],
        penalties.why(run.get(0)));
  }
}
