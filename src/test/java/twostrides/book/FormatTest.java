package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import twostrides.stats.Count;

/** Whole per cent against whole-number arithmetic. */
class FormatTest {

  @Test
  void halfAPerCentGoesUpWhateverBinaryFractionsMakeOfIt() {
    assertEquals("58 %", Format.percent(new Count(23, 40)));
    assertEquals("15 %", Format.percent(new Count(29, 200)));
    for (int n = 10; n <= 400; n++) {
      for (int k = 0; k <= n; k++) {
        int whole = (200 * k + n) / (2 * n);
        String want =
            whole == 0 && k > 0 ? "under 1 %" : whole == 100 && k < n ? "over 99 %" : whole + " %";
        assertEquals(want, Format.percent(new Count(k, n)), k + " of " + n);
      }
    }
  }
}
