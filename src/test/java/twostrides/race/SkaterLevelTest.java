package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SkaterLevelTest {

  @Test
  void wordsFindTheirLevel() {
    for (SkaterLevel level : SkaterLevel.values()) {
      assertEquals(Optional.of(level), SkaterLevel.of(level.word()));
      assertTrue(SkaterLevel.words().contains(level.word()));
    }
    assertEquals(Optional.of(SkaterLevel.ELITE_MEN), SkaterLevel.of(" Elite Men "));
    assertEquals(Optional.of(SkaterLevel.YOUTH_U13), SkaterLevel.of("youth_u13"));
    assertEquals(Optional.of(SkaterLevel.JUNIOR), SkaterLevel.of("U18"));
    assertEquals(Optional.empty(), SkaterLevel.of("masters"));
  }

  @Test
  void parametersAreTheSettings() {
    for (SkaterLevel level : SkaterLevel.values()) {
      SkaterSettings s = level.settings();
      List<Double> values = level.parameters().stream().map(Parameter::value).toList();
      assertEquals(
          List.of(s.topSpeed(), s.tau(), s.reaction(), s.carry(), s.reach(), s.sigma()), values);
    }
  }

  @Test
  void youthValuesAreNotGivenAsRead() {
    for (SkaterLevel level : List.of(SkaterLevel.YOUTH_U15, SkaterLevel.YOUTH_U13)) {
      assertEquals(SourceGrade.MEMORY_LOW, level.parameters().get(0).grade());
    }
  }

  @Test
  void valuesOutsideTheirRangesAreRefused() {
    SkaterSettings s = SkaterLevel.ELITE_MEN.settings();
    for (double bad : new double[] {-0.1, Double.NaN, 50}) {
      assertThrows(IllegalArgumentException.class, () -> s.withSprint(bad, 1.45));
      assertThrows(IllegalArgumentException.class, () -> s.withSprint(9, bad));
      assertThrows(IllegalArgumentException.class, () -> s.withReach(bad));
      assertThrows(IllegalArgumentException.class, () -> s.withSigma(bad));
    }
    assertEquals(0, s.withReach(0).reach());
    assertThrows(
        IllegalArgumentException.class,
        () -> new Parameter("x", 3, 1, 2, "m", "assumed", SourceGrade.ASSUMED));
  }
}
