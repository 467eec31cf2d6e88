package twostrides.tracking;

/** What a {@link VideoClock} answers. */
public sealed interface ClockMatch {
  /**
   * A match.
   *
   * @param seconds second of the video, or seconds of play since the period began
   * @param plusMinus how far off it may be, in seconds; a bound, not a standard error
   * @param clockRan whether the clock ran all the way between the pairs around; where it did not,
   *     the bound holds half of the time it stood
   */
  record At(double seconds, double plusMinus, boolean clockRan) implements ClockMatch {}

  /**
   * No pair before it or none after it.
   *
   * @param reason why, a phrase
   */
  record NotCovered(String reason) implements ClockMatch {}
}
