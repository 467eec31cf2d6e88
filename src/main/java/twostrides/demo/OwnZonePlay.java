package twostrides.demo;

import java.util.Optional;
import twostrides.demo.ExitTruth.CenterMark;
import twostrides.demo.ExitTruth.Way;
import twostrides.demo.Ice.CarryEnd;
import twostrides.demo.Keeping.Kept;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/**
 * A player with the puck in the own zone: he looks about until he has to act, what he means to do
 * is drawn by {@link OwnZoneIntent}, and skaters and chance decide how it goes. All shares are
 * assumed and set so that games come out like the open games: docs/demo.md.
 */
final class OwnZonePlay extends Play {
  /** A player looks about, and carries on, no longer than this before he decides again, s. */
  private static final double LONGEST_HOLD_S = 9;

  private static final double LONGEST_CARRY_S = 5;

  private final NeutralPlay neutral;

  OwnZonePlay(Hands hands, NeutralPlay neutral) {
    super(hands);
    this.neutral = neutral;
  }

  Next decide(Carrier start) {
    Carrier c = start;
    if (c.skater().role() == Role.GOALKEEPER) {
      match.run(match.dice.between(0.2, 1.2));
    } else if (match.dice.chance(0.93)) {
      Kept kept = keeping.hold(match.dice.between(1, LONGEST_HOLD_S), -30, -line - 0.3);
      if (kept.lost() && match.dice.chance(0.7)) {
        return taken(kept.carrier());
      }
      c = kept.carrier();
    }
    return act(c, OwnZoneIntent.choose(match, c));
  }

  private Next act(Carrier c, OwnZoneIntent intent) {
    return switch (intent) {
      case TEAMMATE -> toTeammate(c);
      case CARRY -> carry(c);
      case PASS -> pass(c);
      case CHIP -> chip(c);
      case LONG -> clear(c);
      case EMPTY_NET ->
          atEmptyNet(c, 0.3, 0.75, chance -> leaveSent(Way.LONG_CLEARANCE, c, chance));
    };
  }

  private Next toTeammate(Carrier c) {
    Optional<Target> found = Target.within(match, c, -29, -line - 0.5);
    if (found.isEmpty()) {
      return pass(c);
    }
    Target to = found.get();
    if (match.dice.chance(to.completes(c, 4.2))) {
      return hands.received(c, to);
    }
    releases.missed(c, to, 0);
    // A missed pass ends control, and with it the attempt, also when a teammate picks it up.
    lose(c);
    return hands.loose(c.side(), nearby(to.place(), 6), match.dice.between(0.6, 1.6), 0.3);
  }

  private Next carry(Carrier c) {
    Kept kept = keeping.carry(0.25 - line, LONGEST_CARRY_S);
    Carrier now = kept.carrier();
    if (kept.end() == CarryEnd.THERE) {
      leave(Way.CARRY, c);
      return match.dice.chance(0.4) ? hands.keeps(now) : neutral.decide(now, false);
    }
    Carrier inside = now.movedTo(nearby(now.at(), 0));
    return kept.lost() ? taken(inside) : hands.keeps(inside);
  }

  private Next pass(Carrier c) {
    Optional<Target> far =
        match.dice.chance(0.75) ? Target.within(match, c, 0.6, 7.3) : Optional.empty();
    Optional<Target> found = far.isPresent() ? far : Target.within(match, c, -7.2, 7.3);
    if (found.isEmpty()) {
      return c.skater().role() == Role.GOALKEEPER ? clear(c) : carry(c);
    }
    Target to = found.get();
    boolean stretch = !match.shortOfCenter(to.place());
    if (match.dice.chance(to.completes(c, 2.65))) {
      leave(Way.PASS, c);
      if (stretch) {
        match.truth.center(CenterMark.GAINED);
      }
      return hands.received(c, to);
    }
    double stopped = 0.35;
    double iced = releases.iced(c, stretch ? 0.115 : 0.075);
    double chance = releases.missed(c, to, (1 - stopped) * iced);
    if (match.dice.chance(stopped)) {
      lose(c);
      double part = match.dice.between(0.1, 0.5);
      Place loose = nearby(between(c.at(), to.place(), part), 1.5);
      return hands.loose(c.side(), loose, match.dice.between(0.5, 1.4), 0.4);
    }
    leaveSent(Way.MISSED_PASS, c, chance);
    if (match.dice.chance(iced)) {
      return releases.icing(c);
    }
    return match.dice.chance(stretch ? 0.3 : 0.15)
        ? releases.deep(c)
        : looseInNeutral(c.side(), -7.3, 1.2, 3.4);
  }

  private Next chip(Carrier c) {
    if (!match.dice.chance(out(c, 0.92, 0.80, 0.62))) {
      return heldIn(c);
    }
    leaveSent(Way.CHIP, c, releases.send(c, 0));
    return looseInNeutral(c.side(), -7.3, 1.2, 3.4);
  }

  private Next clear(Carrier c) {
    if (match.dice.chance(0.045)) {
      releases.send(c, 0);
      lose(c);
      match.run(match.dice.between(0.6, 1.8));
      return whistle.nearest(Stoppage.OUT_OF_PLAY, c.side(), c.at());
    }
    if (!match.dice.chance(out(c, 0.95, 0.86, 0.70))) {
      return heldIn(c);
    }
    double iced = releases.iced(c, 0.175);
    leaveSent(Way.LONG_CLEARANCE, c, releases.send(c, iced));
    return match.dice.chance(iced) ? releases.icing(c) : releases.deepAfterRelease(c);
  }

  private Next heldIn(Carrier c) {
    releases.send(c, 0);
    lose(c);
    double x = -match.dice.between(line + 0.3, line + 5);
    Place at = match.spots.inside(x, c.at().y() + match.dice.between(-3, 3));
    Action how = match.dice.chance(0.15) ? Action.TAKEAWAY : Action.RECOVERY;
    return hands.gets(how, c.side().other(), at.seenByOpponent(), match.dice.between(0.6, 2));
  }

  /** An opponent strips the carrier inside the zone. */
  private Next taken(Carrier c) {
    lose(c);
    return hands.stripped(c, c.at());
  }

  private void lose(Carrier c) {
    leave(Way.KEPT_IN, c);
  }

  private void leave(Way way, Carrier c) {
    match.truth.left(way, c, match.clock, match.box.manpower(c.side()));
  }

  private void leaveSent(Way way, Carrier c, double chance) {
    leave(way, c);
    match.truth.leftWithChance(chance);
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
    return near(at, metres, -Double.MAX_VALUE, -line - 0.2);
  }
}
