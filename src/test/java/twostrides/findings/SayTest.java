package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import twostrides.stats.Count;

/** Whole per cent against whole-number arithmetic. */
class SayTest {

  @Test
  void halfAPerCentGoesUpWhateverBinaryFractionsMakeOfIt() {
    assertEquals("58 %", Say.shortShare(new Count(23, 40)));
    assertEquals("15 %", Say.shortShare(new Count(29, 200)));
    for (int n = 10; n <= 400; n++) {
      for (int k = 0; k <= n; k++) {
        assertEquals(
            (200 * k + n) / (2 * n) + " %", Say.shortShare(new Count(k, n)), k + " of " + n);
      }
    }
  }
}
