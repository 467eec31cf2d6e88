package twostrides.demo;

import java.util.Optional;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/** Who gets the puck: recoveries, takeaways, passes received, and fouls that wait for a whistle. */
final class Hands {
  /** Chance of a foul by the team without the puck, for each decision of a carrier; assumed. */
  private static final double FOUL = 0.0074;

  /** Share of fouls by the carrier's own team, whistled at once; assumed. */
  private static final double OWN_FOUL = 0.16;

  /** Chance for each decision that a net comes off or somebody is hurt; assumed. */
  private static final double MISHAP = 0.0014;

  /** Share of pucks for a defender that a forward gets instead; assumed. */
  private static final double OUT_OF_POSITION = 0.3;

  private final Match match;
  private final Whistle whistle;
  private Optional<Side> foul = Optional.empty();

  Hands(Match match, Whistle whistle) {
    this.match = match;
    this.whistle = whistle;
  }

  /** A player has the puck from now on. */
  Next control(Action how, Carrier carrier) {
    boolean inside = match.inOwnZone(carrier.at());
    if (match.truth.attemptOpen() && !inside) {
      throw new IllegalStateException("the puck is out and nobody said how: " + carrier);
    }
    Side side = carrier.side();
    match.netsWithPuck(side);
    match.truth.controls(side, match.clock, inside);
    match.log(match.row(how, carrier));
    if (!match.shortOfCenter(carrier.at())) {
      match.changeOnTheFly(side);
    }
    if (foul.equals(Optional.of(side))) {
      foul = Optional.empty();
      whistle.settle(carrier);
      return whistle.penalty(side);
    }
    return new Next.Held(carrier);
  }

  /** A side gets a loose puck, or takes it from somebody, at a place of its frame. */
  Next gets(Action how, Side side, Place at, Role wanted) {
    Role likely = match.dice.chance(OUT_OF_POSITION) ? Role.FORWARD : wanted;
    Skater skater = match.whoGetsTo(side, at, 0, likely, Optional.empty());
    return control(how, new Carrier(side, skater, at, pressureAt(side, at, true)));
  }

  /** The goalkeeper comes out and plays the puck behind the net. */
  Next keeperGets(Side side) {
    Place at = match.spots.inside(-match.rink.goalLine() - 1, match.dice.between(-4, 4));
    Skater keeper = match.bench(side).goalkeeper();
    return control(Action.RECOVERY, new Carrier(side, keeper, at, Pressure.LIGHT));
  }

  /** A pass that is received: both rows, and the time between. */
  Next received(Carrier from, Skater receiver, Place to) {
    match.log(match.row(Action.PASS, from).went(Outcome.COMPLETE).toward(receiver, to));
    match.run(flight(from.at(), to));
    return control(
        Action.TOUCH, new Carrier(from.side(), receiver, to, pressureAt(from.side(), to, false)));
  }

  /** Who is to receive a pass. */
  Skater receiver(Carrier from, Place to, Role wanted) {
    double flight = flight(from.at(), to);
    return match.whoGetsTo(from.side(), to, flight, wanted, Optional.of(from.skater()));
  }

  /** Seconds that a pass is under way: 12 m/s and a moment to take it, assumed. */
  static double flight(Place from, Place to) {
    return 0.3 + from.distanceTo(to) / 12.0;
  }

  /** Face-off: who wins it, and who has the puck a moment later. */
  Next faceOff(Next.Drop drop) {
    foul = Optional.empty();
    match.netsAtFaceOff();
    Side winner = match.dice.chance(0.5) ? Side.HOME : Side.AWAY;
    Place spot = winner.homeFrame(drop.homeSpot());
    Carrier center = new Carrier(winner, drawer(winner), spot, Pressure.HEAVY);
    match.log(match.row(Action.FACEOFF, center).against(drawer(winner.other())).noTouch());
    match.run(match.dice.between(0.6, 2.8));
    Side first = match.dice.chance(0.9) ? winner : winner.other();
    Place own = first.homeFrame(drop.homeSpot());
    Place at =
        clearOfCenter(own.x() - match.dice.between(1, 6), own.y() + match.dice.between(-5, 5));
    return gets(Action.RECOVERY, first, at, Role.DEFENDER);
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

  private Pressure pressureAt(Side side, Place at, boolean loosePuck) {
    double relief =
        switch (match.box.manpower(side)) {
          case EVEN -> 1.0;
          case POWER_PLAY -> 0.5;
          case SHORTHANDED -> match.inOwnZone(at) ? 1.1 : 0.8;
        };
    double heavy = loosePuck ? 0.46 : 0.24;
    return Pressure.draw(match.dice, heavy * relief, 0.38);
  }
}
