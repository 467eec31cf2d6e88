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
  /** Odd constants that spread seed and game number over 64 bits; any odd numbers would do. */
  private static final long SPREAD_SEED = 0x9E37_79B9_7F4A_7C15L;

  private static final long SPREAD_GAME = 0xD1B5_4A32_D192_ED03L;

  private final SplittableRandom random;

  Dice(long seed, int game) {
    random = new SplittableRandom(seed * SPREAD_SEED + game * SPREAD_GAME);
  }

  /** True with probability p; p may lie outside 0 to 1 and then counts as 0 or 1. */
  boolean chance(double p) {
    return random.nextDouble() < p;
  }

  /** A number from low to high, evenly spread. */
  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
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
