package twostrides.demo;

import twostrides.demo.ExitTruth.CenterMark;
import twostrides.demo.ExitTruth.Way;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/**
 * A player with the puck in the own zone: the intention is drawn by {@link OwnZoneIntent}, here
 * chance decides how it goes. All shares are assumed and set so that games come out like the open
 * games: docs/demo.md.
 */
final class OwnZonePlay {
  private final Match match;
  private final Hands hands;
  private final Releases releases;
  private final Whistle whistle;
  private final NeutralPlay neutral;

  OwnZonePlay(Match match, Hands hands, Releases releases, Whistle whistle, NeutralPlay neutral) {
    this.match = match;
    this.hands = hands;
    this.releases = releases;
    this.whistle = whistle;
    this.neutral = neutral;
  }

  Next decide(Carrier start) {
    OwnZoneIntent intent = OwnZoneIntent.draw(match, start);
    Carrier c = start;
    if (intent != OwnZoneIntent.CARRY && match.dice.chance(0.6)) {
      double hold = match.dice.between(0.6, c.pressure() == Pressure.HEAVY ? 3.0 : 5.6);
      match.run(hold);
      c = start.movedTo(nearby(start.at(), Math.min(3, hold) * 2.4));
      if (!match.dice.chance(c.pressure().keeps(hold * 0.4))) {
        return taken(c);
      }
    }
    return switch (intent) {
      case TEAMMATE -> toTeammate(c);
      case CARRY -> carry(c);
      case PASS -> pass(c);
      case CHIP -> chip(c);
      case LONG -> clear(c);
      case EMPTY_NET -> atEmptyNet(c);
    };
  }

  private Next toTeammate(Carrier c) {
    Place to = nearby(new Place(match.dice.between(-29, -11), match.dice.between(-12, 12)), 0);
    Role role = match.dice.chance(0.35) ? Role.DEFENDER : Role.FORWARD;
    Skater receiver = hands.receiver(c, to, role);
    if (match.dice.chance(passing(c, 0.95, 0.88, 0.70))) {
      return hands.received(c, receiver, to);
    }
    releases.missed(c, receiver, to);
    boolean teammate = match.dice.chance(0.2);
    // A missed pass ends control, and with it the attempt, also when a teammate picks it up.
    lose(c);
    match.run(match.dice.between(1.0, 4.0));
    Place loose = nearby(to, 6);
    return teammate
        ? hands.gets(Action.RECOVERY, c.side(), loose, Role.DEFENDER)
        : opponentGets(c.side(), loose);
  }

  private Next carry(Carrier c) {
    double line = match.rink.blueLineNeutralEdge();
    Place to = match.spots.inside(-match.dice.between(line - 2.2, line - 0.3), c.at().y() * 0.9);
    double metres = c.at().distanceTo(to);
    double speed = match.dice.between(4.2, 6.6);
    if (!match.dice.chance(c.pressure().keepsFor(to.x() - c.at().x()))) {
      double part = match.dice.between(0, 0.8);
      match.run(part * metres / speed);
      return taken(c.movedTo(nearby(between(c.at(), to, part), 0)));
    }
    match.run(metres / speed);
    leave(Way.CARRY, c);
    boolean written = match.dice.chance(0.4);
    return written
        ? hands.control(Action.TOUCH, c.movedTo(to))
        : neutral.decide(c.movedTo(to), false);
  }

  private Next pass(Carrier c) {
    boolean stretch = match.dice.chance(0.42);
    double x = stretch ? match.dice.between(0.6, 7.4) : match.dice.between(-7.2, -0.6);
    Place to = hands.clearOfCenter(x, match.dice.between(-12, 12));
    Skater receiver = hands.receiver(c, to, Role.FORWARD);
    if (match.dice.chance(passing(c, 0.80, 0.64, 0.42) - (stretch ? 0.06 : -0.04))) {
      leave(Way.PASS, c);
      if (!match.shortOfCenter(to)) {
        match.truth.center(CenterMark.GAINED);
      }
      return hands.received(c, receiver, to);
    }
    releases.missed(c, receiver, to);
    if (match.dice.chance(0.42)) {
      lose(c);
      match.run(match.dice.between(0.6, 2.4));
      double part = match.dice.between(0.1, 0.5);
      return opponentGets(c.side(), nearby(between(c.at(), to, part), 1.5));
    }
    leaveSent(Way.MISSED_PASS, c);
    if (match.dice.chance(stretch ? 0.46 : 0.30)) {
      return releases.deep(c, releases.decide(c, 0.30, 0.10));
    }
    return looseInNeutral(c.side(), 0.22);
  }

  private Next chip(Carrier c) {
    if (!match.dice.chance(out(c, 0.92, 0.80, 0.62))) {
      return heldIn(c);
    }
    boolean regained = match.dice.chance(0.30);
    releases.send(c, regained);
    leaveSent(Way.CHIP, c);
    return looseInNeutral(c.side(), regained ? 1 : 0);
  }

  private Next clear(Carrier c) {
    if (match.dice.chance(0.045)) {
      releases.send(c, false);
      lose(c);
      match.run(match.dice.between(0.6, 1.8));
      return whistle.nearest(Stoppage.OUT_OF_PLAY, c.side(), c.at());
    }
    if (!match.dice.chance(out(c, 0.95, 0.86, 0.70))) {
      return heldIn(c);
    }
    Releases.Deep end = releases.decide(c, 0.25, 0.08);
    releases.send(c, end == Releases.Deep.REGAINED);
    leaveSent(Way.LONG_CLEARANCE, c);
    return releases.deepAfterRelease(c, end);
  }

  private Next atEmptyNet(Carrier c) {
    if (match.dice.chance(0.3)) {
      releases.shotFromAfar(c, Outcome.GOAL);
      leaveSent(Way.LONG_CLEARANCE, c);
      match.run((match.rink.goalLine() - c.at().x()) / match.dice.between(14, 20));
      return whistle.goal(c.side());
    }
    releases.shotFromAfar(c, Outcome.MISSED);
    leaveSent(Way.LONG_CLEARANCE, c);
    return releases.deep(c, releases.decide(c, 0.75, 0.05));
  }

  private Next heldIn(Carrier c) {
    releases.send(c, false);
    lose(c);
    match.run(match.dice.between(0.9, 3.0));
    double line = match.rink.blueLineNeutralEdge();
    double x = -match.dice.between(line + 0.3, line + 5);
    return opponentGets(c.side(), match.spots.inside(x, c.at().y() + match.dice.between(-3, 3)));
  }

  private Next looseInNeutral(Side side, double own) {
    match.run(match.dice.between(1.2, 3.8));
    Place loose = hands.clearOfCenter(match.dice.between(-7.3, 7.3), match.dice.between(-12, 12));
    return match.dice.chance(own)
        ? hands.gets(Action.RECOVERY, side, loose, Role.FORWARD)
        : hands.gets(Action.RECOVERY, side.other(), loose.seenByOpponent(), Role.DEFENDER);
  }

  /** An opponent strips the carrier inside the zone. */
  private Next taken(Carrier c) {
    lose(c);
    return hands.gets(Action.TAKEAWAY, c.side().other(), c.at().seenByOpponent(), Role.FORWARD);
  }

  private Next opponentGets(Side side, Place at) {
    Action how = match.dice.chance(0.15) ? Action.TAKEAWAY : Action.RECOVERY;
    return hands.gets(how, side.other(), at.seenByOpponent(), Role.FORWARD);
  }

  private void lose(Carrier c) {
    leave(Way.KEPT_IN, c);
  }

  private void leave(Way way, Carrier c) {
    match.truth.left(way, c, match.clock, match.box.manpower(c.side()));
  }

  private void leaveSent(Way way, Carrier c) {
    leave(way, c);
    match.truth.leftWithChance(match.chanceOfCenter(c));
  }

  private double passing(Carrier c, double free, double light, double heavy) {
    return out(c, free, light, heavy) + c.skater().habits().passing();
  }

  private static double out(Carrier c, double free, double light, double heavy) {
    return switch (c.pressure()) {
      case NONE -> free;
      case LIGHT -> light;
      case HEAVY -> heavy;
    };
  }

  private static Place between(Place from, Place to, double part) {
    return new Place(from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()));
  }

  /** A place within reach that is surely inside the own zone. */
  private Place nearby(Place at, double metres) {
    double x = at.x() + match.dice.between(-metres, metres) * 0.7;
    double y = at.y() + match.dice.between(-metres, metres) * 0.7;
    return match.spots.inside(Math.min(x, -match.rink.blueLineNeutralEdge() - 0.2), y);
  }
}
