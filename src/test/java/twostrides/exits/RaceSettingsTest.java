package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.race.SkaterLevel;

/** Settings that decide nothing are refused; the edges are allowed. */
class RaceSettingsTest {

  private static RaceSettings of(int simulations, double threshold) {
    return new RaceSettings(1, simulations, SkaterLevel.ELITE_MEN, threshold);
  }

  @ParameterizedTest
  @CsvSource({"99,0.6", "1000001,0.6", "2000,0", "2000,1", "2000,-0.1", "2000,1.1", "2000,NaN"})
  void refused(int simulations, double threshold) {
    assertThrows(IllegalArgumentException.class, () -> of(simulations, threshold));
  }

  @ParameterizedTest
  @CsvSource({
    "100,0.6,100",
    "1000000,0.6,100000",
    "2000,0.001,200",
    "2000,0.999,200",
    "900,0.6,100"
  })
  void allowedWithATenthWhereNothingFollowed(int simulations, double threshold, int fewer) {
    assertEquals(fewer, of(simulations, threshold).fewer());
  }

  @Test
  void theDefaultIsAllowed() {
    assertEquals(100, RaceSettings.DEFAULT.fewer());
  }
}
