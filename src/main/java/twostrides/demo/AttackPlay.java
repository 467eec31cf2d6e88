package twostrides.demo;

import java.util.EnumMap;
import java.util.Optional;
import twostrides.demo.PenaltyBox.Manpower;
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

  /** Chance that a checker who is there takes the puck here, where players protect it. */
  private static final double TAKEN = 0.35;

  private final Match match;
  private final Hands hands;
  private final Releases releases;
  private final Whistle whistle;
  private final Keeping keeping;

  AttackPlay(Match match, Hands hands, Releases releases, Whistle whistle) {
    this.match = match;
    this.hands = hands;
    this.releases = releases;
    this.whistle = whistle;
    keeping = new Keeping(match);
  }

  Next decide(Carrier start) {
    boolean powerPlay = match.box.manpower(start.side()) == Manpower.POWER_PLAY;
    EnumMap<Intent, Double> w = new EnumMap<>(Intent.class);
    w.put(Intent.SHOT, powerPlay ? 17.0 : 19.0);
    w.put(Intent.PASS, powerPlay ? 60.0 : 40.0);
    w.put(Intent.DEEP, powerPlay ? 2.0 : 9.0);
    w.put(Intent.CARRY, 4.0);
    Intent intent = match.dice.choose(w);
    Keeping.Kept kept =
        keeping.hold(
            match.dice.between(0.3, powerPlay ? 5 : 3.6),
            match.rink.blueLineNeutralEdge() + 0.3,
            match.rink.length() / 2);
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
    Place at =
        match.dice.chance(comesOut)
            ? hands.clearOfCenter(match.dice.between(0.6, 7.3), match.dice.between(-12, 12))
            : around(near, 5);
    return hands.loose(attacking, at, match.dice.between(1, 4.8), 0.8);
  }

  /** A place within reach that is surely inside the attacking zone. */
  private Place around(Place at, double metres) {
    double x = at.x() + match.dice.between(-metres, metres) * 0.7;
    double y = at.y() + match.dice.between(-metres, metres) * 0.7;
    return match.spots.inside(Math.max(x, match.rink.blueLineNeutralEdge() + 0.2), y);
  }
}
