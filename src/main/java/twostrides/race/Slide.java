package twostrides.race;

import java.util.OptionalDouble;

/**
 * A puck that slides straight on the ice, slowed by Coulomb friction and quadratic air drag.
 *
 * <p>dv/dt = -(a + k v^2), with a = mu g. In closed form, with s the distance and t the time since
 * the release:
 *
 * <ul>
 *   <li>v^2(s) = v0^2 - 2 (a + k v0^2) E(s), E(s) = (1 - exp(-2 k s)) / (2 k);
 *   <li>stopping distance D = ln(1 + k v0^2 / a) / (2 k), stopping time T = atan(v0 sqrt(k/a)) /
 *       sqrt(a k);
 *   <li>t(s) = u atan(z) / z with u = (v0 - v) / (a + k v0 v) and z = sqrt(a k) u;
 *   <li>s(t) = ln(1 + k q) / k with q = v0 t sinc(h) - (a t^2 / 2) sinc^2(h/2), h = sqrt(a k) t.
 * </ul>
 *
 * These are the standard integrals, written so that k = 0 (friction alone), a = 0 (drag alone) and
 * both zero need no other formula. In the second half of a slide the speed comes from what is left
 * to the stop, v^2 = (a/k) (exp(2 k (D - s)) - 1), which loses no digits where v0^2 and the speed
 * already lost cancel.
 *
 * <p>Valid for a flat puck at 0 to 50 m/s. Constant friction is an approximation: real friction
 * falls with speed and on wet ice. Past the stop there is no time and no speed for a distance: the
 * record answers with an empty value, the static methods with NaN. In time the puck simply lies
 * where it stopped.
 *
 * @param speed speed at the release, m/s, 0 or more
 * @param deceleration friction times gravity, a = mu g, m/s2, 0 or more
 * @param drag quadratic drag k, per metre, 0 or more
 */
public record Slide(double speed, double deceleration, double drag) {

  /** Standard gravity, m/s2 (CGPM 1901). */
  static final double GRAVITY = 9.80665;

  /** Rejects negative values and values that are no numbers. */
  public Slide {
    if (!(speed >= 0 && deceleration >= 0 && drag >= 0)
        || !Double.isFinite(speed + deceleration + drag)) {
      throw new IllegalArgumentException(
          "a slide needs a speed, a deceleration and a drag of 0 or more, not "
              + speed
              + ", "
              + deceleration
              + " and "
              + drag);
    }
  }

  /**
   * A slide under the given friction.
   *
   * @param speed speed at the release, m/s
   * @param friction coefficient of kinetic friction mu
   * @param drag quadratic drag k, per metre
   */
  public static Slide onIce(double speed, double friction, double drag) {
    return new Slide(speed, friction * GRAVITY, drag);
  }

  /** Metres to the stop; empty when nothing but drag slows the puck, which then never stops. */
  public OptionalDouble stoppingDistance() {
    return known(stoppingDistance(speed, deceleration, drag));
  }

  /** Seconds to the stop; empty when the puck never stops. */
  public OptionalDouble stoppingTime() {
    return known(stoppingTime(speed, deceleration, drag));
  }

  /**
   * Speed in m/s after a distance; empty when the puck stops short of it.
   *
   * @param distance metres from the release, 0 or more
   */
  public OptionalDouble speedAfter(double distance) {
    return known(speedAfter(speed, deceleration, drag, distance));
  }

  /**
   * Seconds until the puck has slid a distance; empty when it stops short of it.
   *
   * @param distance metres from the release, 0 or more
   */
  public OptionalDouble timeTo(double distance) {
    return known(timeTo(speed, deceleration, drag, distance));
  }

  /**
   * Metres slid after a time; the stopping distance once the puck lies still.
   *
   * @param time seconds since the release, 0 or more
   */
  public double distanceAt(double time) {
    return distanceAt(speed, deceleration, drag, time);
  }

  /**
   * Speed in m/s at a time; 0 once the puck lies still.
   *
   * @param time seconds since the release, 0 or more
   */
  public double speedAt(double time) {
    return speedAt(speed, deceleration, drag, time);
  }

  private static OptionalDouble known(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  /**
   * Metres to the stop, infinite when the puck never stops.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   */
  static double stoppingDistance(double v0, double a, double k) {
    double coulomb = v0 * v0 / (2 * a);
    if (v0 == 0) {
      return 0;
    }
    double w = 2 * k * coulomb;
    return a == 0 ? Double.POSITIVE_INFINITY : coulomb * Ratios.logOnePlus(w);
  }

  /**
   * Seconds to the stop, infinite when the puck never stops.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   */
  static double stoppingTime(double v0, double a, double k) {
    if (v0 == 0) {
      return 0;
    }
    return a == 0 ? Double.POSITIVE_INFINITY : v0 / a * Ratios.atan(v0 * v0 * k / a);
  }

  /**
   * Speed in m/s after a distance; NaN when the puck stops short of it.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   * @param distance metres, 0 or more
   */
  static double speedAfter(double v0, double a, double k, double distance) {
    return speedAfter(v0, a, k, distance, 2 * (a + k * v0 * v0) * gripped(k, distance));
  }

  /** The same where the square of the speed that is lost by then is known. */
  private static double speedAfter(double v0, double a, double k, double distance, double lost) {
    if (lost <= 0.75 * v0 * v0) {
      return Math.sqrt(v0 * v0 - lost);
    }
    double left = stoppingDistance(v0, a, k) - distance;
    if (left == Double.POSITIVE_INFINITY) {
      return v0 * Math.exp(-k * distance);
    }
    return left >= 0 ? speedBeforeStop(a, k, left) : Double.NaN;
  }

  /**
   * Speed in m/s that is just spent over the distance left to the stop. The most exact form near
   * the stop, where the distance left is known better than the distance slid.
   *
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   * @param left metres to the stop, 0 or more
   */
  static double speedBeforeStop(double a, double k, double left) {
    return Math.sqrt(2 * a * left * Ratios.expLessOne(2 * k * left));
  }

  /**
   * Seconds until the puck has slid a distance; NaN when it stops short of it.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   * @param distance metres, 0 or more
   */
  static double timeTo(double v0, double a, double k, double distance) {
    if (distance == 0) {
      return 0;
    }
    double lost = 2 * (a + k * v0 * v0) * gripped(k, distance);
    return timeTo(v0, a, k, distance, lost, speedAfter(v0, a, k, distance, lost));
  }

  /**
   * Seconds until the puck has slid a distance over which its speed has fallen to a known value.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   * @param distance metres, 0 or more
   * @param v speed after that distance, m/s
   */
  static double timeTo(double v0, double a, double k, double distance, double v) {
    return timeTo(v0, a, k, distance, 2 * (a + k * v0 * v0) * gripped(k, distance), v);
  }

  private static double timeTo(
      double v0, double a, double k, double distance, double lost, double v) {
    if (a + k * v0 * v0 == 0) {
      return distance / v0;
    }
    // v0 - v without the cancellation of nearly equal speeds.
    double u = lost / ((v0 + v) * (a + k * v0 * v));
    return u * Ratios.atan(a * k * u * u);
  }

  /**
   * Metres slid after a time; the stopping distance once the puck lies still.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   * @param time seconds, 0 or more
   */
  static double distanceAt(double v0, double a, double k, double time) {
    // The stopping time is longer than its bound under the release's deceleration, so most calls
    // need no arc tangent.
    if (time * (a + k * v0 * v0) >= v0 && time >= stoppingTime(v0, a, k)) {
      return stoppingDistance(v0, a, k);
    }
    return distanceMoving(v0, a, k, time);
  }

  /**
   * Metres slid after a time at which the puck surely still moves.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   * @param time seconds, 0 or more, no more than the stopping time
   */
  static double distanceMoving(double v0, double a, double k, double time) {
    double square = 0.25 * a * k * time * time;
    double half = Ratios.sin(square);
    double q = time * half * (v0 * Ratios.cos(square) - 0.5 * a * time * half);
    return q * Ratios.logOnePlus(k * q);
  }

  /**
   * Speed in m/s at a time; 0 once the puck lies still.
   *
   * @param v0 speed at the release, m/s
   * @param a deceleration by friction, m/s2
   * @param k drag, per metre
   * @param time seconds, 0 or more
   */
  static double speedAt(double v0, double a, double k, double time) {
    double h = Math.sqrt(a * k) * time;
    if (time * (a + k * v0 * v0) > 0.5 * v0) {
      double left = stoppingTime(v0, a, k) - time;
      if (!(left > 0)) {
        return 0;
      }
      if (left < time) {
        double g = Math.sqrt(a * k) * left;
        return a * left * ratio(Math.tan(g), g);
      }
    }
    double arc = time * ratio(Math.sin(h), h);
    return (v0 * Math.cos(h) - a * arc) / (Math.cos(h) + k * v0 * arc);
  }

  /** E(s) = (1 - exp(-2 k s)) / (2 k): the distance as seen by a puck that drag slows, metres. */
  private static double gripped(double k, double distance) {
    return distance * Ratios.expLessOne(-2 * k * distance);
  }

  /** f(w) / w for a function that starts like its argument: 1 at 0. */
  private static double ratio(double f, double w) {
    return w == 0 ? 1 : f / w;
  }
}
