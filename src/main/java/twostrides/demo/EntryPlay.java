package twostrides.demo;

import java.util.Optional;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.rink.Place;

/** A player with the puck between center and the far blue line. All shares are assumed. */
final class EntryPlay extends Play {
  private enum Intent {
    CARRY_IN,
    DUMP,
    PASS_IN,
    REGROUP
  }

  /** Chance that a teammate is over the line too early. */
  private static final double OFFSIDE = 0.045;

  EntryPlay(Hands hands) {
    super(hands);
  }

  Next decide(Carrier c) {
    boolean pressed = c.pressure() == Pressure.HEAVY;
    double dump = c.pressure() == Pressure.NONE ? 12 : 38;
    double regroup = pressed ? 0.5 : 3;
    return switch (match.dice.choose(weights(Intent.class, pressed ? 25 : 50, dump, 16, regroup))) {
      case CARRY_IN -> carryIn(c);
      case DUMP -> dump(c);
      case PASS_IN -> passIn(c);
      case REGROUP -> regroup(c);
    };
  }

  /** The puck goes with the player to a place of his frame; checkers do not stop him here. */
  private Carrier brought(Place to, double speed) {
    Body b = match.ice.holder().orElseThrow();
    Place home = b.side.homeFrame(to);
    for (double t = 0; t < 4 && b.distanceTo(home) > 0.8; t += Ice.STEP) {
      b.goThrough(home.x(), home.y(), speed);
      match.tick(Ice.STEP);
    }
    return match.holding().movedTo(to);
  }

  private Next carryIn(Carrier c) {
    double speed = match.dice.between(5, 7.5);
    Place over = match.spots.inside(line + 0.2, c.at().y() * 0.97);
    Carrier there = brought(over, speed);
    if (match.dice.chance(OFFSIDE)) {
      return whistle.offside(c.side(), over);
    }
    if (!match.dice.chance(there.pressure() == Pressure.HEAVY ? 0.5 : 0.82)) {
      Place lost = match.spots.inside(Math.max(0.5, line + match.dice.between(-1, 1.5)), over.y());
      return hands.gets(Action.TAKEAWAY, c.side().other(), lost.seenByOpponent(), 0);
    }
    match.log(match.row(Action.ENTRY, there).went(Outcome.CARRIED).noTouch());
    Place inside = match.spots.inside(match.dice.between(line + 1.5, line + 9), over.y() * 0.9);
    return hands.keeps(brought(inside, speed));
  }

  private Next dump(Carrier c) {
    match.run(match.dice.between(0, 0.6));
    releases.send(c, 0);
    return releases.deepAfterRelease(c);
  }

  private Next passIn(Carrier c) {
    Optional<Target> found = Target.within(match, c, line + 1.4, 20);
    if (found.isEmpty()) {
      return dump(c);
    }
    Target to = found.get();
    if (match.dice.chance(to.completes(c, 2.3))) {
      if (match.dice.chance(OFFSIDE * 2)) {
        hands.underway(c, to);
        return whistle.offside(c.side(), to.place());
      }
      return hands.received(c, to);
    }
    releases.missed(c, to, 0);
    Place loose = match.spots.inside(to.place().x() + match.dice.between(-6, 6), to.place().y());
    return hands.gets(
        Action.RECOVERY, c.side().other(), loose.seenByOpponent(), match.dice.between(0.8, 2));
  }

  /** Back into the own half, into the own zone when a defender waits there. */
  private Next regroup(Carrier c) {
    Optional<Target> to = Target.within(match, c, -14, -3);
    return to.isPresent() ? hands.received(c, to.get()) : dump(c);
  }
}
