package twostrides.tracking;

/**
 * A game clock and the second of the video at which it stood.
 *
 * @param period period, from 1
 * @param elapsed seconds of play since the period began
 * @param video second of the video
 * @param plusMinus how far off the pair may be, in seconds: half a step of the clock and half a
 *     step of the video's seconds
 * @param file the sheet that says so
 * @param line its line, from 1
 */
public record ClockPair(
    int period, double elapsed, double video, double plusMinus, String file, long line) {
  /** Checks the numbers. */
  public ClockPair {
    boolean finite =
        Double.isFinite(elapsed) && Double.isFinite(video) && Double.isFinite(plusMinus);
    if (period < 1 || !finite || elapsed < 0 || plusMinus < 0) {
      throw new IllegalArgumentException(
          "no pair of clock and video: period " + period + ", " + elapsed + " s, " + video + " s");
    }
  }

  /** Seconds of video that were no play, up to here: grows with every stoppage, never falls. */
  double stood() {
    return video - elapsed;
  }
}
