package twostrides.demo;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * The chance in one game. Seeded from the run's seed and the number of the game alone, so that game
 * k is the same however many games are asked for and in whatever order they are made.
 */
final class Dice {
  /**
   * Odd, and not the step of {@link SplittableRandom}: seeds or games that differ by one must not
   * start one step apart on the same stream. Otherwise any odd number would do.
   */
  private static final long NEXT = 0xD1B5_4A32_D192_ED03L;

  private final SplittableRandom random;

  Dice(long seed, int game) {
    this(mixed(mixed(seed) + game * NEXT));
  }

  private Dice(long state) {
    random = new SplittableRandom(state);
  }

  /** Other chance of the same game: what is drawn there changes nothing here. */
  static Dice beside(long seed, int game, int which) {
    return new Dice(mixed(mixed(mixed(seed) + game * NEXT) + which * NEXT));
  }

  /** Every bit of the result hangs on every bit given (Stafford's mix 13; one to one). */
  private static long mixed(long bits) {
    long a = (bits ^ (bits >>> 30)) * 0xBF58_476D_1CE4_E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D0_49BB_1331_11EBL;
    return b ^ (b >>> 31);
  }

  /** True with probability p; p may lie outside 0 to 1 and then counts as 0 or 1. */
  boolean chance(double p) {
    return random.nextDouble() < p;
  }

  /** A number from low to high, evenly spread. */
  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** A number from low to high, likeliest halfway. */
  double about(double low, double high) {
    return low + (high - low) * (random.nextDouble() + random.nextDouble()) / 2;
  }

  /** Either 1 or -1. */
  int sign() {
    return random.nextBoolean() ? 1 : -1;
  }

  /** One of the items, each as likely as the other. */
  <T> T oneOf(List<T> items) {
    return items.get(random.nextInt(items.size()));
  }

  /** A whole number from 0 to below the bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** One key, each as likely as its weight says; weights need not sum to one. */
  <E extends Enum<E>> E choose(EnumMap<E, Double> weights) {
    double total = 0;
    E last = null;
    for (Map.Entry<E, Double> entry : weights.entrySet()) {
      total += entry.getValue();
      last = entry.getKey();
    }
    if (last == null || total <= 0) {
      throw new IllegalArgumentException("nothing to choose from: " + weights);
    }
    double mark = random.nextDouble() * total;
    for (Map.Entry<E, Double> entry : weights.entrySet()) {
      mark -= entry.getValue();
      if (mark < 0) {
        return entry.getKey();
      }
    }
    return last;
  }
}
