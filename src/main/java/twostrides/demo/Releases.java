package twostrides.demo;

import twostrides.demo.ExitTruth.Cause;
import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.ReleaseTruth.Kind;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.rink.Place;

/** Pucks sent on: the rows, the truth about each, and where a long one ends. */
final class Releases {
  /** Average speed of a puck that goes the length of the ice, m/s, assumed. */
  private static final double SLOWEST = 10;

  private static final double FASTEST = 18;

  /** Shortest time from a release to the whistle for icing, s, assumed. */
  private static final double SHORTEST_ICING_S = 2.1;

  /** Where the crossing of the far blue line is written: within the line, m. */
  private static final double FAR_LINE = 0.2;

  private final Match match;
  private final Hands hands;
  private final Whistle whistle;

  Releases(Match match, Hands hands, Whistle whistle) {
    this.match = match;
    this.hands = hands;
    this.whistle = whistle;
  }

  /** How a puck that runs deep ends; decided before anything is written. */
  enum Deep {
    ICED,
    FETCHED,
    REGAINED
  }

  /**
   * Decides how a puck that runs deep ends.
   *
   * @param iced chance of icing, were the team not exempt
   * @param regained chance that the own team gets it when it is not iced
   */
  Deep decide(Carrier from, double iced, double regained) {
    boolean exempt =
        match.box.manpower(from.side()) == Manpower.SHORTHANDED || !match.shortOfCenter(from.at());
    if (!exempt && match.dice.chance(iced)) {
      return Deep.ICED;
    }
    return match.dice.chance(regained) ? Deep.REGAINED : Deep.FETCHED;
  }

  /** Writes a release; the truth keeps it when it is short of center. */
  void send(Carrier from, boolean regained) {
    match.log(match.row(Action.RELEASE, from).went(regained ? Outcome.REGAINED : Outcome.LOST));
    keep(from, Kind.SENT);
  }

  /** Writes a pass that is not received; the truth keeps it when it is short of center. */
  void missed(Carrier from, Skater receiver, Place to) {
    match.log(match.row(Action.PASS, from).went(Outcome.MISSED).toward(receiver, to));
    keep(from, Kind.MISSED_PASS);
  }

  /** Writes a shot from the own half at an empty net; a puck sent on like any other. */
  void shotFromAfar(Carrier from, Outcome how) {
    match.log(match.row(Action.SHOT, from).went(how));
    keep(from, Kind.SENT);
  }

  /** A release that goes past the far blue line; send it first. */
  Next deepAfterRelease(Carrier from, Deep how) {
    if (how != Deep.ICED) {
      double x = match.rink.blueLineNeutralEdge() + FAR_LINE;
      Place line = match.spots.inside(x, from.at().y() + match.dice.between(-2, 2));
      match.log(match.row(Action.ENTRY, from.movedTo(line)).went(Outcome.DUMPED).noTouch());
    }
    return deep(from, how);
  }

  /** A puck on its way past the far blue line. */
  Next deep(Carrier from, Deep how) {
    double metres = match.rink.goalLine() - from.at().x();
    double seconds = metres / match.dice.between(SLOWEST, FASTEST);
    if (how == Deep.ICED) {
      match.run(Math.max(SHORTEST_ICING_S, seconds));
      return whistle.icing(from.side());
    }
    match.run(Math.max(1.2, seconds) + match.dice.between(0.4, 2.6));
    Side side = how == Deep.REGAINED ? from.side() : from.side().other();
    double depth = match.dice.between(15, match.rink.length() / 2);
    double y = match.dice.between(-12, 12);
    if (how == Deep.REGAINED) {
      return hands.gets(Action.RECOVERY, side, match.spots.inside(depth, y), Role.FORWARD);
    }
    if (!match.netEmpty(side) && match.dice.chance(0.12)) {
      return hands.keeperGets(side);
    }
    return hands.gets(Action.RECOVERY, side, match.spots.inside(-depth, y), Role.DEFENDER);
  }

  private void keep(Carrier from, Kind kind) {
    if (match.shortOfCenter(from.at())) {
      match.truth.released(
          new ReleaseTruth(
              match.clock.period(),
              match.clock.shown(),
              from.side(),
              from.skater(),
              kind,
              Cause.NONE,
              from.at(),
              match.rink.shortOfCenter(from.at().x()),
              match.chanceOfCenter(from)));
    }
  }
}
