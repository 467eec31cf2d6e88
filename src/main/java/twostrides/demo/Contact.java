package twostrides.demo;

import java.util.Optional;

/** Checkers and the carrier: who has his stick on the puck, and how soon somebody could. */
final class Contact {
  /** A checker this near has his stick on the puck, m, assumed. */
  private static final double REACH = 1.1;

  /** The push that a carrier expects of a checker, m/s2, assumed. */
  private static final double PUSH = 2.5;

  /** Later than this is never, s. */
  private static final double NEVER_S = 9;

  private Contact() {}

  /** The checker who has his stick on the carrier's puck. */
  static Optional<Body> reached(Ice ice, Body carrier) {
    Optional<Body> nearest = Optional.empty();
    double least = REACH * REACH;
    for (Body b : ice.bodies(carrier.side.other())) {
      double dx = b.x - carrier.x;
      double dy = b.y - carrier.y;
      double d = dx * dx + dy * dy;
      if (d < least && b.late <= 0) {
        least = d;
        nearest = Optional.of(b);
      }
    }
    return nearest;
  }

  /**
   * Seconds until the first opponent could have his stick on this player's puck, should he come at
   * him with what speed he has and a hard push: what a carrier feels of the pressure on him.
   */
  static double secondsTo(Ice ice, Body carrier) {
    double soonest = NEVER_S;
    for (Body b : ice.bodies(carrier.side.other())) {
      double dx = carrier.x - b.x;
      double dy = carrier.y - b.y;
      double d = Math.sqrt(dx * dx + dy * dy);
      double gap = Math.max(0, d - REACH);
      double closing = ((b.vx - carrier.vx) * dx + (b.vy - carrier.vy) * dy) / Math.max(d, 0.1);
      double seconds = (-closing + Math.sqrt(closing * closing + 2 * PUSH * gap)) / PUSH;
      soonest = Math.min(soonest, b.late + Math.max(0, seconds));
    }
    return soonest;
  }
}
