package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.race.Chance;

/**
 * What came out for one release.
 *
 * @param ground the chance of gaining center and on what it rests
 * @param avoid chance of avoiding the icing; only on evidence that carries a verdict
 * @param trying attempts against that trying costs on average; empty where {@code avoid} is
 * @param verdict flagged, or why not
 */
record Said(Ground ground, Optional<Chance> avoid, OptionalDouble trying, FlagVerdict verdict) {

  /**
   * Weighs a release.
   *
   * @param ground the chance of gaining center
   * @param costs what icings and lost pucks cost
   * @param threshold least chance of avoiding the icing for a flag
   * @param open why there is nothing to weigh; {@link FlagVerdict#FLAGGED} where there is
   */
  static Said of(Ground ground, Costs costs, double threshold, FlagVerdict open) {
    if (!ground.evidence().carriesVerdict()) {
      return new Said(
          ground,
          Optional.empty(),
          OptionalDouble.empty(),
          open == FlagVerdict.FLAGGED ? FlagVerdict.LOOK : open);
    }
    Chance gain = ground.gain().orElseThrow();
    double holds = 1 - costs.restartAfterGaining();
    Chance avoid = new Chance(gain.p() * holds, gain.low() * holds, gain.high() * holds);
    double trying = (1 - gain.p()) * costs.loss();
    FlagVerdict verdict =
        open != FlagVerdict.FLAGGED
            ? open
            : avoid.p() < threshold
                ? FlagVerdict.TOO_RISKY
                : trying < costs.icing() ? FlagVerdict.FLAGGED : FlagVerdict.TOO_DEAR;
    return new Said(ground, Optional.of(avoid), OptionalDouble.of(trying), verdict);
  }
}
