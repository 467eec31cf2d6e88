package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Adjusted rates on the batting averages that made the method known. */
class BattingTest {

  /** Hits of 45 at bat: Efron and Morris 1975, JASA 70:311, table 1 (R package pscl). */
  private static final int[] HITS = {
    18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7
  };

  /** Average over the rest of the season, in the same order and from the same table. */
  private static final double[] REST = {
    .346, .298, .276, .222, .273, .270, .263, .210, .269, .230, .264, .256, .303, .264, .226, .285,
    .316, .200
  };

  private static final int AT_BAT = 45;

  private static double mean() {
    return IntStream.of(HITS).average().orElseThrow() / AT_BAT;
  }

  private static double variance(int divisor) {
    double mean = mean();
    return IntStream.of(HITS).mapToDouble(h -> Math.pow((double) h / AT_BAT - mean, 2)).sum()
        / divisor;
  }

  /**
   * Validation of the data: Efron and Morris 1977, Scientific American 236(5):119: mean .265,
   * shrinking factor .212, and errors about 3.5 times smaller than those of the plain averages.
   */
  @Test
  void jamesSteinIsAsPublished() {
    double mean = mean();
    double factor = 1 - (18 - 3) * (mean * (1 - mean) / AT_BAT) / variance(1);
    assertEquals(.265, mean, 5e-4);
    assertEquals(.212, factor, 5e-4);
    double raw = 0;
    double drawn = 0;
    for (int i = 0; i < HITS.length; i++) {
      double share = (double) HITS[i] / AT_BAT;
      raw += Math.pow(share - REST[i], 2);
      drawn += Math.pow(mean + factor * (share - mean) - REST[i], 2);
    }
    assertEquals(3.5, raw / drawn, 0.05);
  }

  /**
   * The same data adjusted: whoever leads stays far nearer to the mean than to his average, and the
   * errors are about as much smaller as those of Efron and Morris.
   */
  @Test
  void adjustedAveragesAreNearerToTheRestOfTheSeason() {
    List<Count> groups = IntStream.of(HITS).mapToObj(h -> new Count(h, AT_BAT)).toList();
    AdjustedRates rates = AdjustedRates.of(groups);
    double best = rates.of(groups.get(0)).orElseThrow().share();
    assertTrue(.27 < best && best < .31, "best " + best);
    double raw = 0;
    double adjusted = 0;
    int held = 0;
    for (int i = 0; i < HITS.length; i++) {
      AdjustedRate rate = rates.of(groups.get(i)).orElseThrow();
      raw += Math.pow((double) HITS[i] / AT_BAT - REST[i], 2);
      adjusted += Math.pow(rate.share() - REST[i], 2);
      held += rate.interval().low() <= REST[i] && REST[i] <= rate.interval().high() ? 1 : 0;
    }
    System.err.println(
        "batting averages: error of adjusted rates "
            + adjusted / raw
            + " of the plain ones', rest of the season held in "
            + held
            + " of 18");
    assertTrue(adjusted < raw / 3, adjusted + " against " + raw);
    assertTrue(held >= 17, held + " of 18");
  }
}
