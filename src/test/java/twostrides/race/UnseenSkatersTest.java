package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import twostrides.rink.Rink;

/** Skaters who were not seen beside those who were. */
class UnseenSkatersTest {

  private static final int DRAWS = 4000;

  /** A teammate behind his own net, out of every race. */
  private static final Racer AWAY = new Racer(true, -29, 0, 0, 0);

  private static RaceChances run(List<Racer> known, int own, int opponents) {
    Scene scene =
        new Scene(
            Rink.NORTH_AMERICAN,
            -12,
            4,
            Delivery.SENT,
            OptionalDouble.empty(),
            known,
            SkaterSet.of(SkaterLevel.ELITE_MEN),
            own,
            opponents);
    return new RaceModel(scene, Optional.empty()).run(new Draws(3, "g#9"), DRAWS);
  }

  @Test
  void fiveUnseenOfEachTeamRaceLikeTenOfWhomNothingIsKnown() {
    RaceChances nothing = run(List.of(), 0, 0);
    RaceChances unseen = run(List.of(AWAY), 5, 5);
    double error = Math.hypot(nothing.error(nothing.touched()), unseen.error(unseen.touched()));
    assertTrue(nothing.touched() > DRAWS / 20, "says nothing: " + nothing);
    assertEquals(nothing.touched() / (double) DRAWS, unseen.touched() / (double) DRAWS, 4 * error);
  }

  @Test
  void whoIsNotThereTouchesNothing() {
    assertEquals(0, run(List.of(AWAY), 4, 0).touched());
    assertTrue(run(List.of(AWAY), 4, 1).touched() > 0);
  }

  @Test
  void moreThanATeamHasCannotBeUnseen() {
    assertThrows(IllegalArgumentException.class, () -> run(List.of(AWAY), 6, 0));
    assertThrows(IllegalArgumentException.class, () -> run(List.of(AWAY), 0, -1));
  }
}
