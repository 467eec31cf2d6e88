package twostrides.race;

/**
 * The chance in a simulated release. A number depends on the run's seed, the release's own id, the
 * draw and the variable, and on nothing else: not on order, threads or what else was drawn. Two
 * alternatives compared over the same draws so meet the same luck.
 *
 * <p>The four are hashed by the mixing function of SplitMix64 (Steele, Lea and Flood 2014, "Fast
 * splittable pseudorandom number generators", OOPSLA), one multiply-and-mix for the draw and one
 * for the variable. Not for secrets.
 */
public final class Draws {
  /** 2^64 divided by the golden ratio, odd: the step of SplitMix64. */
  private static final long STEP = 0x9E37_79B9_7F4A_7C15L;

  /** Another odd number, so that draw 2 of variable 1 is not draw 1 of variable 2. */
  private static final long OTHER_STEP = 0xD1B5_4A32_D192_ED03L;

  /** FNV-1a, 64 bits: start and multiplier (Fowler, Noll and Vo). */
  private static final long FNV_START = 0xCBF2_9CE4_8422_2325L;

  private static final long FNV_TIMES = 0x0000_0100_0000_01B3L;

  /**
   * Spacing of the uniform numbers: with 52 bits, not 53, half a step below 1 is not rounded to 1.
   */
  private static final double SPACING = 0x1p-52;

  private final long key;

  /**
   * The chance of one release.
   *
   * @param seed the run's seed
   * @param release the release's id, any text
   */
  public Draws(long seed, String release) {
    long hash = FNV_START;
    for (int i = 0; i < release.length(); i++) {
      hash = (hash ^ release.charAt(i)) * FNV_TIMES;
    }
    key = mix(mix(seed + STEP) ^ mix(hash));
  }

  /**
   * A number evenly spread over 0 to 1, never 0 nor 1.
   *
   * @param draw index of the draw
   * @param variable index of the variable within a draw
   */
  public double uniform(int draw, int variable) {
    return uniform(start(draw), variable);
  }

  /**
   * Where the numbers of one draw start: hashed once for all its variables.
   *
   * @param draw index of the draw
   */
  long start(int draw) {
    return mix(key + draw * STEP);
  }

  /**
   * A number of a draw, evenly spread over 0 to 1, never 0 nor 1.
   *
   * @param start where the draw starts
   * @param variable index of the variable within it
   */
  static double uniform(long start, int variable) {
    return unit(mix(start + variable * OTHER_STEP));
  }

  /** The top 52 bits as the middle of one of 2^52 cells between 0 and 1. */
  static double unit(long bits) {
    return ((bits >>> 12) + 0.5) * SPACING;
  }

  /**
   * A standard normal number.
   *
   * @param draw index of the draw
   * @param variable index of the variable within a draw
   */
  public double normal(int draw, int variable) {
    return NormalQuantile.of(uniform(draw, variable));
  }

  /**
   * A logistic number of scale 1; its standard deviation is pi/sqrt(3).
   *
   * @param draw index of the draw
   * @param variable index of the variable within a draw
   */
  public double logistic(int draw, int variable) {
    return Arrival.logisticDraw(uniform(draw, variable));
  }

  /**
   * A number from low to high, most often near the mode.
   *
   * @param draw index of the draw
   * @param variable index of the variable within a draw
   * @param low least
   * @param mode most likely, low to high
   * @param high greatest
   */
  public double triangular(int draw, int variable, double low, double mode, double high) {
    return triangular(uniform(draw, variable), low, mode, high);
  }

  /** The quantile of the triangular distribution at u. */
  static double triangular(double u, double low, double mode, double high) {
    double width = high - low;
    double rise = mode - low;
    return u * width < rise
        ? low + Math.sqrt(u * width * rise)
        : high - Math.sqrt((1 - u) * width * (high - mode));
  }

  /** The mixing function of SplitMix64 (variant 13 of Stafford). */
  private static long mix(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58_476D_1CE4_E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D0_49BB_1331_11EBL;
    return b ^ (b >>> 31);
  }
}
