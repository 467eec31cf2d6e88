package twostrides.demo;

import twostrides.rink.Place;

/**
 * A skater on the ice in the home team's frame: metres, m/s. He wants to be somewhere, at some
 * speed; his legs change his velocity by so much a second and no more, in any direction alike. No
 * drag, no discs, no errors of arrival: kinematics of this league's own.
 */
final class Body {
  /** Braking that a skater plans with when he means to stop somewhere, m/s2, assumed. */
  private static final double BRAKE = 3.6;

  /** Nearer than this is there, m. */
  private static final double THERE = 0.3;

  /** Slower than this stands, m/s. */
  private static final double STILL = 0.05;

  /** Nearer than this a skater who keeps moving thinks of another place, m. */
  private static final double WANDERS = 1.5;

  final Skater skater;
  final Side side;
  double x;
  double y;
  double vx;
  double vy;

  /** Where he wants to be. */
  private double goX;

  private double goY;

  /** The speed at which he goes there, m/s, and whether he means to stop there. */
  private double pace;

  private boolean stops = true;

  private final double push;

  /** Seconds until he answers what has changed. */
  double late;

  /** Whether he goes for the puck carrier. */
  boolean presses;

  /** On his way to a pass: nothing else moves him. */
  boolean bound;

  /** His place in the team's shape. */
  int slot;

  /** What is left of his legs, 0 to 1, and what he gives of it now. */
  double legs = 1;

  double effort = 1;

  Body(Skater skater, Side side, double x, double y) {
    this.skater = skater;
    this.side = side;
    push = skater.legs().push();
    this.x = x;
    this.y = y;
    goX = x;
    goY = y;
  }

  /** A copy that is and does what another body is and does. */
  Body(Body other) {
    this(other.skater, other.side, other.x, other.y);
    vx = other.vx;
    vy = other.vy;
    goX = other.goX;
    goY = other.goY;
    pace = other.pace;
    stops = other.stops;
    late = other.late;
    presses = other.presses;
    bound = other.bound;
    slot = other.slot;
    legs = other.legs;
    effort = other.effort;
  }

  /** The fastest he skates now, m/s. */
  double top() {
    return skater.legs().topSpeed() * legs * effort;
  }

  /** Goes to a place and stops there. */
  void goTo(double toX, double toY, double speed) {
    goX = toX;
    goY = toY;
    pace = Math.min(speed, top());
    stops = true;
  }

  /** Goes for a place without stopping there. */
  void goThrough(double toX, double toY, double speed) {
    goTo(toX, toY, speed);
    stops = false;
  }

  /** Whether he is about where he wanted to be, and has to think of another place. */
  boolean wanders() {
    return distanceTo(goX, goY) < WANDERS;
  }

  double distanceTo(Place to) {
    return distanceTo(to.x(), to.y());
  }

  double distanceTo(double toX, double toY) {
    double dx = toX - x;
    double dy = toY - y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Seconds to a place from where he is and how he moves, a guess: straight, no braking. */
  double secondsTo(Place to) {
    double d = distanceTo(to);
    if (d < THERE) {
      return 0;
    }
    double toward = ((to.x() - x) * vx + (to.y() - y) * vy) / d;
    double mean = Math.max(1.5, 0.65 * top() + 0.35 * toward);
    return d / mean;
  }

  /** Skates on for a moment. */
  void step(double dt) {
    late = Math.max(0, late - dt);
    double dx = goX - x;
    double dy = goY - y;
    double square = dx * dx + dy * dy;
    if (stops && square < THERE * THERE && vx * vx + vy * vy < STILL * STILL) {
      return;
    }
    double d = Math.sqrt(square);
    double speed = pace;
    double braking = 2 * BRAKE * Math.max(0, d - THERE);
    if (stops && braking < pace * pace) {
      speed = Math.sqrt(braking);
    }
    double part = d > 1e-9 ? speed / d : 0;
    double ax = part * dx - vx;
    double ay = part * dy - vy;
    double a = ax * ax + ay * ay;
    double most = push * legs * dt;
    double share = a > most * most ? most / Math.sqrt(a) : 1;
    vx += share * ax;
    vy += share * ay;
    x += vx * dt;
    y += vy * dt;
  }
}
