package twostrides.stats;

/**
 * How long something was waited for.
 *
 * @param seconds how long it was watched, 0 or more
 * @param ended whether it happened then; false where watching stopped before it did
 */
public record CensoredTime(double seconds, boolean ended) {

  /** Rejects a time that is negative, infinite or not a number. */
  public CensoredTime {
    if (!(seconds >= 0 && Double.isFinite(seconds))) {
      throw new IllegalArgumentException("a wait needs seconds of 0 or more, not " + seconds);
    }
    seconds += 0.0; // -0.0 becomes 0.0, so that equal times compare equal
  }
}
