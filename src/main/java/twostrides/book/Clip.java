package twostrides.book;

import java.util.OptionalDouble;
import twostrides.review.FlagLine;
import twostrides.review.Moment;
import twostrides.review.ReleaseLine;

/**
 * A piece of a game's video.
 *
 * @param game game id
 * @param start second of the video, 0 or more
 * @param end second of the video, after the start
 * @param title what is to be seen
 */
record Clip(String game, double start, double end, String title) {

  /** Seconds shown before the row's second. Assumed. */
  static final double LEAD = 4;

  /** Seconds shown after it: a puck sent the length takes three to four. Assumed. */
  static final double AFTER = 12;

  /** Rejects an empty piece. */
  Clip {
    if (!(start >= 0 && end > start)) {
      throw new IllegalArgumentException(
          "a clip ends after it starts, not " + start + " to " + end);
    }
  }

  static Clip of(FlagLine f) {
    return at(
        f.game(),
        f.video(),
        Show.clock(f.period(), f.clockLeft())
            + ", "
            + Show.word(f.player())
            + ", "
            + Show.metresAndFeet(f.shortOfCenter())
            + " short, "
            + f.ruling());
  }

  static Clip of(ReleaseLine r) {
    return at(
        r.game(),
        r.video(),
        Show.clock(r.period(), r.clockLeft())
            + ", "
            + r.strength()
            + ", "
            + Show.metresAndFeet(r.shortOfCenter())
            + " short, "
            + Show.outcome(r));
  }

  /**
   * A moment of a sheet.
   *
   * @param sentence what happened
   */
  static Clip of(Moment m, String sentence) {
    return at(m.game(), m.video(), Show.clock(m.period(), m.clockLeft()) + ", " + sentence);
  }

  private static Clip at(String game, OptionalDouble video, String title) {
    double s = video.orElseThrow();
    return new Clip(game, Math.max(0, s - LEAD), s + AFTER, title);
  }
}
