package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import twostrides.rink.Rink;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.RaceQuestion;

/** The race: what must hold whatever the numbers are. */
class RaceModelTest {

  private static final int DRAWS = 2000;
  private static final Optional<RaceQuestion> HYBRID = Bookshelf.book("hybrid").raceQuestion();

  private static Scene scene(double x, double y, OptionalDouble target, List<Racer> racers) {
    return new Scene(
        Rink.NORTH_AMERICAN,
        x,
        y,
        Delivery.SENT,
        target,
        racers,
        SkaterSet.of(SkaterLevel.ELITE_MEN));
  }

  private static RaceChances run(Scene s, Optional<RaceQuestion> question) {
    return new RaceModel(s, question).run(new SeededRandom(7, "game#1"), DRAWS);
  }

  private static List<Racer> racers(Random dice) {
    List<Racer> all = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      double x = i % 2 == 0 ? -15 + 12 * dice.nextDouble() : 6 + 14 * dice.nextDouble();
      all.add(
          new Racer(
              i % 2 == 0,
              x,
              -11 + 22 * dice.nextDouble(),
              6 * dice.nextDouble(),
              -3 + 6 * dice.nextDouble()));
    }
    return all;
  }

  @Test
  void theSameSeedGivesTheSameChancesAndAnotherSeedOthers() {
    Scene s = scene(-6, 4, OptionalDouble.empty(), List.of());
    assertEquals(run(s, HYBRID), run(s, HYBRID));
    RaceChances other = new RaceModel(s, HYBRID).run(new SeededRandom(8, "game#1"), DRAWS);
    RaceChances release = new RaceModel(s, HYBRID).run(new SeededRandom(7, "game#2"), DRAWS);
    assertTrue(!other.equals(run(s, HYBRID)) && !release.equals(run(s, HYBRID)));
  }

  @Test
  void automaticIcingIsWhateverCrossesUntouched() {
    for (double x : new double[] {-28, -12, -3, -0.3}) {
      Scene s = scene(x, 4, OptionalDouble.empty(), List.of());
      RaceChances race = run(s, HYBRID);
      RaceChances none = run(s, Optional.empty());
      assertEquals(race.icing() + race.wavedOff(), none.icing());
      assertEquals(0, none.wavedOff());
      assertEquals(race.touched(), none.touched());
    }
  }

  @Test
  void levelIsWhatTheBookSays() {
    Scene s = scene(-6, 4, OptionalDouble.empty(), racers(new Random(3)));
    RaceChances icing = run(s, HYBRID);
    RaceChances waved =
        run(s, Optional.of(new RaceQuestion(RaceQuestion.Deadline.END_ZONE_SPOTS, false)));
    assertTrue(icing.icing() > waved.icing(), "some races are level");
    assertEquals(icing.icing() + icing.wavedOff(), waved.icing() + waved.wavedOff());
  }

  @Test
  void theMirroredRinkGivesTheSameChances() {
    Random dice = new Random(11);
    for (int i = 0; i < 20; i++) {
      List<Racer> racers = racers(dice);
      List<Racer> mirrored =
          racers.stream().map(r -> new Racer(r.chases(), r.x(), -r.y(), r.vx(), -r.vy())).toList();
      double y = -10 + 20 * dice.nextDouble();
      double target = -9 + 18 * dice.nextDouble();
      RaceChances left = run(scene(-8, y, OptionalDouble.of(target), racers), HYBRID);
      RaceChances right = run(scene(-8, -y, OptionalDouble.of(-target), mirrored), HYBRID);
      // A bounce off the very seam of a curve may fall either way by a last digit.
      assertEquals(left.icing(), right.icing(), 2);
      assertEquals(left.touched(), right.touched(), 2);
    }
  }

  @Test
  void oneMoreChaserNeverLowersTheChanceOfAWaveOff() {
    Random dice = new Random(13);
    for (int i = 0; i < 30; i++) {
      List<Racer> racers = racers(dice);
      List<Racer> more = new ArrayList<>(racers);
      more.add(new Racer(true, 4 + 10 * dice.nextDouble(), -8 + 16 * dice.nextDouble(), 8, 0));
      Scene fewer = scene(-6, 2, OptionalDouble.empty(), racers);
      RaceChances before = run(fewer, HYBRID);
      RaceChances after = run(scene(-6, 2, OptionalDouble.empty(), more), HYBRID);
      assertTrue(after.wavedOff() >= before.wavedOff(), before + " then " + after);
      assertEquals(before.touched(), after.touched());
    }
  }

  @Test
  void aDefenderOnThePathTouchesIt() {
    Racer waiting = new Racer(false, 8, 0, 0, 0);
    Scene blocked = scene(-5, 0, OptionalDouble.of(0.0), List.of(waiting));
    RaceChances r =
        new RaceModel(
                new Scene(
                    Rink.NORTH_AMERICAN,
                    -5,
                    0,
                    new Delivery(18, 20, 22, 0, 0, false),
                    OptionalDouble.of(0.0),
                    blocked.racers(),
                    SkaterSet.of(SkaterLevel.ELITE_MEN)),
                HYBRID)
            .run(new SeededRandom(1, "x"), DRAWS);
    assertEquals(DRAWS, r.touched());
  }

  /**
   * A race closer than 0.1 s is level. Two skaters, one of each team, as far from the puck's way:
   * their leads differ by two logistic errors of 0.60 s and by their legs, so that about one in
   * twelve races is so close; with 0.4 s it would be one in three.
   */
  @Test
  void aRaceWithinATenthOfASecondIsLevel() {
    List<Racer> pair = List.of(new Racer(true, -8, 6, 6, 0), new Racer(false, -8, 10, 6, 0));
    Scene s = scene(-5, 8, OptionalDouble.of(8), pair);
    RaceChances icing = run(s, HYBRID);
    RaceChances waved =
        run(s, Optional.of(new RaceQuestion(RaceQuestion.Deadline.END_ZONE_SPOTS, false)));
    double raced = icing.icing() + icing.wavedOff();
    assertTrue(raced > 1000, "races: " + raced);
    assertEquals(0.085, (icing.icing() - waved.icing()) / raced, 0.035);
  }

  /**
   * Two to three metres up above a defender the puck is out of his reach, and at the next look he
   * is too far from it; along the ice he has it. By hand: 22 m/s at 20 degrees, 2.8 m up at 17 m.
   */
  @Test
  void aPuckAboveTheShouldersIsNotPlayed() {
    Scene s =
        new Scene(
            Rink.NORTH_AMERICAN,
            -2,
            6,
            Delivery.SENT.atSpeed(22),
            OptionalDouble.of(6),
            List.of(new Racer(false, 17, 6, 0, 0)),
            SkaterSet.of(SkaterLevel.ELITE_MEN));
    assertEquals(0, touched(s, Math.toRadians(20)));
    assertEquals(DRAWS, touched(s, 0));
  }

  private static int touched(Scene s, double loft) {
    return new RaceModel(s, HYBRID, Launch.of(s, OptionalDouble.of(loft)))
        .run(new SeededRandom(7, "game#1"), DRAWS)
        .touched();
  }

  @Test
  void twiceTheDrawsAgreeWithinTheirError() {
    for (double x : new double[] {-25, -10, -2}) {
      Scene s = scene(x, 6, OptionalDouble.empty(), List.of());
      RaceModel model = new RaceModel(s, HYBRID);
      RaceChances once = model.run(new SeededRandom(5, "a"), DRAWS);
      RaceChances twice = model.run(new SeededRandom(6, "b"), 2 * DRAWS);
      double error = Math.hypot(once.error(once.icing()), twice.error(twice.icing()));
      assertEquals(once.pIcing(), twice.pIcing(), 4 * error);
    }
  }

  @Test
  void aPlaceOutsideAndASkaterTooFastAreRefused() {
    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () -> scene(-40, 0, OptionalDouble.empty(), List.of()))
            .getMessage()
            .contains("inside the boards"));
    // A place written at the boards may lie half a metre outside them.
    assertEquals(-30.9, scene(-30.9, 0, OptionalDouble.empty(), List.of()).x());
    assertThrows(
        IllegalArgumentException.class, () -> scene(-31.1, 0, OptionalDouble.empty(), List.of()));
    assertThrows(
        IllegalArgumentException.class, () -> scene(0, 13.6, OptionalDouble.empty(), List.of()));
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> new Racer(true, 0, 0, 20, 0))
            .getMessage()
            .contains("20.0 m/s"));
  }
}
