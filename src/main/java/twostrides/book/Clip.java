package twostrides.book;

import twostrides.exits.Release;
import twostrides.exits.Situation;
import twostrides.exits.When;
import twostrides.findings.Moment;
import twostrides.season.Flag;

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

  static Clip of(Flag f, Videos videos) {
    Situation at = f.release().at();
    return at(
        at.when(),
        Format.word(at.player())
            + ", "
            + Format.metresAndFeet(at.where().shortOfCenter())
            + " short, "
            + f.played().word(),
        videos);
  }

  static Clip of(Release r, Videos videos) {
    return at(
        r.at().when(),
        r.at().state().strength().label()
            + ", "
            + Format.metresAndFeet(r.at().where().shortOfCenter())
            + " short, "
            + Show.outcome(r),
        videos);
  }

  /**
   * A moment of a sheet.
   *
   * @param sentence what happened
   */
  static Clip of(Moment m, String sentence, Videos videos) {
    return at(m.at().when(), sentence, videos);
  }

  private static Clip at(When when, String words, Videos videos) {
    double s = when.video().orElseThrow();
    double off = videos.off(when);
    String doubt = videos.doubt(when);
    return new Clip(
        when.game().id(),
        Math.max(0, s - LEAD - off),
        s + AFTER + off,
        Show.clock(when) + ", " + words + (doubt.isEmpty() ? "" : ", " + doubt));
  }
}
