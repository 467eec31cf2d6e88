package twostrides.season;

import twostrides.exits.AtCenter;
import twostrides.race.WayOutAssumptions;
import twostrides.stats.Count;

/**
 * What came of gaining center, of an icing and of losing the puck short of center in these sheets:
 * attempts against within the window. Few cases are adjusted toward stated priors.
 *
 * @param restartAfterGained own-zone restarts among exits that gained center
 * @param attemptsAfterIcing attempts against after icings, counted from the face-off
 * @param icings icings, written or inferred, with shots in their sheet
 * @param attemptsAfterLoss attempts against after pucks lost short of center
 * @param losses pucks lost short of center with shots in their sheet
 */
public record Costs(
    Count restartAfterGained,
    int attemptsAfterIcing,
    int icings,
    int attemptsAfterLoss,
    int losses) {

  /** Weight of every prior, in cases. Assumed. */
  public static final double PRIOR_CASES = 20;

  /** Prior shares and attempts. Assumed: nothing published was read. */
  private static final WayOutAssumptions PRIOR = WayOutAssumptions.DEFAULT;

  /**
   * Counts a season.
   *
   * @param exits the exits of its play sheets
   * @param restarts their own-zone face-offs
   * @param attempts name of the column of attempts against
   */
  static Costs of(Rows exits, Rows restarts, String attempts) {
    Rows gained =
        exits
            .where(Columns.AT_CENTER, AtCenter.GAINED.label())
            .known(Columns.OWN_ZONE_RESTART);
    Rows lost = exits.where(Columns.AT_CENTER, AtCenter.LOST_SHORT.label()).known(attempts);
    Rows iced = restarts.isTrue(Columns.OWN_LAST).iced().known(attempts);
    return new Costs(
        gained.share(gained.isTrue(Columns.OWN_ZONE_RESTART)),
        iced.sum(attempts),
        iced.n(),
        lost.sum(attempts),
        lost.n());
  }

  /** Chance of an own-zone restart after gaining center. */
  public double restartAfterGaining() {
    return (restartAfterGained.successes() + PRIOR.restartAfterGaining() * PRIOR_CASES)
        / (restartAfterGained.trials() + PRIOR_CASES);
  }

  /** Attempts after an icing before any sheet is read. Assumed. */
  public static double priorAttemptsAfterIcing() {
    return PRIOR.attemptsAfterRestart();
  }

  /** Attempts against within the window after an icing. */
  public double icing() {
    return (attemptsAfterIcing + PRIOR.attemptsAfterRestart() * PRIOR_CASES)
        / (icings + PRIOR_CASES);
  }

  /** Attempts against within the window after the puck is lost short of center. */
  public double loss() {
    return (attemptsAfterLoss + PRIOR.attemptsAfterLoss() * PRIOR_CASES) / (losses + PRIOR_CASES);
  }
}
