package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;
import twostrides.rink.Rink;

/**
 * Numbers are normal and not in step with each other, and a race by them is as exact as promised.
 */
class EvenSimulationsTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final int SIMULATIONS = 500;
  private static final int VARIABLES = 24;
  private static final int SCENES = 40;
  private static final int SEEDS = 10;

  @Test
  void eachVariableIsNormalAndNoTwoAreInStep() {
    EvenSimulations even = new EvenSimulations(new SeededRandom(1, "g#1"), VARIABLES);
    for (int a = 0; a < VARIABLES; a++) {
      int variable = a;
      double[] x =
          IntStream.range(0, SIMULATIONS).mapToDouble(i -> even.normal(i, variable)).toArray();
      Estimate mean = Estimate.of(x);
      assertEquals(0, mean.value(), 0.03, "mean of variable " + a);
      assertEquals(1, mean.error() * Math.sqrt(SIMULATIONS), 0.03, "spread of variable " + a);
      for (int b = 0; b < a; b++) {
        double product = 0;
        for (int i = 0; i < SIMULATIONS; i++) {
          product += x[i] * even.normal(i, b);
        }
        assertEquals(0, product / SIMULATIONS, 0.2, "variables " + a + " and " + b);
      }
    }
  }

  /** Two releases start elsewhere, the same one does not. */
  @Test
  void aReleaseHasNumbersOfItsOwn() {
    double here = new EvenSimulations(new SeededRandom(1, "g#1"), 2).normal(0, 1);
    assertEquals(here, new EvenSimulations(new SeededRandom(1, "g#1"), 2).normal(0, 1));
    assertTrue(here != new EvenSimulations(new SeededRandom(1, "g#2"), 2).normal(0, 1));
    assertTrue(here != new EvenSimulations(new SeededRandom(2, "g#1"), 2).normal(0, 1));
  }

  /**
   * Forty seeded scenes of six skaters, each raced with ten seeds: chances of one scene are apart
   * by two thirds of the error that as many independent simulations would have, or less.
   * Independent ones would need more than twice their number for that.
   */
  @Test
  void aRaceIsOffByTwoThirdsOfTheErrorOfIndependentSimulationsAtTheMost() {
    Random random = new Random(7);
    double apart = 0;
    double independent = 0;
    for (int scene = 0; scene < SCENES; scene++) {
      double x = -1 - 14 * random.nextDouble();
      Sighting carrier = somebody(random, true, x, 2 + 5 * random.nextDouble());
      List<Sighting> checkers =
          Stream.generate(
                  () -> {
                    double ahead = 20 * random.nextDouble() - 6;
                    return somebody(random, false, x + ahead, 8 * random.nextDouble() - 6);
                  })
              .limit(5)
              .toList();
      SkaterSettings legs = SkaterLevel.ELITE_MEN.settings();
      MeasuredGain race = new MeasuredGain(Rink.NORTH_AMERICAN, carrier, checkers, legs);
      double[] chances = new double[SEEDS];
      for (int seed = 0; seed < SEEDS; seed++) {
        GainChance chance = race.run(new SeededRandom(seed, "g#" + scene), SIMULATIONS);
        chances[seed] = chance.raw();
        independent += chance.error() * chance.error() / SEEDS;
      }
      double error = Estimate.of(chances).error();
      apart += error * error * SEEDS * SEEDS / (SEEDS - 1);
    }
    FIGURES.say(
        "%d simulations are off by %.1f points, independent ones by %.1f: %d of those are needed",
        SIMULATIONS,
        100 * Math.sqrt(apart / SCENES),
        100 * Math.sqrt(independent / SCENES),
        100 * Math.round(SIMULATIONS * independent / apart / 100));
    assertTrue(
        apart < independent * 4 / 9,
        Math.sqrt(apart / SCENES) + " of " + Math.sqrt(independent / SCENES));
  }

  private static Sighting somebody(Random random, boolean chases, double x, double vx) {
    double y = 24 * random.nextDouble() - 12;
    return new Sighting(new Racer(chases, x, y, vx, 6 * random.nextDouble() - 3), true);
  }
}
