package twostrides.demo;

import java.util.Optional;
import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/** A player with the puck in the attacking zone. All shares are assumed. */
final class AttackPlay extends Play {
  private enum Intent {
    SHOT,
    PASS,
    DEEP,
    CARRY
  }

  private enum Shot {
    GOAL,
    ON_NET,
    MISSED,
    BLOCKED
  }

  /** Chance that a checker who is there takes the puck here, where players protect it. */
  private static final double TAKEN = 0.35;

  AttackPlay(Hands hands) {
    super(hands);
  }

  Next decide(Carrier start) {
    boolean powerPlay = match.box.manpower(start.side()) == Manpower.POWER_PLAY;
    Intent intent =
        match.dice.choose(
            powerPlay ? weights(Intent.class, 17, 60, 2, 4) : weights(Intent.class, 19, 40, 9, 4));
    Keeping.Kept kept =
        keeping.hold(
            match.dice.between(0.3, powerPlay ? 5 : 3.6), line + 0.3, match.rink.length() / 2);
    Carrier c = kept.carrier();
    if (kept.lost() && match.dice.chance(TAKEN)) {
      return hands.stripped(c, c.at());
    }
    return switch (intent) {
      case SHOT -> shoot(c);
      case PASS -> pass(c);
      case DEEP -> deep(c);
      case CARRY -> hands.keeps(c);
    };
  }

  private Next pass(Carrier c) {
    Optional<Target> found = Target.within(match, c, 9, 29);
    if (found.isEmpty()) {
      return shoot(c);
    }
    Target to = found.get();
    if (match.dice.chance(to.completes(c, 3.4))) {
      return hands.received(c, to);
    }
    releases.missed(c, to, 0);
    return loose(c.side(), to.place(), 0.12);
  }

  /** Along the boards behind the net, for whoever comes first. */
  private Next deep(Carrier c) {
    releases.send(c, 0);
    Place at = around(new Place(match.dice.between(22, 30), match.dice.between(-12, 12)), 0);
    return hands.loose(c.side(), at, match.dice.between(1.2, 3), 0.3);
  }

  private Next shoot(Carrier c) {
    boolean empty = match.netEmpty(c.side().other());
    Shot shot =
        match.dice.choose(
            empty ? weights(Shot.class, 60, 0, 28, 25) : weights(Shot.class, 4.6, 42, 28, 25));
    match.log(match.row(Action.SHOT, c).went(Outcome.valueOf(shot.name())));
    match.run(0.2 + c.at().distanceTo(new Place(match.rink.goalLine(), 0)) / 24);
    return switch (shot) {
      case GOAL -> whistle.goal(c.side());
      case ON_NET ->
          match.dice.chance(0.30)
              ? whistle.held(c.side().other())
              : loose(c.side(), new Place(25, c.at().y() / 2), 0);
      case MISSED ->
          match.dice.chance(0.09)
              ? whistle.nearest(Stoppage.OUT_OF_PLAY, c.side(), c.at())
              : loose(c.side(), new Place(27, -c.at().y()), 0.04);
      case BLOCKED -> blocked(c);
    };
  }

  private Next blocked(Carrier c) {
    double part = match.dice.between(0.2, 0.6);
    Place at =
        around(
            new Place(
                c.at().x() + part * (match.rink.goalLine() - c.at().x()), c.at().y() * (1 - part)),
            0);
    Side defending = c.side().other();
    Place theirs = at.seenByOpponent();
    Skater blocker = hands.nearest(defending, theirs);
    match.log(match.row(Action.BLOCK, new Carrier(defending, blocker, theirs, 0)).noTouch());
    return loose(c.side(), at, 0.12);
  }

  /** A loose puck after a shot or pass; it may come out of the zone. */
  private Next loose(Side attacking, Place near, double comesOut) {
    Place at = match.dice.chance(comesOut) ? somewhereAcross(0.6) : around(near, 5);
    return hands.loose(attacking, at, match.dice.between(1, 4.8), 0.8);
  }

  /** A place within reach that is surely inside the attacking zone. */
  private Place around(Place at, double metres) {
    return near(at, metres, line + 0.2, Double.MAX_VALUE);
  }
}
