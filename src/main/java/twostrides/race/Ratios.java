package twostrides.race;

/**
 * Functions that start like their argument, divided by it: 1 at 0. A slide asks for them at small
 * arguments, where Java's own functions are slow or lose digits; beyond the range of a polynomial
 * they are Java's.
 *
 * <p>The polynomials are those inside the freely distributable math library fdlibm 5.3 (Sun
 * Microsystems 1993-2004: s_atan.c, e_log.c, e_exp.c), from memory and held to Java's functions by
 * RatiosTest: at most 2e-15 apart.
 */
final class Ratios {

  /** Greatest argument of the arc tangent's polynomial, squared: 7/16. */
  private static final double ATAN_TO = 0.19140625;

  /**
   * Greatest argument of the logarithm's polynomial: it is made for the square root of 2 less 1.
   */
  private static final double LOG_TO = 0.41;

  /** Greatest argument of the exponential's polynomial, either way: half of ln 2. */
  private static final double EXP_TO = 0.34;

  /** Greatest argument of the series of sine and cosine, squared. */
  private static final double SINE_TO = 0.1;

  private Ratios() {}

  /**
   * atan(z) / z.
   *
   * @param square z^2
   */
  static double atan(double square) {
    if (square > ATAN_TO) {
      double z = Math.sqrt(square);
      return Math.atan(z) / z;
    }
    double w = square * square;
    double odd =
        square
            * (0.3333333333333293
                + w
                    * (0.14285714272503466
                        + w
                            * (0.09090887133436507
                                + w
                                    * (0.06661073137387531
                                        + w * (0.049768779946159324 + w * 0.016285820115365782)))));
    double even =
        w
            * (-0.19999999999876483
                + w
                    * (-0.11111110405462356
                        + w
                            * (-0.0769187620504483
                                + w * (-0.058335701337905735 + w * -0.036531572744216916))));
    return 1 - (odd + even);
  }

  /**
   * ln(1 + w) / w.
   *
   * @param w 0 or more
   */
  static double logOnePlus(double w) {
    if (w > LOG_TO) {
      return Math.log(1 + w) / w;
    }
    double part = 1 / (2 + w);
    double s = w * part;
    double z = s * s;
    double z2 = z * z;
    double even = z2 * (0.3999999999940942 + z2 * (0.22222198432149784 + z2 * 0.15313837699209373));
    double odd =
        z
            * (0.6666666666666735
                + z2 * (0.2857142874366239 + z2 * (0.1818357216161805 + z2 * 0.14798198605116586)));
    return (2 + (even + odd)) * part;
  }

  /**
   * (e^w - 1) / w.
   *
   * @param w any
   */
  static double expLessOne(double w) {
    if (Math.abs(w) > EXP_TO) {
      return (Math.exp(w) - 1) / w;
    }
    double t = w * w;
    double low = 0.16666666666666602 - t * 0.0027777777777015593;
    double high = 6.613756321437934e-5 - t * 1.6533902205465252e-6;
    double top = 4.1381367970572385e-8;
    double c = w - t * (low + t * t * (high + t * t * top));
    return 2 / (2 - c);
  }

  /**
   * sin(h) / h.
   *
   * @param square h^2
   */
  static double sin(double square) {
    if (square > SINE_TO) {
      double h = Math.sqrt(square);
      return Math.sin(h) / h;
    }
    // Taylor; the next term is below 2e-16.
    double w = square * square;
    double low = 1 / 120.0 - square * (1 / 5040.0);
    double high = 1 / 362880.0 - square * (1 / 39916800.0);
    return 1 - square * (1 / 6.0) + w * (low + w * high);
  }

  /**
   * cos(h), which starts at 1 too.
   *
   * @param square h^2
   */
  static double cos(double square) {
    if (square > SINE_TO) {
      return Math.cos(Math.sqrt(square));
    }
    double w = square * square;
    double low = 1 / 24.0 - square * (1 / 720.0);
    double high = 1 / 40320.0 - square * (1 / 3628800.0) + w * (1 / 479001600.0);
    return 1 - square * (1 / 2.0) + w * (low + w * high);
  }
}
