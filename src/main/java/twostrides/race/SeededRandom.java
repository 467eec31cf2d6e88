package twostrides.race;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;

/**
 * The random numbers of a simulated release. A number depends on the run's seed, the release's own
 * id, the simulation and the variable, and on nothing else: not on order, threads or what else was
 * asked for. Two alternatives compared over the same simulations so meet the same luck.
 *
 * <p>The four are hashed by the mixing function of SplitMix64 (Steele, Lea and Flood 2014, "Fast
 * splittable pseudorandom number generators", OOPSLA), one multiply-and-mix for the simulation and
 * one for the variable. Not for secrets.
 */
public final class SeededRandom {
  /** 2^64 divided by the golden ratio, odd: the step of SplitMix64. */
  private static final long STEP = 0x9E37_79B9_7F4A_7C15L;

  /** Another odd number, so that simulation 2, variable 1 is not simulation 1, variable 2. */
  private static final long OTHER_STEP = 0xD1B5_4A32_D192_ED03L;

  /** FNV-1a, 64 bits: start and multiplier (Fowler, Noll and Vo). */
  private static final long FNV_START = 0xCBF2_9CE4_8422_2325L;

  private static final long FNV_TIMES = 0x0000_0100_0000_01B3L;

  /**
   * Spacing of the uniform numbers: with 52 bits, not 53, half a step below 1 is not rounded to 1.
   */
  private static final double SPACING = 0x1p-52;

  private static final NormalDistribution NORMAL = new NormalDistribution();

  private final long key;

  /**
   * The random numbers of one release.
   *
   * @param seed the run's seed
   * @param release the release's id, any text
   */
  public SeededRandom(long seed, String release) {
    long hash = FNV_START;
    for (int i = 0; i < release.length(); i++) {
      hash = (hash ^ release.charAt(i)) * FNV_TIMES;
    }
    key = mix(mix(seed + STEP) ^ mix(hash));
  }

  /**
   * The numbers of one simulation.
   *
   * @param index which one, from 0
   */
  public Simulation simulation(int index) {
    return new Simulation(mix(key + index * STEP));
  }

  /** The top 52 bits as the middle of one of 2^52 cells between 0 and 1. */
  static double unit(long bits) {
    return ((bits >>> 12) + 0.5) * SPACING;
  }

  /** The number below which a share of a standard normal distribution lies, 0 and 1 excluded. */
  static double normal(double share) {
    return NORMAL.inverseCumulativeProbability(share);
  }

  /** The mixing function of SplitMix64 (variant 13 of Stafford). */
  private static long mix(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58_476D_1CE4_E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D0_49BB_1331_11EBL;
    return b ^ (b >>> 31);
  }

  /**
   * The random numbers of one simulation, one for each variable.
   *
   * @param start where they start, a hash
   */
  public record Simulation(long start) {

    /**
     * A number evenly spread over 0 to 1, never 0 nor 1.
     *
     * @param variable index of the variable
     */
    public double uniform(int variable) {
      return unit(mix(start + variable * OTHER_STEP));
    }

    /**
     * A standard normal number.
     *
     * @param variable index of the variable
     */
    public double normal(int variable) {
      return SeededRandom.normal(uniform(variable));
    }

    /**
     * A logistic number of scale 1; its standard deviation is pi/sqrt(3).
     *
     * @param variable index of the variable
     */
    public double logistic(int variable) {
      double u = uniform(variable);
      return Math.log(u / (1 - u));
    }

    /**
     * A number from low to high with a triangular distribution.
     *
     * @param variable index of the variable
     * @param low least
     * @param mode most likely, low to high
     * @param high greatest
     */
    public double triangular(int variable, double low, double mode, double high) {
      return low == high
          ? low
          : new TriangularDistribution(low, mode, high)
              .inverseCumulativeProbability(uniform(variable));
    }
  }
}
