package twostrides.sanity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.Outcome;
import twostrides.game.PlayRow;
import twostrides.rink.Place;

/**
 * What the next row says of a pass or a release: a received pass is followed by its team, by its
 * receiver and at its end. In the open games 9 of 10 complete passes are followed by their team and
 * 3 of 10 missed ones, and 19 of 20 receivers are the next to have the puck.
 */
final class WhoFollows {

  /** Rows that it takes to tell. Assumed. */
  private static final int LEAST = 20;

  /** The same where two outcomes must both be the wrong way round. Assumed. */
  private static final int LEAST_OF_TWO = 10;

  /** Releases of which it is not said who got them; in true sheets one in ten is. Assumed. */
  private static final double UNSAID = 0.3;

  /** Half: true sheets are far from it on either side. Assumed. */
  private static final double HALF = 0.5;

  /** Share of receivers below which the column is no receiver's. Assumed. */
  private static final double FEW = 0.3;

  /**
   * A pass that ends farther from its receiver than this, in the median, ends elsewhere, m.
   * Assumed.
   */
  private static final double FAR = 9;

  private final Share complete = new Share();
  private final Share missed = new Share();
  private final Share regained = new Share();
  private final Share lost = new Share();
  private final Share unsaid = new Share();
  private final Share carriedAfterRelease = new Share();
  private final Share dumpedAfterRelease = new Share();
  private final Share receiver = new Share();
  private final Share exchanged = new Share();
  private final Share nearerToStart = new Share();
  private final double[] fromEnd;

  /** Counts a game. */
  WhoFollows(Game g) {
    DoubleStream.Builder ends = DoubleStream.builder();
    for (int i = 0; i + 1 < g.rows().size(); i++) {
      PlayRow r = g.rows().get(i);
      PlayRow next = g.rows().get(i + 1);
      entry(r, next);
      if (next.period() == r.period()
          && r.team().isPresent()
          && next.team().isPresent()
          && !next.repeats()
          && next.action() != Action.FACEOFF) {
        look(r, next, ends);
      }
    }
    fromEnd = ends.build().toArray();
  }

  private WhoFollows(List<WhoFollows> games) {
    for (WhoFollows g : games) {
      complete.add(g.complete);
      missed.add(g.missed);
      regained.add(g.regained);
      lost.add(g.lost);
      unsaid.add(g.unsaid);
      carriedAfterRelease.add(g.carriedAfterRelease);
      dumpedAfterRelease.add(g.dumpedAfterRelease);
      receiver.add(g.receiver);
      exchanged.add(g.exchanged);
      nearerToStart.add(g.nearerToStart);
    }
    fromEnd = games.stream().flatMapToDouble(g -> DoubleStream.of(g.fromEnd)).toArray();
  }

  /** A puck that is dumped in was sent on in the row before; one that is carried in was not. */
  private void entry(PlayRow before, PlayRow r) {
    if (r.action() == Action.ENTRY && r.outcome().isPresent()) {
      boolean sent = before.action() == Action.RELEASE && before.team().equals(r.team());
      if (r.outcome().get() == Outcome.CARRIED) {
        carriedAfterRelease.add(sent);
      } else if (r.outcome().get() == Outcome.DUMPED) {
        dumpedAfterRelease.add(sent);
      }
    }
  }

  private void look(PlayRow r, PlayRow next, DoubleStream.Builder ends) {
    boolean own = next.team().equals(r.team());
    Optional<Outcome> outcome = r.outcome();
    if (r.action() == Action.PASS) {
      outcome.ifPresent(o -> (o == Outcome.COMPLETE ? complete : missed).add(own));
      if (own && next.control() && outcome.equals(Optional.of(Outcome.COMPLETE))) {
        received(r, next, ends);
      }
    } else if (r.action() == Action.RELEASE) {
      if (outcome.isEmpty()) {
        unsaid.add(own);
      } else {
        (outcome.get() == Outcome.REGAINED ? regained : lost).add(own);
      }
    }
  }

  private void received(PlayRow r, PlayRow next, DoubleStream.Builder ends) {
    if (r.otherPlayer().isPresent() && next.player().isPresent()) {
      receiver.add(next.player().equals(r.otherPlayer()));
      exchanged.add(next.otherPlayer().equals(r.player()));
    }
    if (r.place().isPresent() && r.target().isPresent() && next.place().isPresent()) {
      double end = distance(r.target().get(), next.place().get());
      ends.add(end);
      nearerToStart.add(end > distance(r.place().get(), next.place().get()));
    }
  }

  private static double distance(Place a, Place b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  static List<Doubt> of(List<GameSigns> games) {
    WhoFollows w = new WhoFollows(games.stream().map(GameSigns::whoFollows).toList());
    String where = games.get(0).sheet();
    List<Doubt> doubts = new ArrayList<>();
    w.outcomes(where, doubts);
    if (w.carriedAfterRelease.above(HALF, LEAST) && w.dumpedAfterRelease.below(HALF, LEAST)) {
      doubts.add(
          Doubt.stop(
              where,
              w.carriedAfterRelease
                  + " carried entries right after a release of their team, and "
                  + w.dumpedAfterRelease
                  + " dumped ones",
              "dumped entries after a release, carried ones not",
              "Exchange the words carried and dumped of outcome in the sheet map."));
    }
    w.receivers(where, doubts);
    w.ends(where, doubts);
    return doubts;
  }

  private void outcomes(String where, List<Doubt> doubts) {
    if (complete.below(HALF, LEAST)) {
      boolean other = missed.above(HALF, LEAST);
      doubts.add(
          Doubt.stop(
              where,
              complete
                  + " complete passes followed by their own team"
                  + (other ? ", and " + missed + " missed ones" : ""),
              "complete passes followed by their own team",
              other
                  ? "Exchange the words complete and missed of outcome in the sheet map."
                  : "Check the words of action and outcome in the sheet map."));
    } else if (missed.above(HALF, LEAST)) {
      doubts.add(
          Doubt.warn(
              where,
              missed + " missed passes followed by their own team",
              "missed passes followed by the opponent",
              "Check the words of outcome in the sheet map; a pass said to be missed counts as lost."));
    }
    if (regained.below(HALF, LEAST_OF_TWO) && lost.above(HALF, LEAST_OF_TWO)) {
      doubts.add(
          Doubt.stop(
              where,
              regained
                  + " regained releases followed by their own team, and "
                  + lost
                  + " lost ones",
              "regained releases followed by their own team",
              "Exchange the words regained and lost of outcome in the sheet map."));
    } else if (lost.above(HALF, LEAST) || regained.below(HALF, LEAST)) {
      doubts.add(
          Doubt.warn(
              where,
              regained + " regained releases and " + lost + " lost ones followed by their own team",
              "regained releases followed by their own team, lost ones by the opponent",
              "Check the words of action and outcome in the sheet map."));
    }
    if (unsaid.above(UNSAID, LEAST)) {
      doubts.add(
          Doubt.warn(
              where,
              unsaid + " releases followed by their own team",
              "most releases followed by the opponent",
              "Check the words of action in the sheet map: other rows may be read as releases."));
    }
  }

  private void receivers(String where, List<Doubt> doubts) {
    if (!receiver.below(FEW, LEAST)) {
      return;
    }
    boolean other = exchanged.above(HALF, LEAST);
    doubts.add(
        new Doubt(
            other,
            where,
            receiver + " receivers of complete passes the next to have the puck",
            "the receiver of a complete pass to have the puck next",
            other
                ? "Exchange the columns of player and other_player in the sheet map."
                : "Check the columns of player and other_player, and that both write a player alike;"
                    + " until then exits say more often that the means are unknown."));
  }

  private void ends(String where, List<Doubt> doubts) {
    if (fromEnd.length < LEAST) {
      return;
    }
    double median = DoubleStream.of(fromEnd).sorted().toArray()[fromEnd.length / 2];
    boolean exchange = nearerToStart.above(HALF, LEAST);
    if (exchange || median > FAR) {
      doubts.add(
          Doubt.stop(
              where,
              exchange
                  ? "passes received where they began: " + nearerToStart + " complete ones"
                  : String.format(
                      java.util.Locale.ROOT,
                      "half of %d complete passes received %.0f m or more from their end",
                      fromEnd.length,
                      median),
              "complete passes received where they end",
              "Check the columns of x_m, y_m, to_x_m and to_y_m in the sheet map: first place and second"
                  + " look exchanged, or x and y of one of them."));
    }
  }
}
