package twostrides.exits;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One object for equal values. Of what has few values, as names, counts of attempts, yes or no, a
 * season's records hold the same ones hundreds of thousands of times.
 */
final class Shared {

  private static final Map<Object, Object> KEPT = new ConcurrentHashMap<>();

  private Shared() {}

  /**
   * The object that stands for a value.
   *
   * @param value a value that never changes and has few others beside it
   */
  @SuppressWarnings("unchecked") // equal values of one class
  static <T> T of(T value) {
    Object kept = KEPT.putIfAbsent(value, value);
    return kept == null ? value : (T) kept;
  }

  /**
   * The object that stands for a number in tenths, as clocks and places are written; any other
   * number itself.
   *
   * @param value metres or seconds
   */
  static OptionalDouble tenths(OptionalDouble value) {
    double tenths = 10 * value.orElse(0);
    return tenths == Math.rint(tenths) ? of(value) : value;
  }
}
