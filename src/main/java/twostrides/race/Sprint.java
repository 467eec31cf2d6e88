package twostrides.race;

/**
 * A skater who pushes as hard as he can along a line: his speed approaches the top speed
 * exponentially.
 *
 * <p>dv/dt = (vm - v)/tau; v(t) = vm - (vm - v0) e^(-t/tau); x(t) = vm t - (vm - v0) tau (1 -
 * e^(-t/tau)). Symbols: vm top speed, m/s; tau time constant, s; v0 speed at the start, m/s.
 * Sources: Furusawa, Hill and Parkinson 1927, Proc. R. Soc. B 102:29; holds on ice by Perez,
 * Guilhem and Brocherie 2019, Sports Biomechanics 21:56 (abstract). Valid for v0 of 0 or more,
 * above vm too (he then slows toward vm); fatigue over a long shift is not in it.
 *
 * <p>Callers guarantee vm and tau above 0; nothing is checked here, nothing is allocated.
 */
public final class Sprint {
  /** Newton steps from the bound below; three to five are used. */
  private static final int MOST_STEPS = 30;

  /** A step below this share of tau is the last: the next would be below rounding. */
  private static final double LAST_STEP = 1e-8;

  /** Below this z, e^-z - 1 loses digits that matter; above, exp is several times as fast. */
  private static final double SMALL = 0.1;

  private Sprint() {}

  /**
   * Speed after a time, m/s.
   *
   * @param t s, 0 or more
   * @param v0 speed at the start, m/s
   * @param vm top speed, m/s
   * @param tau s
   */
  public static double speed(double t, double v0, double vm, double tau) {
    return vm - (vm - v0) * Math.exp(-t / tau);
  }

  /**
   * Distance covered in a time, m.
   *
   * @param t s, 0 or more
   * @param v0 speed at the start, m/s
   * @param vm top speed, m/s
   * @param tau s
   */
  public static double distance(double t, double v0, double vm, double tau) {
    return vm * t + (vm - v0) * tau * Math.expm1(-t / tau);
  }

  /**
   * Time to cover a distance, s: the inverse of {@link #distance}, by Newton steps.
   *
   * <p>The closed form has Lambert's W. In z = t/tau the distance is vm tau (b z + (1 - b)(z - 1 +
   * e^-z)), b = v0/vm, and z - 1 + e^-z is at least z^2/(2 + z). With that bound in its place a
   * quadratic gives the start; from it Newton closes in from one side and cannot run off, because
   * the distance is convex in t below the top speed and concave above.
   *
   * @param d m, 0 or more
   * @param v0 speed at the start, m/s, 0 or more
   * @param vm top speed, m/s
   * @param tau s
   */
  public static double time(double d, double v0, double vm, double tau) {
    if (!(d > 0)) {
      return 0;
    }
    double b = v0 / vm;
    double goal = d / (vm * tau);
    double h = goal - 2 * b;
    double root = Math.sqrt(h * h + 8 * goal);
    double z = h > 0 ? (h + root) / 2 : 4 * goal / (root - h);
    for (int i = 0; i < MOST_STEPS; i++) {
      double fall = z < SMALL ? Math.expm1(-z) : Math.exp(-z) - 1;
      double step = (z + (1 - b) * fall - goal) / (b - (1 - b) * fall);
      z -= step;
      if (Math.abs(step) < LAST_STEP) {
        break;
      }
    }
    return z * tau;
  }
}
