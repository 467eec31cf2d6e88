package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import twostrides.rink.Rink;

/** The puck without skaters is the race model's: the same draws stop short. */
class DrawnPuckTest {

  @Test
  void theSameDrawsStopShort() {
    int all = 0;
    for (double x = -28; x < 0; x += 5) {
      for (Delivery delivery : new Delivery[] {Delivery.SENT, Delivery.MISSED_PASS}) {
        Delivery sent = delivery.forLevel(SkaterLevel.YOUTH_U13);
        DrawnPuck puck = new DrawnPuck(Rink.NORTH_AMERICAN, x, 9);
        Draws draws = new Draws(20220208, "at " + x);
        int here = 0;
        for (int i = 0; i < 500; i++) {
          here += puck.release(sent, draws, i).stopsShort() ? 1 : 0;
        }
        RaceModel model = new RaceModel(puck.scene(sent, SkaterLevel.YOUTH_U13), Optional.empty());
        assertEquals(model.run(draws, 500).stoppedShort(), here, "at " + x + " m");
        all += here;
      }
    }
    assertTrue(all > 500, "too few stopped short to tell: " + all);
  }
}
