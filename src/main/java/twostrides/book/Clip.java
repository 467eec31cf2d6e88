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

  static Clip of(Flag f) {
    Situation at = f.release().at();
    return at(
        at.when(),
        Format.word(at.player())
            + ", "
            + Format.metresAndFeet(at.where().shortOfCenter())
            + " short, "
            + f.played().word());
  }

  static Clip of(Release r) {
    return at(
        r.at().when(),
        r.at().state().strength().label()
            + ", "
            + Format.metresAndFeet(r.at().where().shortOfCenter())
            + " short, "
            + Show.outcome(r));
  }

  /**
   * A moment of a sheet.
   *
   * @param sentence what happened
   */
  static Clip of(Moment m, String sentence) {
    return at(m.at().when(), sentence);
  }

  private static Clip at(When when, String words) {
    double s = when.video().orElseThrow();
    return new Clip(
        when.game().id(), Math.max(0, s - LEAD), s + AFTER, Show.clock(when) + ", " + words);
  }
}
