package twostrides.demo;

import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.ReleaseTruth.Kind;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.rink.Place;

/** Pucks sent on: the rows, the truth about each, and where a long one ends. */
final class Releases {
  /**
   * Mean speed of an iced puck from the release to the whistle, m/s: of the icings of the open
   * games nine in ten lie between 7 and 14.
   */
  private static final double SLOWEST_ICED = 6.5;

  private static final double FASTEST_ICED = 14.5;

  /** Shortest time from a release to the whistle for icing, s: the same games. */
  private static final double SHORTEST_ICING_S = 2.2;

  /** Mean speed of a puck that goes deep and is played, m/s, assumed. */
  private static final double SLOWEST = 10;

  private static final double FASTEST = 18;

  /** Where the crossing of the far blue line is written: within the line, m. */
  private static final double FAR_LINE = 0.2;

  /** Chance that the goalkeeper comes out for a puck sent deep, assumed. */
  private static final double KEEPER = 0.12;

  private final Match match;
  private final Hands hands;
  private final Whistle whistle;

  Releases(Hands hands) {
    this.hands = hands;
    match = hands.match;
    whistle = hands.whistle;
  }

  /**
   * The chance that a puck sent on or missed here is iced: none past center or for a shorthanded
   * team, else the usual one with the player's habit as a factor on its odds.
   *
   * @param usual chance with the league's usual player
   */
  double iced(Carrier from, double usual) {
    boolean exempt =
        match.box.manpower(from.side()) == Manpower.SHORTHANDED || !match.shortOfCenter(from.at());
    double odds = usual / (1 - usual) * from.skater().habits().far();
    return exempt ? 0 : odds / (1 + odds);
  }

  /**
   * Writes a release; the truth keeps it when it is short of center.
   *
   * @param iced the chance that it is iced
   * @return the chance that the player would have gained center
   */
  double send(Carrier from, double iced) {
    hands.sentIn(match.row(Action.RELEASE, from));
    return truth(from, Kind.SENT, iced);
  }

  /** Writes a pass that is not received; the truth keeps it when it is short of center. */
  double missed(Carrier from, Target to, double iced) {
    match.logPass(from, Outcome.MISSED, to);
    return truth(from, Kind.MISSED_PASS, iced);
  }

  /** The puck runs over the goal line untouched. */
  Next icing(Carrier from) {
    double metres = match.rink.goalLine() - from.at().x();
    double seconds = metres / match.dice.about(SLOWEST_ICED, FASTEST_ICED);
    Place at =
        match.spots.inside(
            match.rink.goalLine() + match.dice.between(0.3, 3), match.dice.between(-12, 12));
    match.ice.sent(from.side().homeFrame(at), true);
    match.run(Math.max(SHORTEST_ICING_S, seconds));
    whistle.touched(from.side().other(), at.seenByOpponent());
    return whistle.icing(from.side());
  }

  /** A release that goes past the far blue line and is played; send it first. */
  Next deepAfterRelease(Carrier from) {
    double x = match.rink.blueLineNeutralEdge() + FAR_LINE;
    Place line = match.spots.inside(x, from.at().y() + match.dice.between(-2, 2));
    match.log(match.row(Action.ENTRY, from.movedTo(line)).went(Outcome.DUMPED).noTouch());
    return deep(from);
  }

  /** A puck on its way past the far blue line, to be played there. */
  Next deep(Carrier from) {
    double metres = match.rink.goalLine() - from.at().x();
    double seconds = Math.max(1.2, metres / match.dice.between(SLOWEST, FASTEST));
    Side other = from.side().other();
    match.changeOnTheFly(from.side(), 0);
    if (!match.netEmpty(other) && match.dice.chance(KEEPER)) {
      match.ice.sent(from.side().homeFrame(new Place(match.rink.goalLine(), 0)), true);
      match.run(seconds + match.dice.between(0.2, 1.2));
      return hands.keeperGets(other);
    }
    double depth = match.dice.between(15, match.rink.length() / 2);
    Place at = match.spots.inside(depth, match.dice.between(-12, 12));
    return hands.loose(from.side(), at, seconds + match.dice.between(0.2, 1.6), 0);
  }

  /**
   * Tells the truth about a puck that was just let go, when it is short of center.
   *
   * @param iced the chance that it is iced
   * @return the chance that the player would have gained center
   */
  double truth(Carrier from, Kind kind, double iced) {
    if (!match.shortOfCenter(from.at())) {
      return 1;
    }
    double chance = match.chanceOfCenter();
    match.truth.released(
        new ReleaseTruth(
            match.clock,
            from,
            kind,
            match.spots.shortOfCenter(from.at()),
            chance,
            iced,
            Seen.of(match.ice, from.side())));
    return chance;
  }
}
