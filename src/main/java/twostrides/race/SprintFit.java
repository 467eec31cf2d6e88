package twostrides.race;

import java.util.Arrays;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Top speed and time constant of a skater from his split times over a sprint from rest.
 *
 * <p>A skater who pushes as hard as he can along a line: dv/dt = (vm - v)/tau; v(t) = vm - (vm -
 * v0) e^(-t/tau); x(t) = vm t - (vm - v0) tau (1 - e^(-t/tau)), the front of {@link Skater}'s disc.
 * Sources: Furusawa, Hill and Parkinson 1927, Proc. R. Soc. B 102:29; holds on ice by Perez,
 * Guilhem and Brocherie 2019, Sports Biomechanics 21:56 (abstract).
 *
 * <p>Least squares on time with distance as predictor, t(d) the inverse of x(t), by Levenberg and
 * Marquardt's method. Gates start their clock after the skater has begun to move, so the written
 * times are short: add a known correction, or fit the offset (needs four splits; offset and tau
 * trade off, so its error is large). Source: Jovanovic and Vescovi, R package shorts, which adds
 * 0.3 to 0.5 s.
 *
 * @param topSpeed m/s
 * @param tau s
 * @param offset seconds added to every written time, given or fitted
 */
record SprintFit(double topSpeed, double tau, double offset) {

  private static final double START_TAU = 1.2;
  private static final double SLOWEST = 0.5;
  private static final double FASTEST = 30;
  private static final double SHORTEST_TAU = 0.01;
  private static final double LONGEST_TAU = 20;
  private static final int MOST_STEPS = 500;

  /**
   * Fits top speed and tau.
   *
   * @param distances m from the start, rising, at least three
   * @param times s at these distances, rising
   * @param offset seconds to add to every time, 0 for none
   * @throws IllegalArgumentException when the splits cannot be used or no curve fits them
   */
  static SprintFit of(double[] distances, double[] times, double offset) {
    check(distances, times, 3);
    if (!Double.isFinite(offset) || times[0] + offset <= 0) {
      throw new IllegalArgumentException(
          "an offset must leave every time above 0 s, not " + offset);
    }
    return fit(distances, times, offset, false);
  }

  /**
   * Fits top speed, tau and the offset.
   *
   * @param distances m from the start, rising, at least four
   * @param times s at these distances, rising
   * @throws IllegalArgumentException when the splits cannot be used or no curve fits them
   */
  static SprintFit withOffset(double[] distances, double[] times) {
    check(distances, times, 4);
    return fit(distances, times, 0, true);
  }

  private static void check(double[] distances, double[] times, int fewest) {
    if (distances.length != times.length) {
      throw new IllegalArgumentException(
          "every split needs a distance and a time: %s distances, %s times"
              .formatted(distances.length, times.length));
    }
    if (distances.length < fewest) {
      throw new IllegalArgumentException(
          "a sprint fit needs at least " + fewest + " splits, not " + distances.length);
    }
    rising("distances", "m", distances);
    rising("times", "s", times);
  }

  private static void rising(String what, String unit, double[] values) {
    double before = 0;
    for (int i = 0; i < values.length; i++) {
      if (!(values[i] > before) || Double.isInfinite(values[i])) {
        throw new IllegalArgumentException(
            "%s must rise from above 0 %s: split %s has %s after %s"
                .formatted(what, unit, i + 1, values[i], before));
      }
      before = values[i];
    }
  }

  private static SprintFit fit(double[] distances, double[] times, double given, boolean free) {
    int n = times.length;
    double last = (distances[n - 1] - distances[n - 2]) / (times[n - 1] - times[n - 2]);
    double speed = Math.min(FASTEST, Math.max(SLOWEST, last));
    double[] start = free ? new double[] {speed, START_TAU, 0} : new double[] {speed, START_TAU};
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(start)
            .target(Arrays.stream(times).map(t -> t + given).toArray())
            .model(curve(distances, start.length))
            .parameterValidator(SprintFit::keepInside)
            .maxEvaluations(MOST_STEPS)
            .maxIterations(MOST_STEPS)
            .build();
    RealVector p;
    try {
      p = new LevenbergMarquardtOptimizer().optimize(problem).getPoint();
    } catch (MathRuntimeException e) {
      throw new IllegalArgumentException("no sprint curve fits these splits", e);
    }
    if (!inside(p)) {
      throw new IllegalArgumentException(
          ("no sprint curve fits these splits: top speed %s m/s and tau %s s are at the "
                  + "end of what is possible")
              .formatted(p.getEntry(0), p.getEntry(1)));
    }
    return new SprintFit(p.getEntry(0), p.getEntry(1), free ? p.getEntry(2) : given);
  }

  /**
   * The model's times and their derivatives. With z = t/tau and x(t; vm, tau) = d: dt/dvm = -(z - 1
   * + e^-z) tau/(vm (1 - e^-z)), dt/dtau = 1 - z e^-z/(1 - e^-z); a fitted offset is taken off the
   * time.
   */
  private static MultivariateJacobianFunction curve(double[] distances, int parameters) {
    return point -> {
      double vm = point.getEntry(0);
      double tau = point.getEntry(1);
      double[] value = new double[distances.length];
      double[][] slope = new double[distances.length][parameters];
      for (int i = 0; i < value.length; i++) {
        double t = new Skater(vm, tau, 0, 0).timeTo(distances[i], 0, 0, 0);
        double z = t / tau;
        double pushed = -Math.expm1(-z);
        value[i] = t;
        slope[i][0] = -(z - pushed) * tau / (vm * pushed);
        slope[i][1] = 1 - z * Math.exp(-z) / pushed;
        if (parameters > 2) {
          value[i] -= point.getEntry(2);
          slope[i][2] = -1;
        }
      }
      return new Pair<>(new ArrayRealVector(value, false), new Array2DRowRealMatrix(slope, false));
    };
  }

  private static RealVector keepInside(RealVector p) {
    RealVector kept = p.copy();
    kept.setEntry(0, Math.min(FASTEST, Math.max(SLOWEST, p.getEntry(0))));
    kept.setEntry(1, Math.min(LONGEST_TAU, Math.max(SHORTEST_TAU, p.getEntry(1))));
    return kept;
  }

  private static boolean inside(RealVector p) {
    return p.getEntry(0) > SLOWEST
        && p.getEntry(0) < FASTEST
        && p.getEntry(1) > SHORTEST_TAU
        && p.getEntry(1) < LONGEST_TAU;
  }
}
