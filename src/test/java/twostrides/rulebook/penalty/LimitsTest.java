package twostrides.rulebook.penalty;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.rulebook.penalty.PenaltyRules.Lengths;

/**
 * The first and the last value that a rule, a reading or a clock may have, and the next to each.
 */
class LimitsTest {

  private static final Clock CLOCK = new Clock(1_200_000, 300_000, 3);

  @Test
  void aPenaltyLastsASecondToAnHour() {
    OptionalDouble none = OptionalDouble.empty();
    List<DoubleFunction<Object>> kinds =
        List.of(
            s -> new Lengths(s, 300, none),
            s -> new Lengths(120, s, none),
            s -> new Lengths(120, 300, OptionalDouble.of(s)),
            s -> called(OptionalDouble.of(s)));
    for (DoubleFunction<Object> kind : kinds) {
      for (double seconds : new double[] {1, 3600}) {
        assertDoesNotThrow(() -> kind.apply(seconds));
      }
      for (double seconds : new double[] {0.999, 3600.001, -1, Double.NaN}) {
        assertThrows(IllegalArgumentException.class, () -> kind.apply(seconds));
      }
    }
  }

  private static BoxEvent.Called called(OptionalDouble seconds) {
    return new BoxEvent.Called(
        new GameInstant(1, 0, 0),
        Side.HOME,
        PenaltyKind.MINOR,
        seconds,
        Optional.of("12"),
        Optional.of("7"),
        "row 1");
  }

  private static PenaltyRules rules(int fewest, OptionalInt overtime) {
    RulesDraft draft = new RulesDraft();
    draft.fewestSkaters = fewest;
    draft.overtimeSkaters = overtime;
    return draft.rules();
  }

  @Test
  void penaltiesLeaveOneSkaterToFourAndOvertimeHasThatManyToFive() {
    for (int fewest = 1; fewest <= 4; fewest++) {
      assertEquals(5 - fewest, rules(fewest, OptionalInt.empty()).mostShort());
      for (int overtime = fewest; overtime <= 5; overtime++) {
        assertEquals(overtime, rules(fewest, OptionalInt.of(overtime)).skaters(true));
        assertEquals(5, rules(fewest, OptionalInt.of(overtime)).skaters(false));
      }
      int least = fewest;
      assertThrows(IllegalArgumentException.class, () -> rules(least, OptionalInt.of(least - 1)));
      assertThrows(IllegalArgumentException.class, () -> rules(least, OptionalInt.of(6)));
    }
    assertThrows(IllegalArgumentException.class, () -> rules(0, OptionalInt.empty()));
    assertThrows(IllegalArgumentException.class, () -> rules(5, OptionalInt.empty()));
  }

  @Test
  void anInstantIsInAPeriodAndNotBeforeItsStart() {
    assertDoesNotThrow(() -> new GameInstant(1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new GameInstant(0, 0, 0));
    for (double elapsed : new double[] {-0.001, 1e7, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> new GameInstant(1, elapsed, 0));
    }
  }

  @Test
  void aGameHasPlay() {
    assertDoesNotThrow(() -> new Clock(1, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Clock(0, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Clock(1, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Clock(1, 1, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> BoxTimeline.of(PenaltyRules.COMMON, 0, 300, 3, List.of()));
  }

  /** The end of a period belongs to it; a reading past the end is not one of its readings. */
  @ParameterizedTest
  @CsvSource({
    "1, 1_200_000, 1, 1200",
    "2, 1_200_001, 2, 0.001",
    "3, 3_600_000, 3, 1200",
    "4, 3_600_001, 4, 0.001",
    "4, 3_900_000, 4, 300",
    "5, 3_900_001, 5, 0.001",
    "6, 4_300_000, 6, 100"
  })
  void playIsCountedThroughThePeriods(int of, String millis, int period, double elapsed) {
    long count = Long.parseLong(millis.replace("_", ""));
    GameInstant at = CLOCK.instant(count, 7);
    assertEquals(new GameInstant(period, elapsed, 7), at);
    assertEquals(count, CLOCK.millis(at));
    assertEquals(of, at.period());
    assertFalse(CLOCK.pastEnd(at));
  }

  @ParameterizedTest
  @CsvSource({
    "875_000, 1, 14:35",
    "875_500, 1, 14:35.5",
    "3_005, 1, 0:03",
    "600_000, 1, 10:00",
    "2_435_000, 3, 0:35",
    "2_435_000, 2, 0:35 of period 3"
  })
  void aClockIsReadByThePeriodOfWhoAsks(String millis, int from, String text) {
    assertEquals(text, CLOCK.text(Long.parseLong(millis.replace("_", "")), from));
  }

  /** What is written past the end of a period is taken for its end, and is what it was. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "home major to 12 served by 7 for 4:00",
        "signal away",
        "goal home penalty-shot",
        "net away empty",
        "stop",
        "start"
      })
  void whatIsPastTheEndIsTakenForTheEnd(String what) {
    BoxEvent within = CaseEvents.events("4 4:59 " + what).get(0);
    assertEquals(within, CLOCK.within(within));
    BoxEvent end = CaseEvents.events("4 5:00 " + what).get(0);
    assertEquals(end, CLOCK.within(end));
    BoxEvent past = CaseEvents.events("4 5:01 " + what).get(0);
    assertTrue(CLOCK.pastEnd(past.at()));
    assertEquals(end, CLOCK.within(past));
  }
}
