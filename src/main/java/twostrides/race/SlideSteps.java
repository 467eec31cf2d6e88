package twostrides.race;

/**
 * A slide looked at in equal steps of time, several times faster than {@link Slide#distanceAt} for
 * each: the addition theorem of the tangent gives the next speed from the present one, v' = (v - a
 * tau) / (1 + k v tau), tau = tan(sqrt(a k) h) / sqrt(a k), and the distance from that of a step.
 * Exact but for rounding, which adds up to less than 1e-12 of the distance over a few hundred
 * steps. The caller stops before the puck does.
 */
final class SlideSteps {

  private double a;
  private double k;
  private double tau;
  private double forward;
  private double behind;
  private double v;
  private double s;

  /**
   * Begins the steps.
   *
   * @param distance metres already slid
   * @param speed speed there, m/s
   * @param deceleration deceleration by friction, m/s2
   * @param drag drag, per metre
   * @param step seconds a step
   */
  void begin(double distance, double speed, double deceleration, double drag, double step) {
    s = distance;
    v = speed;
    a = deceleration;
    k = drag;
    double root = Math.sqrt(a * k);
    double half = 0.5 * root * step;
    double sinc = half == 0 ? 1 : Math.sin(half) / half;
    double cos = Math.cos(half);
    forward = step * sinc * cos;
    behind = 0.5 * a * step * step * sinc * sinc;
    tau = root == 0 ? step : Math.tan(2 * half) / root;
  }

  /** Goes one step on and returns the metres slid by then. */
  double next() {
    double q = v * forward - behind;
    double w = k * q;
    // ln(1 + w) / w; its series leaves out less than 1e-14 below 0.01.
    double ratio =
        w < 0.01
            ? 1
                + w
                    * (-1.0 / 2
                        + w * (1.0 / 3 + w * (-1.0 / 4 + w * (1.0 / 5 + w * (-1.0 / 6 + w / 7)))))
            : Ratios.logOnePlus(w);
    s += q * ratio;
    v = (v - a * tau) / (1 + k * v * tau);
    return s;
  }
}
