package twostrides.demo;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/** Who gets the puck: recoveries, takeaways, passes received, and fouls that wait for a whistle. */
final class Hands {
  /** Chance of a foul by the team without the puck, for each decision of a carrier; assumed. */
  private static final double FOUL = 0.0060;

  /** Share of fouls by the carrier's own team, whistled at once; assumed. */
  private static final double OWN_FOUL = 0.16;

  /** Chance for each decision that a net comes off or somebody is hurt; assumed. */
  private static final double MISHAP = 0.0014;

  /** A skater this near a loose puck has it, m, assumed: a stick's length. */
  private static final double GETS_IT = 1.0;

  /** Nobody looks longer for a loose puck, s. */
  private static final double LONGEST_S = 6;

  /** So long a receiver may be late for a pass, s. */
  private static final double LATE_FOR_PASS_S = 0.8;

  /** Share of face-offs that the side wins in whose zone they are: after its icing, and others. */
  private static final double WON_AFTER_ICING = 0.42;

  private static final double WON_IN_OWN_ZONE = 0.48;

  final Match match;
  final Whistle whistle;
  private Optional<Side> foul = Optional.empty();

  /** The release row whose puck is still nobody's. */
  private Optional<SheetRow> underWay = Optional.empty();

  Hands(Match match) {
    this.match = match;
    whistle = new Whistle(match);
  }

  /** A row of a puck sent on: whoever gets it next decides whether it was lost or regained. */
  void sentIn(SheetRow row) {
    match.log(row.went(Outcome.LOST));
    underWay = Optional.of(row);
  }

  /** A player has the puck from now on, at a place of his team's frame. */
  Next control(Action how, Side side, Skater skater, Place at) {
    boolean inside = match.spots.inOwnZone(at);
    if (match.truth.attemptOpen() && !inside) {
      throw new IllegalStateException("the puck is out and nobody said how: " + skater + at);
    }
    underWay
        .filter(release -> release.side.equals(Optional.of(side)))
        .ifPresent(release -> release.went(Outcome.REGAINED));
    underWay = Optional.empty();
    match.ice.held(side, skater, side.homeFrame(at));
    match.netsWithPuck(side);
    match.truth.controls(side, match.clock, inside);
    Carrier carrier = match.holding();
    match.log(match.row(how, carrier));
    if (!match.shortOfCenter(at)) {
      match.changeOnTheFly(side, 25);
    }
    if (foul.equals(Optional.of(side))) {
      foul = Optional.empty();
      whistle.settle(carrier);
      return whistle.penalty(side);
    }
    return carrier;
  }

  /** The same player still has it, farther on. */
  Next keeps(Carrier carrier) {
    return control(Action.TOUCH, carrier.side(), carrier.skater(), carrier.at());
  }

  /** Whoever of a side is soonest gets the puck at a place of its frame, no sooner than that. */
  Next gets(Action how, Side side, Place at, double after) {
    Place home = side.homeFrame(at);
    Body body = match.ice.soonest(side, home);
    goesThere(body, home, after, Math.max(after, LONGEST_S));
    return control(how, side, body.skater, at);
  }

  /** Time runs until somebody is at a puck that takes a while, but no longer than that, s. */
  private void goesThere(Body body, Place home, double puckTakes, double longest) {
    for (double t = 0; t < longest; t += Ice.STEP) {
      if (t >= puckTakes && body.distanceTo(home) < GETS_IT) {
        return;
      }
      body.bound = true;
      body.goTo(home.x(), home.y(), body.top());
      match.tick(Ice.STEP);
    }
  }

  /**
   * A loose puck at a place of a side's frame: whoever is there first, of either team, once the
   * puck is.
   *
   * @param side who sent it
   * @param after seconds until it is there
   * @param wait seconds by which the skaters of that side start later than the others
   */
  Next loose(Side side, Place at, double after, double wait) {
    Place home = side.homeFrame(at);
    match.ice.sent(home, true);
    for (Body b : match.ice.bodies(side)) {
      b.late += Math.max(0, wait);
    }
    for (Body b : match.ice.bodies(side.other())) {
      b.late += Math.max(0, -wait);
    }
    for (double t = 0; t < after || t < LONGEST_S; t += Ice.STEP) {
      if (t >= after && nearest(home).distanceTo(home) < GETS_IT) {
        return recovers(nearest(home), home);
      }
      match.tick(Ice.STEP);
    }
    Body own = match.ice.soonest(side, home);
    Body other = match.ice.soonest(side.other(), home);
    return recovers(own.distanceTo(home) < other.distanceTo(home) ? own : other, home);
  }

  private Next recovers(Body body, Place home) {
    return control(Action.RECOVERY, body.side, body.skater, body.side.homeFrame(home));
  }

  /** The skater of either team who is nearest to a place of the home team's frame. */
  private Body nearest(Place home) {
    return Arrays.stream(Side.values())
        .flatMap(side -> match.ice.bodies(side).stream())
        .min(Comparator.comparingDouble(b -> b.distanceTo(home)))
        .orElseThrow();
  }

  /** Who of a side is nearest to a place of its frame. */
  Skater nearest(Side side, Place at) {
    return match.ice.soonest(side, side.homeFrame(at)).skater;
  }

  /** The checker who got to the carrier has the puck, where the carrier lost it. */
  Next stripped(Carrier carrier, Place lost) {
    Side side = carrier.side().other();
    Body holder = match.ice.holder().orElseThrow();
    Body checker =
        Contact.reached(match.ice, holder)
            .orElseGet(() -> match.ice.soonest(side, carrier.side().homeFrame(lost)));
    Next next = control(Action.TAKEAWAY, side, checker.skater, lost.seenByOpponent());
    holder.late = match.dice.between(0.8, 1.6);
    return next;
  }

  /** The goalkeeper comes out and plays the puck behind the net. */
  Next keeperGets(Side side) {
    Place at = match.spots.inside(-match.rink.goalLine() - 1, match.dice.between(-4, 4));
    return control(Action.RECOVERY, side, match.bench(side).goalkeeper(), at);
  }

  /** A pass that is received: both rows, and the time between. */
  Next received(Carrier from, Target to) {
    underway(from, to);
    return control(Action.TOUCH, from.side(), to.skater(), to.place());
  }

  /** A pass on its way: its row, and its receiver goes where it will be. */
  void underway(Carrier from, Target to) {
    match.logPass(from, Outcome.COMPLETE, to);
    Side side = from.side();
    Place home = side.homeFrame(to.place());
    match.ice.sent(home, false);
    Body b = match.ice.body(side, to.skater()).orElseThrow();
    goesThere(b, home, to.flight(), to.flight() + LATE_FOR_PASS_S);
  }

  /** Face-off: who wins it, and who has the puck a moment later. */
  Next faceOff(Next.Drop drop) {
    foul = Optional.empty();
    underWay = Optional.empty();
    match.faceOff(drop);
    double homeWins = 0.5;
    if (drop.zoneOf().isPresent()) {
      double own = drop.iced() ? WON_AFTER_ICING : WON_IN_OWN_ZONE;
      homeWins = drop.zoneOf().get() == Side.HOME ? own : 1 - own;
    }
    Side winner = match.dice.chance(homeWins) ? Side.HOME : Side.AWAY;
    Place spot = winner.homeFrame(drop.homeSpot());
    Carrier center = new Carrier(winner, drawer(winner), spot, 0);
    match.log(match.row(Action.FACEOFF, center).against(drawer(winner.other())).noTouch());
    Side first = match.dice.chance(0.9) ? winner : winner.other();
    Place own = first.homeFrame(drop.homeSpot());
    Place at =
        clearOfCenter(own.x() - match.dice.between(2, 6.5), own.y() + match.dice.between(-5, 5));
    match.ice.won(first, first.homeFrame(at));
    return gets(Action.RECOVERY, first, at, match.dice.between(0.6, 2.2));
  }

  /** Things that stop play and are no part of it, before a carrier decides. */
  Optional<Next> interrupted(Carrier carrier) {
    Side side = carrier.side();
    if (foul.isEmpty() && match.dice.chance(FOUL)) {
      boolean own = match.dice.chance(OWN_FOUL);
      Side by = own ? side : side.other();
      if (match.box.hasRoom(by)) {
        if (own) {
          whistle.settle(carrier);
          return Optional.of(whistle.penalty(by));
        }
        foul = Optional.of(by);
      }
    }
    if (match.dice.chance(MISHAP)) {
      whistle.settle(carrier);
      Stoppage why = match.dice.chance(0.5) ? Stoppage.NET_OFF : Stoppage.INJURY;
      return Optional.of(whistle.nearest(why, side, carrier.at()));
    }
    return Optional.empty();
  }

  /** A place of a frame that is not within the width of the red line, where no logger can see. */
  Place clearOfCenter(double x, double y) {
    double clear = Math.abs(x) < 0.5 ? Math.copySign(0.5, x) : x;
    return match.spots.inside(clear, y);
  }

  private Skater drawer(Side side) {
    return match.onIce(side).stream()
        .filter(s -> s.role() == Role.FORWARD)
        .findFirst()
        .orElseThrow();
  }
}
