package twostrides.demo;

import java.util.Optional;
import twostrides.rink.Place;

/**
 * A teammate to pass to, and how good that looks.
 *
 * @param skater the receiver
 * @param place where the puck is to meet him, in the team's frame
 * @param flight seconds that the puck is under way
 * @param room metres from there to the nearest opponent by then
 * @param legs what the receiver's legs have left, 0 to 1
 */
record Target(Skater skater, Place place, double flight, double room, double legs) {
  /** Pace of a pass, m/s, and the moment to take it, s; assumed. */
  private static final double PASS_SPEED = 12;

  private static final double TAKING_S = 0.3;

  /** Part of the flight by which a pass leads its receiver. */
  private static final double LEADS = 0.8;

  /** How far up or down ice of his way a receiver gets to a pass: m, and m for each second. */
  private static final double TURNS_M = 1;

  private static final double TURNS_SPEED = 4.5;

  /** Room beyond which more is no better, m. */
  private static final double ENOUGH = 6;

  /** What a checker who is there costs in log-odds, and the seconds at which he costs nothing. */
  private static final double PRESSED = 3.8;

  private static final double FREE_S = 1.4;

  /** What legs that have nothing left cost in log-odds. */
  private static final double WORN = 5;

  /**
   * The best teammate for a pass into a stretch of the ice, with a little caprice; empty when
   * nobody can be there.
   *
   * @param from least x of the place in the team's frame, m
   * @param to largest x
   */
  static Optional<Target> within(Match match, Carrier carrier, double from, double to) {
    Optional<Target> best = Optional.empty();
    double most = Double.NEGATIVE_INFINITY;
    int dir = Ice.direction(carrier.side());
    for (Body b : match.ice.bodies(carrier.side())) {
      if (b.skater.equals(carrier.skater())) {
        continue;
      }
      double x = dir * b.x;
      double y = dir * b.y;
      // Where the puck would meet him, guessed from the flight to where he is now, then once more.
      double guess = LEADS * flight(carrier.at(), x, y);
      double aimX = Math.max(from, Math.min(to, x + dir * b.vx * guess));
      double toAim = flight(carrier.at(), aimX, y + dir * b.vy * guess);
      double meetX = x + dir * b.vx * LEADS * toAim;
      double meetY = y + dir * b.vy * LEADS * toAim;
      if (Math.abs(aimX - meetX) > TURNS_M + TURNS_SPEED * toAim) {
        continue;
      }
      Place place = match.spots.inside(aimX, meetY);
      double metres = carrier.at().distanceTo(place);
      if (metres < 3 || place.x() < from - 0.3 || place.x() > to + 0.3) {
        continue;
      }
      double room = room(match.ice, carrier.side(), place, toAim);
      double score = Math.min(ENOUGH, room) - 0.06 * metres + match.dice.between(0, 4);
      if (score > most) {
        most = score;
        best = Optional.of(new Target(b.skater, place, toAim, room, b.legs));
      }
    }
    return best;
  }

  private static double flight(Place from, double x, double y) {
    double dx = x - from.x();
    double dy = y - from.y();
    return TAKING_S + Math.sqrt(dx * dx + dy * dy) / PASS_SPEED;
  }

  private static double room(Ice ice, Side side, Place at, double flight) {
    Place home = side.homeFrame(at);
    double room = 20;
    for (Body b : ice.bodies(side.other())) {
      double ahead = 0.6 * flight;
      room = Math.min(room, b.distanceTo(home.x() - b.vx * ahead, home.y() - b.vy * ahead));
    }
    return room;
  }

  /**
   * The chance that the pass is received: a logistic curve in what room the receiver has, how close
   * the passer's checker is and how far it is.
   *
   * @param base the log-odds with a middling receiver near by and no checker
   */
  double completes(Carrier from, double base) {
    double pressed = PRESSED * Math.max(0, 1 - from.contact() / FREE_S);
    double far = 0.035 * from.at().distanceTo(place);
    double worn = WORN * (1 - legs);
    double odds = StrictMath.exp(base + 0.25 * (Math.min(ENOUGH, room) - 3) - pressed - far - worn);
    return odds / (1 + odds) + from.skater().habits().passing();
  }
}
