package twostrides.sanity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.Manpower;
import twostrides.game.PlayRow;

/**
 * Whose skaters the manpower columns count. Two rows that follow on each other, one of each team,
 * say 4 against 5 and 5 against 4 where they count the acting team first; they say the same where
 * they count home first. After a penalty the team that took it has fewer.
 */
final class ManpowerSides {

  /** Pairs of rows that it takes to tell. Assumed. */
  private static final int LEAST_PAIRS = 10;

  /** Penalties that it takes to tell. Assumed. */
  private static final int LEAST_PENALTIES = 3;

  /** Share that must say the same. Assumed; true sheets are under one in ten. */
  private static final double MOST = 0.7;

  /** Seconds after the face-off in which a penalty shows. Assumed: less than any penalty. */
  private static final double SHOWS_WITHIN = 45;

  /** Rows farther apart may have a change of manpower between them, s. Assumed. */
  private static final double NEAR = 5;

  private static final int FULL = 5;

  private final Share same = new Share();
  private final Share penaltyWrong = new Share();

  /** Counts a game. */
  ManpowerSides(Game g) {
    for (int i = 0; i + 1 < g.rows().size(); i++) {
      pair(g.rows().get(i), g.rows().get(i + 1));
      if (g.rows().get(i).action() == Action.PENALTY) {
        penalty(g.rows(), i);
      }
    }
  }

  private ManpowerSides(List<ManpowerSides> games) {
    for (ManpowerSides g : games) {
      same.add(g.same);
      penaltyWrong.add(g.penaltyWrong);
    }
  }

  /** Own skaters less the others', where both are known and no net is empty. */
  private static Optional<Integer> more(PlayRow r) {
    Manpower m = r.manpower();
    if (m.own().isEmpty()
        || m.other().isEmpty()
        || m.own().getAsInt() > FULL
        || m.other().getAsInt() > FULL) {
      return Optional.empty();
    }
    return Optional.of(m.own().getAsInt() - m.other().getAsInt());
  }

  private void pair(PlayRow a, PlayRow b) {
    if (a.period() == b.period()
        && b.elapsed() - a.elapsed() <= NEAR
        && plays(a)
        && plays(b)
        && !a.team().equals(b.team())) {
      Optional<Integer> before = more(a).filter(n -> n != 0);
      Optional<Integer> after = more(b).filter(n -> n != 0);
      if (before.isPresent() && after.isPresent()) {
        same.add(before.equals(after));
      }
    }
  }

  private static boolean plays(PlayRow r) {
    return r.team().isPresent()
        && r.action() != Action.FACEOFF
        && r.action() != Action.PENALTY
        && r.action() != Action.STOPPAGE;
  }

  /** Which team has more skaters after the face-off that follows a penalty. */
  private void penalty(List<PlayRow> rows, int at) {
    PlayRow called = rows.get(at);
    Optional<PlayRow> faceOff = Optional.empty();
    for (PlayRow r : rows.subList(at + 1, rows.size())) {
      if (r.period() != called.period()
          || r.action() == Action.PENALTY
          || faceOff.filter(f -> r.elapsed() - f.elapsed() > SHOWS_WITHIN).isPresent()) {
        return;
      }
      if (faceOff.isEmpty()) {
        faceOff = Optional.of(r).filter(f -> f.action() == Action.FACEOFF);
      } else {
        Optional<Integer> more = more(r).filter(n -> n != 0);
        if (more.isPresent() && plays(r)) {
          penaltyWrong.add(more.get() > 0 == r.team().equals(called.team()));
          return;
        }
      }
    }
  }

  static List<Doubt> of(List<GameSigns> games) {
    ManpowerSides sides = new ManpowerSides(games.stream().map(GameSigns::manpower).toList());
    List<Doubt> doubts = new ArrayList<>();
    if (sides.same.above(MOST, LEAST_PAIRS)) {
      doubts.add(
          Doubt.stop(
              games.get(0).sheet(),
              sides.same
                  + " times one team said to be short and, in the next row, the other team as well",
              "manpower columns that count the acting team's skaters first",
              "The columns do not count the skaters of the team that they are mapped to. Under"
                  + " [columns] of the sheet map: where they write home first, whoever acts, map them to"
                  + " skaters_home and skaters_away; where they write the acting team first, to"
                  + " skaters_for and skaters_against."));
    } else if (sides.penaltyWrong.above(MOST, LEAST_PENALTIES)) {
      doubts.add(
          Doubt.stop(
              games.get(0).sheet(),
              "the team that took the penalty with more skaters after " + sides.penaltyWrong,
              "fewer skaters for the team that took a penalty",
              "Exchange the two manpower columns, or the columns of home and away, under [columns] of the"
                  + " sheet map."));
    }
    return doubts;
  }
}
