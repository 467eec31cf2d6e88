package twostrides.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * One game under way: clock, score, penalties, benches, the skaters on the ice, the rows written so
 * far and the truth. What is done with the puck is decided by the plays; this class only keeps it
 * all consistent.
 */
final class Match {
  /** A trailing team plays without goalkeeper when it is behind by no more than this. */
  private static final int WITHIN_REACH = 2;

  /** Seconds of play after which a line is changed on the fly, assumed. */
  private static final double SHIFT_S = 40;

  /** What is left of the legs of skaters who may not change after an icing, assumed. */
  private static final double TIRED = 0.82;

  final Rink rink;
  final Spots spots;
  final Dice dice;
  final GameClock clock;
  final PenaltyBox box = new PenaltyBox();
  final TruthBook truth;
  final Source source;
  final Ice ice;
  private final Optional<Futures> futures;
  private final Bench home;
  private final Bench away;
  private final double pullsAt;
  private final List<SheetRow> rows = new ArrayList<>();
  private Optional<Side> tired = Optional.empty();

  /** A game about to begin. */
  Match(Rink rink, Team homeTeam, Team awayTeam, Chance chance) {
    this.rink = rink;
    dice = chance.game();
    source = chance.source();
    truth = new TruthBook(chance.telling() == Chance.Telling.KEPT_TOO);
    spots = new Spots(rink);
    clock = new GameClock(dice.between(40, 200));
    ice = new Ice(rink, dice);
    futures =
        chance.telling() == Chance.Telling.NO_FUTURES
            ? Optional.empty()
            : Optional.of(new Futures(rink, chance.futures()));
    home = new Bench(homeTeam, dice);
    away = new Bench(awayTeam, dice);
    pullsAt = 3 * GameClock.PERIOD_S - dice.between(75, 165);
  }

  List<SheetRow> rows() {
    return List.copyOf(rows);
  }

  Bench bench(Side side) {
    return side == Side.HOME ? home : away;
  }

  int lead(Side side) {
    return bench(side).goals - bench(side.other()).goals;
  }

  boolean netEmpty(Side side) {
    return bench(side).netEmpty;
  }

  void scored(Side side) {
    bench(side).goals++;
    box.goalAgainst(side.other());
  }

  /** Lets play run, skaters skate, and lets out who has served. */
  void run(double seconds) {
    double left = seconds;
    while (left > 1e-9) {
      tick(Math.min(left, Ice.STEP));
      left -= Ice.STEP;
    }
  }

  /** A moment of play, no longer than a step of the world. */
  void tick(double seconds) {
    clock.run(seconds);
    if (box.release(clock.gameSeconds())) {
      fill(Side.HOME);
      fill(Side.AWAY);
    }
    ice.step(seconds);
  }

  /**
   * Brings on who comes out of the box, or for the goalkeeper; nobody goes off for that in play.
   */
  private void fill(Side side) {
    if (ice.bodies(side).size() < skatersWithExtra(side)) {
      ice.comesOn(side, lineUp(side), skatersWithExtra(side));
    }
  }

  private List<Skater> lineUp(Side side) {
    return bench(side).lineUp(skatersWithExtra(side), box.inside(side));
  }

  /** At a face-off both teams decide whether the goalkeeper stays, and line up. */
  void faceOff(Next.Drop drop) {
    ice.clear();
    for (Side side : Side.values()) {
      bench(side).netEmpty = pulls(side);
      double legs = tired.equals(Optional.of(side)) ? TIRED : 1;
      ice.faceOff(side, lineUp(side), drop.homeSpot(), legs);
    }
  }

  /** In play a goalkeeper leaves when the team has the puck; nobody comes back before a whistle. */
  void netsWithPuck(Side side) {
    bench(side).netEmpty |= pulls(side);
    fill(side);
  }

  private boolean pulls(Side side) {
    return clock.gameSeconds() >= pullsAt && lead(side) < 0 && lead(side) >= -WITHIN_REACH;
  }

  /**
   * New players for both teams at a stoppage.
   *
   * @param iced a team that may not change because it iced the puck
   */
  void freshLines(Optional<Side> iced) {
    tired = iced;
    for (Side side : Side.values()) {
      if (!iced.equals(Optional.of(side))) {
        bench(side).change(dice, clock.gameSeconds());
      }
    }
  }

  /**
   * A side that has sent the puck deep, or brought it past center, changes when its shift is long.
   */
  void changeOnTheFly(Side side, double after) {
    if (clock.gameSeconds() - bench(side).shiftSince > SHIFT_S + after) {
      bench(side).change(dice, clock.gameSeconds());
      tired = tired.filter(t -> t != side);
      ice.change(side, lineUp(side), ice.holder().filter(b -> b.side == side));
    }
  }

  /** Who is on the ice; who has just been sent off is not. */
  List<Skater> onIce(Side side) {
    Set<Skater> sitting = box.inside(side);
    return ice.bodies(side).stream().map(b -> b.skater).filter(s -> !sitting.contains(s)).toList();
  }

  int skatersWithExtra(Side side) {
    return box.skaters(side) + (netEmpty(side) ? 1 : 0);
  }

  /** Somebody who has the puck, as things are on the ice. */
  Carrier holding() {
    Body b = ice.holder().orElseThrow();
    Place at = Ice.place(b);
    return new Carrier(b.side, b.skater, spots.inside(at.x(), at.y()), Contact.secondsTo(ice, b));
  }

  /** A row of somebody who acts now; finish it and hand it to {@link #log}. */
  SheetRow row(Action action, Carrier who) {
    SheetRow row = SheetRow.of(clock, action, who, counts(who.side()));
    row.seen =
        Optional.of(who.side()).filter(s -> shortOfCenter(who.at())).map(s -> Seen.of(ice, s));
    return row;
  }

  /** Writes a row. */
  void log(SheetRow row) {
    rows.add(row);
  }

  /** Writes a pass. */
  void logPass(Carrier from, Outcome how, Target to) {
    log(row(Action.PASS, from).went(how).toward(to));
  }

  void logStoppage(Stoppage word, Optional<Side> calledOn) {
    rows.add(SheetRow.stoppage(clock, word, calledOn, calledOn.map(this::counts)));
  }

  private SheetRow.OnIce counts(Side side) {
    Side other = side.other();
    return new SheetRow.OnIce(onIce(side), onIce(other), netEmpty(side), netEmpty(other));
  }

  /** Whether a place is short of center: the puck there does not touch the red line. */
  boolean shortOfCenter(Place at) {
    return spots.shortOfCenter(at) > 0;
  }

  /** In how many of some futures whoever has the puck now would bring it to center, 0 to 1. */
  double chanceOfCenter() {
    return futures.isPresent() ? futures.get().chance(ice) : 0;
  }
}
