package twostrides.race.puck;

import java.util.OptionalDouble;

/**
 * A puck that slides straight on the ice, slowed by Coulomb friction and quadratic air drag.
 *
 * <p>dv/dt = -(a + k v^2), with a = mu g. In closed form, with s the distance and t the time since
 * the release:
 *
 * <ul>
 *   <li>stopping distance D = ln(1 + k v0^2 / a) / (2 k), stopping time T = atan(v0 sqrt(k/a)) /
 *       sqrt(a k);
 *   <li>v^2(s) = (a/k) (exp(2 k (D - s)) - 1), from what is left to the stop;
 *   <li>t(s) = u atan(z) / z with u = (v0 - v) / (a + k v0 v) and z = sqrt(a k) u, where v0^2 - v^2
 *       = 2 (a + k v0^2) E(s), E(s) = (1 - exp(-2 k s)) / (2 k);
 *   <li>v(t) = (v0 cos h - a t sinc h) / (cos h + k v0 t sinc h) with h = sqrt(a k) t;
 *   <li>s(t) = ln(1 + k q) / k with q = v0 t sinc(h) - (a t^2 / 2) sinc^2(h/2).
 * </ul>
 *
 * These are the standard integrals, written so that k = 0 (friction alone), a = 0 (drag alone) and
 * both zero need hardly another formula: the functions that start like their argument stand divided
 * by it.
 *
 * <p>Valid for a flat puck at 0 to 50 m/s. Constant friction is an approximation: real friction
 * falls with speed and on wet ice. Past the stop there is no time and no speed for a distance; in
 * time the puck simply lies where it stopped.
 *
 * @param speed speed at the release, m/s, 0 or more
 * @param deceleration friction times gravity, a = mu g, m/s2, 0 or more
 * @param drag quadratic drag k, per metre, 0 or more
 */
public record Slide(double speed, double deceleration, double drag) {

  /** Standard gravity, m/s2 (CGPM 1901). */
  public static final double GRAVITY = 9.80665;

  /**
   * Rejects negative values and values that are no numbers.
   *
   * @throws IllegalArgumentException for these
   */
  public Slide {
    if (!(speed >= 0 && deceleration >= 0 && drag >= 0)
        || !Double.isFinite(speed + deceleration + drag)) {
      throw new IllegalArgumentException(
          "a slide needs a speed, a deceleration and a drag of 0 or more, not %s, %s and %s"
              .formatted(speed, deceleration, drag));
    }
  }

  /** Metres to the stop; infinite when nothing but drag slows the puck, which then never stops. */
  public double stoppingDistance() {
    if (speed == 0 || deceleration == 0) {
      return speed == 0 ? 0 : Double.POSITIVE_INFINITY;
    }
    double w = drag * speed * speed / deceleration;
    return speed * speed / (2 * deceleration) * ratio(Math.log1p(w), w);
  }

  /** Seconds to the stop; infinite when the puck never stops. */
  public double stoppingTime() {
    if (speed == 0 || deceleration == 0) {
      return speed == 0 ? 0 : Double.POSITIVE_INFINITY;
    }
    double z = speed * Math.sqrt(drag / deceleration);
    return speed / deceleration * ratio(Math.atan(z), z);
  }

  /**
   * Speed in m/s after a distance; empty when the puck stops short of it.
   *
   * @param distance metres from the release, 0 or more
   */
  public OptionalDouble speedAfter(double distance) {
    double left = stoppingDistance() - distance;
    if (left < 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        left == Double.POSITIVE_INFINITY
            ? speed * Math.exp(-drag * distance)
            : Math.min(speed, speedBeforeStop(deceleration, drag, left)));
  }

  /**
   * Speed in m/s that is just spent over the distance left to the stop.
   *
   * @param deceleration friction times gravity, m/s2
   * @param drag quadratic drag, per metre
   * @param left metres to the stop, 0 or more
   */
  public static double speedBeforeStop(double deceleration, double drag, double left) {
    double w = 2 * drag * left;
    return Math.sqrt(2 * deceleration * left * ratio(Math.expm1(w), w));
  }

  /**
   * Seconds until the puck has slid a distance; empty when it stops short of it.
   *
   * @param distance metres from the release, 0 or more
   */
  public OptionalDouble timeTo(double distance) {
    if (distance == 0) {
      return OptionalDouble.of(0);
    }
    double slowing = deceleration + drag * speed * speed;
    OptionalDouble end = speedAfter(distance);
    if (end.isEmpty() || slowing == 0) {
      return end.isEmpty() ? end : OptionalDouble.of(distance / speed);
    }
    double v = end.getAsDouble();
    double w = -2 * drag * distance;
    // v0 - v without the cancellation of nearly equal speeds.
    double lost = 2 * slowing * distance * ratio(Math.expm1(w), w) / (speed + v);
    double u = lost / (deceleration + drag * speed * v);
    double z = Math.sqrt(deceleration * drag) * u;
    return OptionalDouble.of(u * ratio(Math.atan(z), z));
  }

  /**
   * Metres slid after a time; the stopping distance once the puck lies still.
   *
   * @param time seconds since the release, 0 or more
   */
  public double distanceAt(double time) {
    if (time >= stoppingTime()) {
      return stoppingDistance();
    }
    double h = Math.sqrt(deceleration * drag) * time / 2;
    double half = time * ratio(Math.sin(h), h);
    double q = half * (speed * Math.cos(h) - 0.5 * deceleration * half);
    return q * ratio(Math.log1p(drag * q), drag * q);
  }

  /**
   * Speed in m/s at a time; 0 once the puck lies still.
   *
   * @param time seconds since the release, 0 or more
   */
  public double speedAt(double time) {
    if (time >= stoppingTime()) {
      return 0;
    }
    double h = Math.sqrt(deceleration * drag) * time;
    double arc = time * ratio(Math.sin(h), h);
    double cos = Math.cos(h);
    return Math.max(0, (speed * cos - deceleration * arc) / (cos + drag * speed * arc));
  }

  /** f(w) / w for a function that starts like its argument: 1 at 0. */
  private static double ratio(double f, double w) {
    return w == 0 ? 1 : f / w;
  }
}
