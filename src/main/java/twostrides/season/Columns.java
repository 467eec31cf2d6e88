package twostrides.season;

import java.math.BigDecimal;

/**
 * The names of columns that are asked for by name; what each holds stands in {@link Schemas} and in
 * docs/tables.md.
 *
 * <p>A quantity carries its unit in its name: {@code _s} seconds of play (elapsed times count from
 * the start of the period; {@code video_s} is the video's own clock), {@code _m} metres in the
 * acting team's frame (origin at center ice, +x the attack, +y to its left), no suffix for words
 * and counts.
 */
public final class Columns {
  public static final String GAME = "game";
  public static final String DATE = "date";
  public static final String EXIT = "exit";
  public static final String RELEASE = "release";
  public static final String PERIOD = "period";
  public static final String ELAPSED_S = "elapsed_s";
  public static final String RELEASE_ELAPSED_S = "release_elapsed_s";
  public static final String TEAM = "team";
  public static final String OPPONENT = "opponent";
  public static final String PLAYER = "player";
  public static final String WAY_OUT = "way_out";
  public static final String AT_CENTER = "at_center";
  public static final String STRENGTH = "strength";
  public static final String NET_EMPTY = "net_empty";
  public static final String RELEASE_X_M = "release_x_m";
  public static final String RELEASE_Y_M = "release_y_m";
  public static final String SHORT_OF_CENTER_M = "short_of_center_m";
  public static final String OWN_ZONE_RESTART = "own_zone_restart";
  public static final String RESTART_CAUSE = "restart_cause";
  public static final String RESTART_ELAPSED_S = "restart_elapsed_s";
  public static final String SECONDS_UNTIL_REENTRY = "seconds_until_reentry";
  public static final String RELIEF_CUT_SHORT = "relief_cut_short";
  public static final String KIND = "kind";
  public static final String WON_BY = "won_by";
  public static final String FACEOFF_STRENGTH = "faceoff_strength";
  public static final String OWN_LAST = "own_last";
  public static final String ATTEMPTS = "attempts";
  public static final String RESTARTS = "restarts";
  public static final String RULING = "ruling";
  public static final String BOOK = "book";
  public static final String PLAYED_RULING = "played_ruling";
  public static final String DIFFERS = "differs";
  public static final String P_GAIN_CENTER = "p_gain_center";
  public static final String P_GAIN_LOW = "p_gain_low";
  public static final String P_GAIN_HIGH = "p_gain_high";
  public static final String P_AVOID = "p_avoid";
  public static final String EVIDENCE = "evidence";
  public static final String FLAGGED = "flagged";
  public static final String REASON = "reason";
  public static final String GOALS_AHEAD = "goals_ahead";
  public static final String VENUE = "venue";
  public static final String PRESSURE = "pressure";
  public static final String SIDE = "side";
  public static final String ON_ICE = "on_ice";
  public static final String SHOT = "shot";
  public static final String SCORED = "scored";
  public static final String SINCE_SHORTHANDED_S = "since_shorthanded_s";
  public static final String SHIFT_S = "shift_s";
  public static final String STAY_S = "stay_s";
  public static final String SECONDS = "seconds";
  public static final String RELIEF_TOTAL_S = "relief_total_s";
  public static final String GOALS_AGAINST = "goals_against";
  public static final String SHEET = "sheet";
  public static final String LINE = "line";

  private Columns() {}

  /**
   * Columns that are named after the run's windows.
   *
   * @param window seconds in which restarts, attempts and goals count
   * @param longer the longer window, seconds
   */
  public record Windows(double window, double longer) {

    /** Whether an own-zone face-off came within the window. */
    public String restartWithin() {
      return "restart_within_" + seconds(window);
    }

    /** Shot attempts of the opponent within the window. */
    public String attempts() {
      return "attempts_against_" + seconds(window);
    }

    /** Goals of the opponent within the window. */
    public String goals() {
      return "goals_against_" + seconds(window);
    }

    /** Shot attempts of the opponent within the longer window. */
    public String attemptsLong() {
      return "attempts_against_" + seconds(longer);
    }

    /** Goals of the opponent within the longer window. */
    public String goalsLong() {
      return "goals_against_" + seconds(longer);
    }

    /** Own goals within the window. */
    public String goalsFor() {
      return "goals_for_" + seconds(window);
    }

    private static String seconds(double s) {
      return BigDecimal.valueOf(s).stripTrailingZeros().toPlainString() + "s";
    }
  }
}
