package twostrides.chart;

import twostrides.findings.Habit;
import twostrides.findings.Profile;
import twostrides.rink.Rink;
import twostrides.season.Flag;

/**
 * The charts of a book, drawn for one rink.
 *
 * @param rink lengths of the rink to draw
 */
public record Charts(Rink rink) {

  /**
   * Attempts by way out and strength.
   *
   * @param title whose, untrusted text
   * @param profile what to draw
   */
  public Picture ways(String title, Profile profile) {
    return WayOutChart.of(title, profile);
  }

  /**
   * One release short of center.
   *
   * @param flag the release
   */
  public Picture flag(Flag flag) {
    return FlagDrawing.of(flag, rink);
  }

  /**
   * Releasing short of center over the season.
   *
   * @param title whose, untrusted text
   * @param habit what to draw
   */
  public Picture habit(String title, Habit habit) {
    return HabitChart.of(title, habit);
  }

  /**
   * Where the puck was let go short of center.
   *
   * @param title whose, untrusted text
   * @param profile what to draw
   */
  public Picture map(String title, Profile profile) {
    return ReleaseMap.of(title, profile, rink);
  }
}
