package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import twostrides.rink.Rink;
import twostrides.rulebook.RaceQuestion;

/**
 * Chances of gaining center: their intervals, grades and guesses, by hand and by what must hold.
 */
class ChanceTest {

  private static final SeededRandom DRAWS = new SeededRandom(7, "g#1");
  private static final Rink RINK = Rink.NORTH_AMERICAN;

  @Test
  void anIntervalHoldsItsChance() {
    assertThrows(IllegalArgumentException.class, () -> new Chance(0.5, 0.6, 0.7));
    assertThrows(IllegalArgumentException.class, () -> new Chance(0.5, 0.4, 1.1));
    Chance c = Chance.of(0, 0.25);
    assertEquals(0.5, c.p(), 1e-12);
    // e^(1.959964 / 2) = 2.664 to 1
    assertEquals(2.664 / 3.664, c.high(), 1e-4);
    assertEquals(1 - c.high(), c.low(), 1e-12);
  }

  @Test
  void aLineByHand() {
    LogisticLine line =
        new LogisticLine(new double[] {1, 2, -3}, new double[][] {{4}, {0.5, 1}, {0, 0.25, 9}});
    assertEquals(1 + 2 * 0.5 - 3 * 2, line.at(0.5, 2), 1e-12);
    // 4 + 2 (0.5)(0.5) + 1 (0.25) + 2 (0.25)(0.5)(2) + 9 (4)
    assertEquals(4 + 0.5 + 0.25 + 0.5 + 36, line.variance(0.5, 2), 1e-12);
    assertEquals(0.3, LogisticLine.chance(LogisticLine.logOdds(0.3, 0.005)), 1e-12);
    assertEquals(0.995, LogisticLine.chance(LogisticLine.logOdds(1, 0.005)), 1e-12);
  }

  @Test
  void theSheetsGuessFallsWithDistanceAndItsBandsNest() {
    double before = 1;
    for (double metres = 0.5; metres <= SheetChance.FARTHEST; metres++) {
      SheetChance guess = SheetChance.of(metres, 2, 5, false).orElseThrow();
      assertTrue(guess.p() < before, "at " + metres);
      assertTrue(guess.band().low() < guess.likely().low());
      assertTrue(guess.likely().low() < guess.p() && guess.p() < guess.likely().high());
      assertTrue(guess.likely().high() < guess.band().high());
      // No verdict: the band of 95 % never lies on one side of a half.
      assertTrue(guess.band().low() < 0.5 && guess.band().high() > 0.5, "at " + metres);
      before = guess.p();
    }
    assertTrue(SheetChance.of(12.1, 0, 0, false).isEmpty());
    assertTrue(SheetChance.of(0, 0, 0, false).isEmpty());
    assertEquals(SheetChance.of(5, 10, 3, true), SheetChance.of(5, 25, 3, true));
    assertEquals(SheetChance.of(5, -3, 3, true), SheetChance.of(5, -25, 3, true));
  }

  @Test
  void whoLetsGoIsPressedMoreThanWhoCarries() {
    LossRate light = new LossRate(3, 40, 2, 20);
    for (double t : new double[] {0.5, 1, 3}) {
      Chance sent = light.keepsWhoLetGo(t, false);
      Chance missed = light.keepsWhoLetGo(t, true);
      assertTrue(sent.p() < light.keeps(t) && missed.p() < sent.p());
      assertTrue(missed.low() < sent.low());
      assertTrue(sent.high() > light.keeps(t), "what carriers do is not ruled out");
    }
    assertEquals(1, light.keepsWhoLetGo(0, false).p(), 1e-12);
    // By hand: odds of 4 to 1, halfway to e^-0.9 of them.
    LossRate one = new LossRate(1_000_000, 1e7, 1e-9, 1e-9);
    double t = -Math.log(0.8) / 0.1;
    assertEquals(
        4 * Math.exp(-0.45) / (1 + 4 * Math.exp(-0.45)), one.keepsWhoLetGo(t, false).p(), 1e-4);
  }

  private static Sighting skater(boolean own, double x, double y, double vx, boolean known) {
    return clicked(own, x, y, vx, known, 0);
  }

  private static Sighting clicked(
      boolean own, double x, double y, double vx, boolean known, double error) {
    return new Sighting(new Racer(own, x, y, vx, 0), known, error);
  }

  private static GainChance gain(double click, boolean carrier, boolean second, boolean third) {
    return new MeasuredGain(
            RINK,
            clicked(true, -6, 3, 4, carrier, click),
            List.of(
                clicked(false, 8, -9, 0, third, click),
                clicked(false, -3, 1, -2, true, click),
                clicked(false, -9, 5, 4, second, click)),
            SkaterLevel.ELITE_MEN.settings())
        .run(DRAWS, 2000);
  }

  @Test
  void theGradeSaysWhatIsKnownOfTheCarrierAndTheTwoNearest() {
    assertEquals(GainGrade.MEASURED, gain(0, true, true, true).grade());
    assertEquals(GainGrade.MEASURED, gain(0, true, true, false).grade());
    assertEquals(GainGrade.PLACES_ONLY, gain(0, true, false, true).grade());
    assertEquals(GainGrade.PLACES_ONLY, gain(1, false, true, true).grade());
    assertEquals(GainGrade.CLICKED, gain(1, true, true, true).grade());
    assertThrows(IllegalArgumentException.class, () -> gain(-1, true, true, true));
    assertThrows(IllegalArgumentException.class, () -> gain(6, true, true, true));
  }

  @Test
  void theErrorOfClicksEntersTheChance() {
    GainChance tracked = gain(0, true, true, true);
    GainChance clicked = gain(3, true, true, true);
    assertTrue(clicked.error() > tracked.error(), tracked + ", " + clicked);
    assertTrue(Math.abs(clicked.raw() - 0.5) < Math.abs(tracked.raw() - 0.5), "no nearer a half");
    for (GainChance g : List.of(tracked, clicked)) {
      assertTrue(g.chance().low() < g.chance().p() && g.chance().p() < g.chance().high());
    }
    assertEquals(clicked, gain(3, true, true, true), "the same seed");
  }

  /**
   * Not known well where the nearest checker stands, a sure thing is less so; of one far off not.
   */
  @Test
  void eachManHasTheErrorOfHisOwnClick() {
    GainChance sure = byErrors(0.3, 0.3);
    assertEquals(GainGrade.CLICKED, sure.grade());
    assertTrue(sure.raw() > 0.95, "" + sure);
    assertEquals(sure.raw(), byErrors(0.3, 3).raw(), 0.01);
    assertTrue(byErrors(3, 0.3).raw() < sure.raw() - 0.05, "" + byErrors(3, 0.3));
    assertEquals(GainGrade.CLICKED, byErrors(0, 0.3).grade(), "one who was clicked is enough");
  }

  private static GainChance byErrors(double near, double far) {
    return new MeasuredGain(
            RINK,
            skater(true, -6, 3, 6, true),
            List.of(clicked(false, -10, 3, 3, true, near), clicked(false, 24, 9, 0, true, far)),
            SkaterLevel.ELITE_MEN.settings())
        .run(DRAWS, 2000);
  }

  @Test
  void atCenterItIsSure() {
    MeasuredGain there =
        new MeasuredGain(
            RINK, skater(true, 0, 0, 0, true), List.of(), SkaterLevel.JUNIOR.settings());
    assertEquals(Chance.SURE, there.run(DRAWS, 10).chance());
  }

  @Test
  void theOtherTeamHasReadAMissedPass() {
    Racer chaser = new Racer(true, 8, 3, 5, 0);
    Racer defender = new Racer(false, 8, -3, 5, 0);
    double[] first = new double[2];
    for (int k = 0; k < 2; k++) {
      Delivery puck = new Delivery(18, 20, 22, 3, 0, k == 1);
      Scene scene =
          new Scene(
              RINK,
              -5,
              0,
              puck,
              OptionalDouble.empty(),
              List.of(chaser, defender),
              SkaterSet.of(SkaterLevel.ELITE_MEN));
      RaceChances r =
          new RaceModel(scene, Optional.of(new RaceQuestion(RaceQuestion.Deadline.TOUCH, true)))
              .run(DRAWS, 4000);
      first[k] = r.wavedOff() / (double) (r.wavedOff() + r.icing());
    }
    assertEquals(0.5, first[0], 0.05);
    assertTrue(first[1] < first[0] - 0.05, "first to it " + first[0] + ", " + first[1]);
  }

  @Test
  void theWhistleComesLaterFromFartherAway() {
    double before = 0;
    for (double x : new double[] {-1, -12, -25}) {
      Scene scene =
          new Scene(
              RINK,
              x,
              4,
              Delivery.SENT,
              OptionalDouble.empty(),
              List.of(),
              SkaterSet.of(SkaterLevel.ELITE_MEN));
      double low = PuckSpread.of(scene, DRAWS, 1000).whistle().orElseThrow().low();
      assertTrue(low > before && low > Fitted.WHISTLE, "from " + x);
      before = low;
    }
    Scene dead =
        new Scene(
            RINK,
            -20,
            4,
            Delivery.SENT.atSpeed(2),
            OptionalDouble.empty(),
            List.of(),
            SkaterSet.of(SkaterLevel.ELITE_MEN));
    assertTrue(PuckSpread.of(dead, DRAWS, 50).whistle().isEmpty());
  }
}
