package twostrides.demo;

/**
 * The game's clock and the video's. Time runs continuously inside; a sheet shows whole seconds of
 * play begun, as a scoreboard does.
 */
final class GameClock {
  /** Seconds of play in a period: 20 minutes. */
  static final int PERIOD_S = 1200;

  /** Video seconds of an intermission kept on the recording, assumed. */
  private static final double INTERMISSION_VIDEO_S = 95;

  private int period = 1;
  private double elapsed;
  private double video;

  /** Starts the first period; the recording starts before the first face-off. */
  GameClock(double videoLead) {
    video = videoLead;
  }

  int period() {
    return period;
  }

  /** Whole seconds of play since the period began, as the scoreboard shows. */
  int shown() {
    return (int) Math.floor(elapsed);
  }

  /** Second of the video. */
  double video() {
    return video;
  }

  /** Seconds of play left in the period. */
  double left() {
    return PERIOD_S - elapsed;
  }

  /** Seconds of play since the game began. */
  double gameSeconds() {
    return (period - 1) * (double) PERIOD_S + elapsed;
  }

  /** Lets play run; it never runs past the end of the period. */
  void run(double seconds) {
    if (seconds < 0) {
      throw new IllegalArgumentException("play cannot run backward: " + seconds + " s");
    }
    double played = Math.min(seconds, left());
    elapsed += played;
    video += played;
  }

  /** Lets the period run out. */
  void runOut() {
    video += left();
    elapsed = PERIOD_S;
  }

  /** Lets only the video run, while play is stopped. */
  void idle(double seconds) {
    video += seconds;
  }

  /** Starts the next period. */
  void nextPeriod() {
    period++;
    elapsed = 0;
    video += INTERMISSION_VIDEO_S;
  }
}
