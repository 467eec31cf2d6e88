package twostrides.exits;

import java.util.OptionalInt;
import tech.tablesaw.api.Table;
import twostrides.race.Assumptions;
import twostrides.rates.Count;

/**
 * What came of gaining center, of an icing and of losing the puck short of center in these sheets:
 * attempts against within the window. Few cases are drawn toward stated priors.
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

  /**
   * Counts a season.
   *
   * @param exits the exits table
   * @param restarts the restarts table
   */
  static Costs of(Table exits, Table restarts) {
    int gained = 0;
    int restarted = 0;
    int lossAttempts = 0;
    int losses = 0;
    for (int i = 0; i < exits.rowCount(); i++) {
      String mark = Cells.text(exits, Columns.AT_CENTER, i).orElse("");
      boolean known = Cells.flag(exits, Columns.OWN_ZONE_RESTART, i).isPresent();
      if (mark.equals(AtCenter.GAINED.label()) && known) {
        gained++;
        restarted += Cells.flag(exits, Columns.OWN_ZONE_RESTART, i).get() ? 1 : 0;
      }
      OptionalInt attempts = Cells.count(exits, Columns.ATTEMPTS_AGAINST_20S, i);
      if (mark.equals(AtCenter.LOST_SHORT.label()) && attempts.isPresent()) {
        losses++;
        lossAttempts += attempts.getAsInt();
      }
    }
    int icings = 0;
    int icingAttempts = 0;
    for (int i = 0; i < restarts.rowCount(); i++) {
      OptionalInt attempts = Cells.count(restarts, Columns.ATTEMPTS_AGAINST_20S, i);
      boolean own = Cells.flag(restarts, Columns.OWN_LAST, i).orElse(false);
      if (own && Cells.iced(restarts, i) && attempts.isPresent()) {
        icings++;
        icingAttempts += attempts.getAsInt();
      }
    }
    return new Costs(new Count(restarted, gained), icingAttempts, icings, lossAttempts, losses);
  }

  /** Chance of an own-zone restart after gaining center. */
  public double restartAfterGaining() {
    return (restartAfterGained.successes()
            + Assumptions.RESTART_AFTER_GAINING.value() * PRIOR_CASES)
        / (restartAfterGained.trials() + PRIOR_CASES);
  }

  /** Attempts after an icing before any sheet is read. Assumed. */
  public static double priorAttemptsAfterIcing() {
    return Assumptions.ATTEMPTS_AFTER_RESTART.value();
  }

  /** Attempts against within the window after an icing. */
  public double icing() {
    return (attemptsAfterIcing + Assumptions.ATTEMPTS_AFTER_RESTART.value() * PRIOR_CASES)
        / (icings + PRIOR_CASES);
  }

  /** Attempts against within the window after the puck is lost short of center. */
  public double loss() {
    return (attemptsAfterLoss + Assumptions.ATTEMPTS_AFTER_LOSS.value() * PRIOR_CASES)
        / (losses + PRIOR_CASES);
  }
}
