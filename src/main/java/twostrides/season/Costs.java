package twostrides.season;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import twostrides.exits.Against;
import twostrides.exits.AtCenter;
import twostrides.exits.Exit;
import twostrides.exits.GameRecords;
import twostrides.race.Assumptions;
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

  /**
   * Counts a season.
   *
   * @param games its play sheets' games
   */
  static Costs of(List<GameRecords> games) {
    List<Exit> exits = games.stream().flatMap(g -> g.exits().stream()).toList();
    List<Boolean> restarted =
        exits.stream()
            .filter(e -> e.mark().equals(Optional.of(AtCenter.GAINED)))
            .flatMap(e -> e.outcome().restarted().stream())
            .toList();
    List<Against> afterLoss =
        exits.stream()
            .filter(e -> e.mark().equals(Optional.of(AtCenter.LOST_SHORT)))
            .flatMap(e -> e.outcome().against().stream())
            .toList();
    List<Against> afterIcing =
        games.stream()
            .flatMap(g -> g.restarts().stream())
            .filter(r -> r.ownLast().orElse(false) && r.faceOff().cause().icing())
            .flatMap(r -> r.faceOff().against().stream())
            .toList();
    return new Costs(
        new Count(Collections.frequency(restarted, true), restarted.size()),
        afterIcing.stream().mapToInt(Against::attempts).sum(),
        afterIcing.size(),
        afterLoss.stream().mapToInt(Against::attempts).sum(),
        afterLoss.size());
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
