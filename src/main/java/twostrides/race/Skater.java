package twostrides.race;

import twostrides.rink.Place;

/**
 * Where a skater can be, and how soon: the disc model.
 *
 * <p>Formula: m dv/dt = F - m v/tau with |F| at most m vm/tau in any direction. The places that he
 * can be at a time s after he responds fill a disc exactly, centre x + v tau (1 - e^(-s/tau)),
 * radius vm (s - tau (1 - e^(-s/tau))); x and v are his position and velocity when he responds.
 * Straight ahead it is the sprint of {@link SprintFit}. Source: Fujimura and Sugihara 2005, Systems
 * and Computers in Japan 36(6):49 (from memory); circular shape seen in tracked football by
 * Narizuka, Takizawa and Yamazaki 2023, Scientific Reports 13 (abstract).
 *
 * <p>Before he responds (reaction time) he drifts at his present velocity. A reach widens the disc
 * at every instant. Which way he faces, boards, other skaters and tired legs are not in the model.
 *
 * <p>A skater passing close to a target at speed can be there early, be carried past, and come back
 * later: the target is in the disc, leaves it and enters for good. {@link #timeTo} is the first
 * entry, the earliest touch of a target at rest; {@link #slack} tells for one instant and is the
 * one to ask about a moving puck: a skater who has passed a place before the puck comes there
 * touches nothing. For the same reason the first entry jumps where a target lies just too far off
 * his path to be touched in passing.
 *
 * <p>Positions in metres, velocities in m/s, times in seconds from now. Callers guarantee finite
 * numbers; nothing is checked.
 *
 * @param topSpeed vm, m/s, above 0
 * @param tau time constant, s, above 0
 * @param delay time before he responds, s, 0 or more
 * @param reach how far from his skates he plays a puck, m, 0 or more
 */
public record Skater(double topSpeed, double tau, double delay, double reach) {

  private static final int MOST_STEPS = 60;

  /**
   * A step below this many seconds is the last. Steps close in at least quadratically, so what is
   * left is below 1e-12 s unless a target is only just touched in passing.
   */
  private static final double LAST_STEP = 1e-7;

  /** A target this share of its distance off the path is on the path: only rounding is meant. */
  private static final double ON_PATH = 1e-12;

  /**
   * Earliest time at which he can touch a target at rest, seconds.
   *
   * @param racer where he is, and how fast
   * @param target the target
   */
  public double timeTo(Racer racer, Place target) {
    return timeTo(target.x() - racer.x(), target.y() - racer.y(), racer.vx(), racer.vy());
  }

  /**
   * Earliest time at which he can touch a target at rest, seconds.
   *
   * <p>Steps from a time known to be too early by the quadratic that bounds the gap from one side,
   * so that no entry is stepped over; three or four steps are used.
   *
   * @param dx target less his position, m
   * @param dy target less his position, m
   * @param vx his velocity, m/s
   * @param vy his velocity, m/s
   */
  public double timeTo(double dx, double dy, double vx, double vy) {
    double touch = driftTime(dx, dy, vx, vy);
    if (touch <= delay) {
      return touch;
    }
    double px = dx - vx * delay;
    double py = dy - vy * delay;
    double far = Math.sqrt(px * px + py * py);
    if (far <= reach) {
      return delay;
    }
    double s =
        tau * tooEarly((far - reach) / (topSpeed * tau), (vx * px + vy * py) / (topSpeed * far));
    // His speed toward the target never falls below that toward it from where coasting would end.
    double endX = px - vx * tau;
    double endY = py - vy * tau;
    double end = Math.sqrt(endX * endX + endY * endY);
    double least = end > 0 ? (vx * endX + vy * endY) / end : -Math.sqrt(vx * vx + vy * vy);
    double most = Math.max(0, topSpeed - least) / tau;
    double pace = -1 / tau;
    for (int i = 0; i < MOST_STEPS; i++) {
      double e = Math.exp(pace * s);
      double u = tau * (1 - e);
      double qx = px - vx * u;
      double qy = py - vy * u;
      double q = Math.sqrt(qx * qx + qy * qy);
      double gap = q - reach - topSpeed * (s - u);
      if (gap <= 0) {
        break;
      }
      double rate = topSpeed * (1 - e) + e * (vx * qx + vy * qy) / q;
      double bend = e * most;
      double root = Math.sqrt(rate * rate + 2 * gap * bend);
      double step = rate > 0 ? 2 * gap / (rate + root) : (root - rate) / bend;
      s += step;
      if (step < LAST_STEP) {
        break;
      }
    }
    return delay + s;
  }

  /** When he drifts into reach of the target; infinite when he never does. */
  private double driftTime(double dx, double dy, double vx, double vy) {
    double over = dx * dx + dy * dy - reach * reach;
    if (over <= 0) {
      return 0;
    }
    double toward = dx * vx + dy * vy;
    if (toward <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    double cross = dx * vy - dy * vx;
    double v2 = vx * vx + vy * vy;
    double inside = v2 * reach * reach - cross * cross;
    if (inside < -(ON_PATH * ON_PATH) * toward * toward) {
      return Double.POSITIVE_INFINITY;
    }
    return over / (toward + Math.sqrt(Math.max(0, inside)));
  }

  /**
   * A time, in units of tau, before which he cannot have arrived: his way across the line to the
   * target is left out, and z - 1 + e^-z is at most z^2/(2 + 2z/3).
   *
   * @param goal distance over vm tau
   * @param b speed toward the target over vm, negative when moving away
   */
  private static double tooEarly(double goal, double b) {
    if (b >= 1) {
      return goal / b;
    }
    double a = 1 - b / 3;
    double h = b - goal / 3;
    double root = Math.sqrt(h * h + 2 * a * goal);
    return h > 0 ? 2 * goal / (h + root) : (root - h) / a;
  }

  /**
   * How deep a place lies inside the disc at an instant, m: 0 or more where he can be there then,
   * negative by how much he is short.
   *
   * @param t s, 0 or more
   * @param racer where he is now, and how fast
   * @param at the place
   */
  public double slack(double t, Racer racer, Place at) {
    return slack(t, at.x() - racer.x(), at.y() - racer.y(), racer.vx(), racer.vy());
  }

  /**
   * How deep a place lies inside the disc at an instant, m: 0 or more where he can be there then,
   * negative by how much he is short.
   *
   * @param t s, 0 or more
   * @param dx the place less his position now, m
   * @param dy the place less his position now, m
   * @param vx his velocity, m/s
   * @param vy his velocity, m/s
   */
  public double slack(double t, double dx, double dy, double vx, double vy) {
    double s = Math.max(0, t - delay);
    double u = tau * (1 - Math.exp(-s / tau));
    double drift = t - s + u;
    double qx = dx - vx * drift;
    double qy = dy - vy * drift;
    return reach + topSpeed * (s - u) - Math.sqrt(qx * qx + qy * qy);
  }
}
