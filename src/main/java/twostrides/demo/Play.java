package twostrides.demo;

import java.util.EnumMap;
import java.util.function.DoubleConsumer;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.rink.Place;

/** What a player may do with the puck in one part of the ice, and what all parts have in common. */
abstract class Play {
  final Match match;
  final Hands hands;
  final Whistle whistle;
  final Releases releases;
  final Keeping keeping;

  /** The neutral-side edge of either blue line, m from center. */
  final double line;

  Play(Hands hands) {
    this.hands = hands;
    match = hands.match;
    whistle = hands.whistle;
    releases = new Releases(hands);
    keeping = new Keeping(match);
    line = match.rink.blueLineNeutralEdge();
  }

  /**
   * What may be chosen, and how likely.
   *
   * @param weights of the constants, in their order; the last ones may be left out
   */
  static <E extends Enum<E>> EnumMap<E, Double> weights(Class<E> type, double... weights) {
    EnumMap<E, Double> chosen = new EnumMap<>(type);
    for (int i = 0; i < weights.length; i++) {
      chosen.put(type.getEnumConstants()[i], weights[i]);
    }
    return chosen;
  }

  /**
   * Shoots from the own half at an empty net.
   *
   * @param goes the chance of a goal
   * @param usual the chance that it is iced when it is none, for the league's usual player
   * @param sent is told the chance that the player would have gained center
   */
  Next atEmptyNet(Carrier c, double goes, double usual, DoubleConsumer sent) {
    boolean in = match.dice.chance(goes);
    double iced = in ? 0 : releases.iced(c, usual);
    SheetRow shot = match.row(Action.SHOT, c).went(in ? Outcome.GOAL : Outcome.MISSED);
    match.log(shot);
    sent.accept(releases.truth(c, ReleaseTruth.Kind.SENT, iced));
    if (in) {
      match.run((match.rink.goalLine() - c.at().x()) / match.dice.between(14, 20));
      return whistle.goal(c.side());
    }
    return match.dice.chance(iced) ? releases.icing(c) : releases.deep(c);
  }

  /**
   * The puck is loose somewhere across the neutral zone.
   *
   * @param from least x in the frame of the side that sent it, m
   * @param soonest s until it is there
   * @param latest s
   */
  Next looseInNeutral(Side side, double from, double soonest, double latest) {
    Place loose = somewhereAcross(from);
    return hands.loose(side, loose, match.dice.between(soonest, latest), 0);
  }

  Place somewhereAcross(double from) {
    return hands.clearOfCenter(match.dice.between(from, 7.3), match.dice.between(-12, 12));
  }

  /**
   * A place within reach of another, but no nearer than that to the end that it shall not reach.
   */
  Place near(Place at, double metres, double least, double most) {
    double x = at.x() + match.dice.between(-metres, metres) * 0.7;
    double y = at.y() + match.dice.between(-metres, metres) * 0.7;
    return match.spots.inside(Math.max(least, Math.min(most, x)), y);
  }
}
