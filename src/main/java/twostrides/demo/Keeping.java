package twostrides.demo;

import twostrides.demo.Ice.CarryEnd;
import twostrides.rink.Place;

/** A player who keeps the puck: about where he is, or up ice; until a checker gets to him. */
final class Keeping {
  /** A checker who could be there so soon makes a player act, s; each time somewhere between. */
  private static final double LEAST_WARY_S = 0.4;

  private static final double MOST_WARY_S = 1.2;

  /** So long a player needs to do anything with a puck, s. */
  private static final double HANDLING_S = 0.3;

  private final Match match;

  Keeping(Match match) {
    this.match = match;
  }

  /**
   * What became of him.
   *
   * @param carrier the player as he is now
   * @param end how it ended; still at it when nothing came of it
   */
  record Kept(Carrier carrier, CarryEnd end) {
    boolean lost() {
      return end == CarryEnd.REACHED;
    }
  }

  /**
   * Looks about for a while, within a stretch of ice.
   *
   * @param seconds at most; less when a checker comes close
   * @param from least x in the team's frame, m
   * @param to largest x
   */
  Kept hold(double seconds, double from, double to) {
    Body b = match.ice.holder().orElseThrow();
    int dir = Ice.direction(b.side);
    double pace = match.dice.between(3, 6);
    double wary = match.dice.between(LEAST_WARY_S, MOST_WARY_S);
    for (double t = 0; t < seconds && goesOn(b, t, wary); t += Ice.STEP) {
      if (b.wanders()) {
        double x = Math.max(from, Math.min(to, dir * b.x + match.dice.between(-4, 6)));
        b.goThrough(dir * x, b.y + match.dice.between(-7, 7), pace);
      }
      match.tick(Ice.STEP);
      if (dir * b.x > to || dir * b.x < from) {
        b.x = dir * Math.max(from, Math.min(to, dir * b.x));
        b.vx = 0;
      }
    }
    return kept(
        Contact.reached(match.ice, b).isPresent() ? CarryEnd.REACHED : CarryEnd.STILL_AT_IT);
  }

  private boolean goesOn(Body b, double held, double wary) {
    return held < HANDLING_S
        ? Contact.reached(match.ice, b).isEmpty()
        : Contact.secondsTo(match.ice, b) > wary;
  }

  /**
   * Carries it up ice.
   *
   * @param there x in the team's frame at which he has done it, m
   * @param longest seconds after which he thinks again
   */
  Kept carry(double there, double longest) {
    Body b = match.ice.holder().orElseThrow();
    match.ice.freshMinds();
    double speed = Futures.speed(b, match.dice);
    return kept(match.ice.carry(there, speed, longest, match::tick));
  }

  private Kept kept(CarryEnd end) {
    return new Kept(match.holding(), end);
  }

  /** A place of the carrier, but no farther than a line of the team's frame, or no nearer. */
  Carrier within(Carrier c, double from, double to) {
    double x = Math.max(from, Math.min(to, c.at().x()));
    return c.movedTo(new Place(x, c.at().y()));
  }
}
