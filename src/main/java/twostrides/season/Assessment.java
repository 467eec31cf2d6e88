package twostrides.season;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.race.Chance;

/**
 * What came out for one release.
 *
 * @param gain the chance of gaining center and on what it rests
 * @param avoid chance of avoiding the icing; only on evidence that carries a verdict
 * @param trying attempts against that trying costs on average; empty where {@code avoid} is
 * @param verdict flagged, or why not
 */
public record Assessment(
    GainEvidence gain, Optional<Chance> avoid, OptionalDouble trying, FlagVerdict verdict) {

  /**
   * Weighs a release.
   *
   * @param gain the chance of gaining center
   * @param costs what icings and lost pucks cost
   * @param threshold least chance of avoiding the icing for a flag
   * @param open why there is nothing to weigh; {@link FlagVerdict#FLAGGED} where there is
   */
  static Assessment of(GainEvidence gain, Costs costs, double threshold, FlagVerdict open) {
    if (!gain.evidence().carriesVerdict()) {
      return new Assessment(
          gain,
          Optional.empty(),
          OptionalDouble.empty(),
          open == FlagVerdict.FLAGGED ? FlagVerdict.LOOK : open);
    }
    Chance center = gain.chance().orElseThrow();
    double holds = 1 - costs.restartAfterGaining();
    Chance avoid = new Chance(center.p() * holds, center.low() * holds, center.high() * holds);
    double trying = (1 - center.p()) * costs.loss();
    FlagVerdict verdict =
        open != FlagVerdict.FLAGGED
            ? open
            : avoid.p() < threshold
                ? FlagVerdict.TOO_RISKY
                : trying < costs.icing() ? FlagVerdict.FLAGGED : FlagVerdict.TOO_DEAR;
    return new Assessment(gain, Optional.of(avoid), OptionalDouble.of(trying), verdict);
  }
}
