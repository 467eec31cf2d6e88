package twostrides.findings;

import twostrides.exits.Settings;

/**
 * What a run may choose about the numbers.
 *
 * @param window seconds of play in which restarts, attempts and goals count
 * @param seed seed of the resampling of games
 * @param goalPriorWeight how many face-offs the published net goals weigh as much as; 0 leaves them
 *     out
 */
public record NumberSettings(double window, long seed, double goalPriorWeight) {

  /** Weight of the published net goals, in face-offs. Assumed. */
  public static final double DEFAULT_GOAL_PRIOR_WEIGHT = 400;

  /** Largest weight, in face-offs: far more than a season has. Assumed. */
  public static final double MOST_GOAL_PRIOR_WEIGHT = 1_000_000;

  /** Games are resampled so often for an interval. Assumed; the second digit is then steady. */
  static final int RESAMPLES = 2000;

  /** Rejects a window that counts nothing and a weight that is none. */
  public NumberSettings {
    if (!(window > 0) || !(goalPriorWeight >= 0 && goalPriorWeight <= MOST_GOAL_PRIOR_WEIGHT)) {
      throw new IllegalArgumentException(
          "a window is above 0 s and a weight 0 to 1,000,000 face-offs, not "
              + window
              + " and "
              + goalPriorWeight);
    }
  }

  /** The window in whole seconds, for headings. */
  String shortWindow() {
    return Math.round(window) + " s";
  }

  /** The longer window in whole seconds, for headings. */
  String longWindow() {
    return Math.round(window + Settings.LONGER) + " s";
  }
}
