package twostrides.tracking;

/** What a {@link VideoClock} or a {@link RowVideo} answers. */
public sealed interface ClockMatch {
  /**
   * A match.
   *
   * @param seconds second of the video, or seconds of play since the period began
   * @param plusMinus how far off it may be, in seconds; a bound, not a standard error
   * @param clockRan whether it is known when the clock ran between the pairs around; where it is
   *     not, the bound holds how far off that may put the match
   */
  record At(double seconds, double plusMinus, boolean clockRan) implements ClockMatch {}

  /**
   * Outside the pairs, where the clock was taken to run on: off by the length of the stoppages in
   * between.
   *
   * @param seconds second of the video
   * @param stoppages stoppages between the nearest pair and here, as far as the sheet has them
   */
  record Beyond(double seconds, int stoppages) implements ClockMatch {}

  /**
   * No pair that could say it.
   *
   * @param reason why, a phrase
   */
  record NotCovered(String reason) implements ClockMatch {}
}
