package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Chances that allow for how many were looked at. */
class HolmTest {

  /** Validation: as R's p.adjust with method "holm" gives them (from memory, and by hand). */
  @Test
  void chancesAreAllowedForAsPublished() {
    near(List.of(0.05, 0.08, 0.09, 0.09, 0.09), List.of(0.01, 0.02, 0.03, 0.04, 0.05));
    near(List.of(0.06, 0.03, 0.06), List.of(0.04, 0.01, 0.03));
    near(List.of(1.0, 1.0), List.of(0.9, 0.6));
  }

  @Test
  void oneStaysAndNoneIsNone() {
    assertEquals(List.of(0.04), Holm.allowing(List.of(0.04)));
    assertEquals(List.of(), Holm.allowing(List.of()));
  }

  private static void near(List<Double> wanted, List<Double> chances) {
    List<Double> allowed = Holm.allowing(chances);
    for (int i = 0; i < wanted.size(); i++) {
      assertEquals(wanted.get(i), allowed.get(i), 1e-12);
    }
    assertEquals(wanted.size(), allowed.size());
  }
}
