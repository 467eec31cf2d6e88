package twostrides.rulebook.penalty;

/**
 * An instant of a game: the clock, and the place among the rows that carry the same reading.
 *
 * <p>A clock of whole seconds stands still while penalties are called, so its reading alone does
 * not say on which side of a penalty row a touch lies. The order does: a row counts for every
 * instant whose order is greater than its own, and not for its own. So the shot that is a goal is
 * judged at the strength before the goal, and the last touch before a whistle at the strength
 * before the penalty.
 *
 * <p>Readings are compared in whole milliseconds.
 *
 * @param period period, from 1; overtime goes on counting
 * @param elapsed seconds of play since the period began
 * @param order place of the row in its sheet, any ascending number; {@link Long#MIN_VALUE} is kept
 *     for what the clock itself does
 */
public record GameInstant(int period, double elapsed, long order)
    implements Comparable<GameInstant> {

  private static final double MILLIS = 1000;

  /** Rejects what no clock shows. */
  public GameInstant {
    if (period < 1) {
      throw new IllegalArgumentException("a period counts from 1, not " + period);
    }
    if (!(elapsed >= 0 && elapsed < 1e7)) {
      throw new IllegalArgumentException(
          "seconds since the period began are 0 or more, not " + elapsed);
    }
  }

  /**
   * The instant before every row of this reading; a penalty that runs out at this reading has run
   * out, unless the rules say that it is still served.
   *
   * @param period period, from 1
   * @param elapsed seconds of play since the period began
   */
  public static GameInstant beforeRows(int period, double elapsed) {
    return new GameInstant(period, elapsed, Long.MIN_VALUE + 1);
  }

  /**
   * The instant after every row of this reading, when play goes on.
   *
   * @param period period, from 1
   * @param elapsed seconds of play since the period began
   */
  public static GameInstant afterRows(int period, double elapsed) {
    return new GameInstant(period, elapsed, Long.MAX_VALUE);
  }

  /** Milliseconds since the period began. */
  long millis() {
    return toMillis(elapsed);
  }

  /**
   * Whole milliseconds, so that equal readings are equal.
   *
   * @param seconds seconds
   */
  static long toMillis(double seconds) {
    return Math.round(seconds * MILLIS);
  }

  @Override
  public int compareTo(GameInstant other) {
    if (period != other.period) {
      return Integer.compare(period, other.period);
    }
    int clock = Long.compare(millis(), other.millis());
    return clock != 0 ? clock : Long.compare(order, other.order);
  }
}
