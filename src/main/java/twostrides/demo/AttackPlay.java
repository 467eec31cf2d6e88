package twostrides.demo;

import java.util.EnumMap;
import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/** A player with the puck in the attacking zone. All shares are assumed. */
final class AttackPlay {
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

  private final Match match;
  private final Hands hands;
  private final Releases releases;
  private final Whistle whistle;

  AttackPlay(Match match, Hands hands, Releases releases, Whistle whistle) {
    this.match = match;
    this.hands = hands;
    this.releases = releases;
    this.whistle = whistle;
  }

  Next decide(Carrier start) {
    boolean powerPlay = match.box.manpower(start.side()) == Manpower.POWER_PLAY;
    EnumMap<Intent, Double> w = new EnumMap<>(Intent.class);
    w.put(Intent.SHOT, powerPlay ? 19.0 : 26.0);
    w.put(Intent.PASS, powerPlay ? 60.0 : 40.0);
    w.put(Intent.DEEP, powerPlay ? 2.0 : 9.0);
    w.put(Intent.CARRY, 4.0);
    Intent intent = match.dice.choose(w);
    double hold = match.dice.between(0.2, powerPlay ? 4.6 : 3.0);
    Carrier c = start.movedTo(around(start.at(), Math.min(3, hold) * 2.4));
    match.run(hold);
    if (!match.dice.chance(c.pressure().keeps(hold * 0.3))) {
      return turnover(c);
    }
    return switch (intent) {
      case SHOT -> shoot(c);
      case PASS -> pass(c);
      case DEEP -> deep(c);
      case CARRY -> hands.control(Action.TOUCH, c);
    };
  }

  private Next pass(Carrier c) {
    Place to = around(new Place(match.dice.between(9, 29), match.dice.between(-11, 11)), 0);
    Role role = match.dice.chance(0.3) ? Role.DEFENDER : Role.FORWARD;
    Skater receiver = hands.receiver(c, to, role);
    double complete =
        switch (c.pressure()) {
          case NONE -> 0.88;
          case LIGHT -> 0.74;
          case HEAVY -> 0.50;
        };
    if (match.dice.chance(complete + c.skater().habits().passing())) {
      return hands.received(c, receiver, to);
    }
    releases.missed(c, receiver, to);
    return loose(c.side(), to, 0.18, 0.12);
  }

  /** Along the boards behind the net, for whoever comes first. */
  private Next deep(Carrier c) {
    boolean regained = match.dice.chance(0.35);
    releases.send(c, regained);
    match.run(match.dice.between(1.2, 4));
    Place at = around(new Place(match.dice.between(22, 30), match.dice.between(-12, 12)), 0);
    return regained
        ? hands.gets(Action.RECOVERY, c.side(), at, Role.FORWARD)
        : defenderGets(c.side(), at);
  }

  private Next shoot(Carrier c) {
    boolean empty = match.netEmpty(c.side().other());
    EnumMap<Shot, Double> w = new EnumMap<>(Shot.class);
    w.put(Shot.GOAL, empty ? 60.0 : 4.6);
    w.put(Shot.ON_NET, empty ? 0.0 : 42.0);
    w.put(Shot.MISSED, 28.0);
    w.put(Shot.BLOCKED, 25.0);
    Shot shot = match.dice.choose(w);
    match.log(match.row(Action.SHOT, c).went(Outcome.valueOf(shot.name())));
    match.run(0.2 + c.at().distanceTo(new Place(match.rink.goalLine(), 0)) / 24);
    return switch (shot) {
      case GOAL -> whistle.goal(c.side());
      case ON_NET ->
          match.dice.chance(0.30)
              ? whistle.held(c.side().other())
              : loose(c.side(), new Place(25, c.at().y() / 2), 0.21, 0);
      case MISSED ->
          match.dice.chance(0.09)
              ? whistle.nearest(Stoppage.OUT_OF_PLAY, c.side(), c.at())
              : loose(c.side(), new Place(27, -c.at().y()), 0.34, 0.04);
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
    Skater blocker =
        match.whoGetsTo(defending, theirs, 0, Role.DEFENDER, java.util.Optional.empty());
    match.log(
        match.row(Action.BLOCK, new Carrier(defending, blocker, theirs, Pressure.NONE)).noTouch());
    return loose(c.side(), at, 0.32, 0.12);
  }

  /** A loose puck after a shot or pass: who gets it, and whether it comes out of the zone. */
  private Next loose(Side attacking, Place near, double own, double comesOut) {
    match.run(match.dice.between(1.0, 4.8));
    boolean regained = match.dice.chance(own);
    Role role = regained ? Role.FORWARD : Role.DEFENDER;
    Side side = regained ? attacking : attacking.other();
    Place at =
        match.dice.chance(comesOut)
            ? hands.clearOfCenter(match.dice.between(0.6, 7.3), match.dice.between(-12, 12))
            : around(near, 5);
    return hands.gets(Action.RECOVERY, side, regained ? at : at.seenByOpponent(), role);
  }

  private Next turnover(Carrier c) {
    return hands.gets(Action.TAKEAWAY, c.side().other(), c.at().seenByOpponent(), Role.DEFENDER);
  }

  private Next defenderGets(Side attacking, Place at) {
    return hands.gets(Action.RECOVERY, attacking.other(), at.seenByOpponent(), Role.DEFENDER);
  }

  /** A place within reach that is surely inside the attacking zone. */
  private Place around(Place at, double metres) {
    double x = at.x() + match.dice.between(-metres, metres) * 0.7;
    double y = at.y() + match.dice.between(-metres, metres) * 0.7;
    return match.spots.inside(Math.max(x, match.rink.blueLineNeutralEdge() + 0.2), y);
  }
}
