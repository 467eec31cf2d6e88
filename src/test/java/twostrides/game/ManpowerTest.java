package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ManpowerTest {

  private static Manpower of(int own, int other) {
    return new Manpower(
        OptionalInt.of(own), OptionalInt.of(other), Optional.empty(), Optional.empty());
  }

  /**
   * From a manpower column alone: own skaters below five and fewer than the opponent's (the
   * project's definition).
   */
  @ParameterizedTest
  @CsvSource({
    "5, 5, EVEN, NONE",
    "4, 5, SHORTHANDED, NONE",
    "5, 4, POWER_PLAY, NONE",
    "3, 5, SHORTHANDED, NONE",
    "4, 4, EVEN, NONE",
    "3, 3, EVEN, NONE",
    "4, 3, POWER_PLAY, NONE",
    "5, 6, EVEN, OPPONENT",
    "6, 5, EVEN, OWN",
    "4, 6, SHORTHANDED, OPPONENT",
    "6, 4, POWER_PLAY, OWN",
    "6, 6, EVEN, BOTH"
  })
  void strengthAndEmptyNet(int own, int other, Strength strength, NetEmpty net) {
    assertEquals(strength, of(own, other).strength());
    assertEquals(Optional.of(net), of(own, other).netEmpty());
  }

  @Test
  void theSheetsOwnWordOnTheNetsWins() {
    Manpower pulledWhileShort =
        new Manpower(OptionalInt.of(5), OptionalInt.of(5), Optional.of(true), Optional.of(false));
    assertEquals(Optional.of(NetEmpty.OWN), pulledWhileShort.netEmpty());
  }

  @Test
  void withoutColumnsNothingIsSaid() {
    assertEquals(Strength.UNKNOWN, Manpower.UNKNOWN.strength());
    assertEquals(Optional.empty(), Manpower.UNKNOWN.netEmpty());
  }
}
