package twostrides.demo;

import java.util.EnumMap;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.rink.Place;

/** A player with the puck between center and the far blue line. All shares are assumed. */
final class EntryPlay {
  private enum Intent {
    CARRY_IN,
    DUMP,
    PASS_IN,
    REGROUP
  }

  /** Chance that a teammate is over the line too early. */
  private static final double OFFSIDE = 0.045;

  private final Match match;
  private final Hands hands;
  private final Releases releases;
  private final Whistle whistle;

  EntryPlay(Match match, Hands hands, Releases releases, Whistle whistle) {
    this.match = match;
    this.hands = hands;
    this.releases = releases;
    this.whistle = whistle;
  }

  Next decide(Carrier c) {
    return switch (match.dice.choose(weights(c))) {
      case CARRY_IN -> carryIn(c);
      case DUMP -> dump(c);
      case PASS_IN -> passIn(c);
      case REGROUP -> regroup(c);
    };
  }

  private EnumMap<Intent, Double> weights(Carrier c) {
    EnumMap<Intent, Double> w = new EnumMap<>(Intent.class);
    w.put(Intent.CARRY_IN, c.pressure() == Pressure.HEAVY ? 25.0 : 50.0);
    w.put(Intent.DUMP, c.pressure() == Pressure.NONE ? 12.0 : 38.0);
    w.put(Intent.PASS_IN, 16.0);
    w.put(Intent.REGROUP, c.pressure() == Pressure.HEAVY ? 0.5 : 3.0);
    return w;
  }

  private Next carryIn(Carrier c) {
    double line = match.rink.blueLineNeutralEdge();
    Place over = match.spots.inside(line + 0.2, c.at().y() * 0.97);
    match.run(c.at().distanceTo(over) / match.dice.between(4.0, 6.8));
    if (match.dice.chance(OFFSIDE)) {
      return whistle.offside(c.side(), over);
    }
    if (!match.dice.chance(c.pressure() == Pressure.HEAVY ? 0.5 : 0.82)) {
      Place lost = match.spots.inside(Math.max(0.5, line + match.dice.between(-3, 1.5)), over.y());
      return hands.gets(Action.TAKEAWAY, c.side().other(), lost.seenByOpponent(), Role.DEFENDER);
    }
    match.log(match.row(Action.ENTRY, c.movedTo(over)).went(Outcome.CARRIED).noTouch());
    Place inside = match.spots.inside(match.dice.between(line + 1.5, line + 9), over.y() * 0.9);
    match.run(over.distanceTo(inside) / match.dice.between(4.0, 6.8));
    return hands.control(Action.TOUCH, c.movedTo(inside));
  }

  private Next dump(Carrier c) {
    match.run(match.dice.between(0, 1.2));
    Releases.Deep end = releases.decide(c, 0, 0.33);
    releases.send(c, end == Releases.Deep.REGAINED);
    return releases.deepAfterRelease(c, end);
  }

  private Next passIn(Carrier c) {
    Place to = match.spots.inside(match.dice.between(9, 20), match.dice.between(-11, 11));
    Skater receiver = hands.receiver(c, to, Role.FORWARD);
    if (match.dice.chance(0.68)) {
      if (match.dice.chance(OFFSIDE * 2)) {
        match.log(match.row(Action.PASS, c).went(Outcome.COMPLETE).toward(receiver, to));
        match.run(Hands.flight(c.at(), to));
        return whistle.offside(c.side(), to);
      }
      return hands.received(c, receiver, to);
    }
    releases.missed(c, receiver, to);
    match.run(match.dice.between(1, 3.4));
    Place loose = match.spots.inside(to.x() + match.dice.between(-6, 6), to.y());
    return hands.gets(Action.RECOVERY, c.side().other(), loose.seenByOpponent(), Role.DEFENDER);
  }

  /** Back into the own half, into the own zone when a defender waits there. */
  private Next regroup(Carrier c) {
    Place to = match.spots.inside(match.dice.between(-14, -3), match.dice.between(-10, 10));
    return hands.received(c, hands.receiver(c, to, Role.DEFENDER), to);
  }
}
