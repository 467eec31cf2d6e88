package twostrides.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import twostrides.race.Chance;
import twostrides.stats.Count;

/** A flag weighs what trying costs, a puck lost short of center, against what the icing costs. */
class AssessmentTest {

  /** So many attempts and cases that what is assumed moves neither cost far. */
  private static final Costs LOST_PUCKS_COST_MORE =
      new Costs(new Count(0, 10_000), 3_000, 10_000, 20_000, 10_000);

  private static final Costs ICINGS_COST_MORE =
      new Costs(new Count(0, 10_000), 20_000, 10_000, 3_000, 10_000);

  private static GainEvidence chance(Evidence evidence, double p) {
    return new GainEvidence(
        evidence,
        Optional.of(new Chance(p, p - 0.1, p + 0.1)),
        1.5,
        Optional.empty(),
        Optional.empty());
  }

  private static FlagVerdict verdict(double p, Costs costs) {
    return Assessment.of(chance(Evidence.MEASURED, p), costs, 0.6, FlagVerdict.FLAGGED).verdict();
  }

  /** At 0.7 trying costs 0.3 lost pucks: 0.6 attempts against the 0.3 of an icing, or 0.09 to 2. */
  @Test
  void tryingIsTooDearWhereALostPuckCostsMore() {
    assertEquals(FlagVerdict.TOO_DEAR, verdict(0.7, LOST_PUCKS_COST_MORE));
    assertEquals(FlagVerdict.FLAGGED, verdict(0.7, ICINGS_COST_MORE));
    // 0.1 lost pucks of 2 attempts are 0.2.
    assertEquals(FlagVerdict.FLAGGED, verdict(0.9, LOST_PUCKS_COST_MORE));
  }

  /** What trying costs is the chance of losing the puck times the attempts after a lost puck. */
  @Test
  void tryingCostsWhatALostPuckCosts() {
    Assessment a =
        Assessment.of(
            chance(Evidence.MEASURED, 0.7), LOST_PUCKS_COST_MORE, 0.6, FlagVerdict.FLAGGED);
    assertEquals(0.3 * LOST_PUCKS_COST_MORE.loss(), a.trying().orElseThrow(), 1e-12);
    double holds = 1 - LOST_PUCKS_COST_MORE.restartAfterGaining();
    assertEquals(0.7 * holds, a.avoid().orElseThrow().p(), 1e-12);
    assertEquals(0.6 * holds, a.avoid().orElseThrow().low(), 1e-12);
    assertEquals(0.8 * holds, a.avoid().orElseThrow().high(), 1e-12);
  }

  /** The threshold is of avoiding the icing, after gaining too, and it is itself enough. */
  @Test
  void theThresholdIsOfAvoidingTheIcing() {
    double holds = 1 - ICINGS_COST_MORE.restartAfterGaining();
    assertTrue(holds < 1);
    GainEvidence seen = chance(Evidence.MEASURED, 0.7);
    assertEquals(
        FlagVerdict.FLAGGED,
        Assessment.of(seen, ICINGS_COST_MORE, 0.7 * holds, FlagVerdict.FLAGGED).verdict());
    assertEquals(
        FlagVerdict.TOO_RISKY,
        Assessment.of(seen, ICINGS_COST_MORE, 0.7, FlagVerdict.FLAGGED).verdict());
  }

  /** Without places there is no verdict, whatever the chance; what is settled stays settled. */
  @Test
  void withoutPlacesThereIsNoVerdict() {
    for (Evidence e : new Evidence[] {Evidence.PLACES_ONLY, Evidence.TAGGED, Evidence.UNKNOWN}) {
      Assessment a = Assessment.of(chance(e, 0.9), ICINGS_COST_MORE, 0.6, FlagVerdict.FLAGGED);
      assertEquals(FlagVerdict.LOOK, a.verdict());
      assertTrue(a.avoid().isEmpty() && a.trying().isEmpty());
      assertEquals(
          FlagVerdict.NOT_ICING,
          Assessment.of(chance(e, 0.9), ICINGS_COST_MORE, 0.6, FlagVerdict.NOT_ICING).verdict());
    }
  }
}
