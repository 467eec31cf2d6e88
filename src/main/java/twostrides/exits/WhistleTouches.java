package twostrides.exits;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.StopReason;
import twostrides.rink.Place;

/**
 * Rows of an opponent who got to an iced puck as the whistle went. Many sheets write them: deep in
 * his own end or at his end-zone spots, at or within about a second of the whistle, and the
 * face-off that follows is in the other end, where only icing or a penalty brings it. Such a row is
 * no control in between; it completes the icing.
 */
final class WhistleTouches {

  /** How long before the whistle the touch may be, s; one step of the clock comes on top. */
  private static final double BEFORE_WHISTLE_S = 1;

  private final Game game;
  private final List<PlayRow> rows;

  private WhistleTouches(Game game) {
    this.game = game;
    this.rows = game.rows();
  }

  /**
   * The rows of a game that are whistle touches, by their index.
   *
   * @param game the game
   */
  static BitSet of(Game game) {
    WhistleTouches finder = new WhistleTouches(game);
    BitSet found = new BitSet();
    for (int i = 1; i < finder.rows.size(); i++) {
      PlayRow r = finder.rows.get(i);
      if (r.action() == Action.FACEOFF && r.place().isPresent()) {
        finder.before(i, r.place().get(), found);
      }
    }
    return found;
  }

  private void before(int faceoffAt, Place spot, BitSet found) {
    PlayRow faceoff = rows.get(faceoffAt);
    String winner = faceoff.team().orElseThrow();
    Optional<String> inWhoseZone =
        game.rink().inOwnZone(spot.x())
            ? Optional.of(winner)
            : game.rink().inOwnZone(-spot.x())
                ? Optional.of(game.opponentOf(winner))
                : Optional.empty();
    int i = faceoffAt - 1;
    while (i >= 0 && in(i, faceoff) && rows.get(i).action() == Action.STOPPAGE) {
      i--;
    }
    int last = i;
    boolean stopped = last + 1 < faceoffAt;
    boolean icing = stopped && rows.get(last + 1).stop().equals(Optional.of(StopReason.ICING));
    if (inWhoseZone.isEmpty() || (stopped && !icing)) {
      return;
    }
    String team = inWhoseZone.get();
    double whistle = rows.get(last + 1).elapsed();
    while (i >= 0 && in(i, faceoff) && touches(rows.get(i), game.opponentOf(team), whistle)) {
      i--;
    }
    if (i < 0 || i == last || !in(i, faceoff)) {
      return;
    }
    PlayRow before = rows.get(i);
    boolean had = before.control() && before.team().equals(Optional.of(team));
    if (icing ? had : sent(i, team)) {
      found.set(i + 1, last + 1);
    }
  }

  private boolean in(int i, PlayRow faceoff) {
    return rows.get(i).period() == faceoff.period();
  }

  private boolean touches(PlayRow r, String opponent, double whistle) {
    boolean plays =
        r.action() == Action.RECOVERY
            || r.action() == Action.TAKEAWAY
            || r.action() == Action.TOUCH;
    double slack = StoppageCause.SPOT_SLACK + game.placeStep();
    return plays
        && r.team().equals(Optional.of(opponent))
        && r.place().isPresent()
        && r.place().get().x() <= slack - game.rink().endSpotX()
        && whistle - r.elapsed() < BEFORE_WHISTLE_S + game.clockStep();
  }

  /** Whether the team let the puck go from behind center in a row, or in one that a row repeats. */
  private boolean sent(int at, String team) {
    int i = at;
    while (i > 0 && rows.get(i).repeats() && in(i - 1, rows.get(i))) {
      i--;
    }
    PlayRow r = rows.get(i);
    boolean delivery =
        r.action() == Action.RELEASE || r.action() == Action.PASS || r.action() == Action.SHOT;
    return delivery
        && r.team().equals(Optional.of(team))
        && r.place().map(p -> game.rink().shortOfCenter(p.x()) > 0).orElse(true);
  }
}
