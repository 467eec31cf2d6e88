package twostrides.numbers;

import twostrides.exits.Settings;

/**
 * What a run may choose about the numbers.
 *
 * @param window seconds of play in which restarts, attempts and goals count
 * @param seed seed of the draws of games
 * @param goalPriorDraws how many own-zone draws the published net goals weigh as much as; 0 leaves
 *     them out
 */
public record NumberSettings(double window, long seed, double goalPriorDraws) {

  /** Weight of the published net goals, in draws. Assumed. */
  public static final double DEFAULT_GOAL_PRIOR_DRAWS = 400;

  /** Largest weight, in draws: far more than a season has. Assumed. */
  public static final double MOST_GOAL_PRIOR_DRAWS = 1_000_000;

  /** Games are drawn so often for an interval. Assumed; the second digit is then steady. */
  static final int DRAWS = 2000;

  /** Rejects a window that counts nothing and a weight that is none. */
  public NumberSettings {
    if (!(window > 0) || !(goalPriorDraws >= 0 && goalPriorDraws <= MOST_GOAL_PRIOR_DRAWS)) {
      throw new IllegalArgumentException(
          "a window is above 0 s and a prior 0 to 1,000,000 draws, not "
              + window
              + " and "
              + goalPriorDraws);
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
