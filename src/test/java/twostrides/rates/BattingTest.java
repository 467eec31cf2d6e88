package twostrides.rates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawing shares toward their group on the batting averages that made the method known. */
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
   * The same data as beta-binomial. By moments less the binomial noise, alpha + beta = (m (1 - m) -
   * v) / (v - m (1 - m) / n), the averages are drawn by .891 (ours, no publication); Efron and
   * Morris's factor draws by 1 - .212. The likelihood sees hardly any spread here: alpha + beta 793
   * and a gain of .014 (recomputed with log gamma functions in scipy 1.17).
   */
  @Test
  void battingIsNearlyAllChance() {
    double mean = mean();
    double v = variance(17);
    double precision = (mean * (1 - mean) - v) / (v - mean * (1 - mean) / AT_BAT);
    BetaPrior prior = new BetaPrior(mean * precision, (1 - mean) * precision);
    assertEquals(97.68, prior.alpha(), 0.05);
    assertEquals(270.31, prior.beta(), 0.05);
    Shrunk best = prior.shrink(new Count(18, AT_BAT));
    assertEquals(.891, best.priorWeight(), 5e-4);
    assertEquals(.2801, best.share(), 5e-5);

    List<Count> groups = IntStream.of(HITS).mapToObj(h -> new Count(h, AT_BAT)).toList();
    BetaBinomial.Fitted fitted =
        assertInstanceOf(BetaBinomial.Fitted.class, BetaBinomial.fit(groups));
    assertEquals(210.55, fitted.prior().alpha(), 0.1);
    assertEquals(582.69, fitted.prior().beta(), 0.3);
    assertEquals(.014037, fitted.gain(), 1e-5);
    double raw = 0;
    double drawn = 0;
    for (int i = 0; i < HITS.length; i++) {
      raw += Math.pow((double) HITS[i] / AT_BAT - REST[i], 2);
      drawn += Math.pow(fitted.shrink(groups.get(i)).orElseThrow().share() - REST[i], 2);
    }
    assertTrue(drawn < raw / 3, drawn + " against " + raw);
  }

  /**
   * The formula (H + a) / (AB + a + b) with a = 101.4, b = 287.3: Robinson, Understanding empirical
   * Bayes estimation, 2015 (shapes from memory). Hits and at bats as in his table; the results are
   * that formula by hand.
   */
  @ParameterizedTest
  @CsvSource({
    "3771, 12364, .3037",
    "216, 944, .2382",
    "2, 21, .2524",
    "11, 49, .2568",
    "772, 3044, .2544"
  })
  void careersAreDrawnTowardAllOthers(int hits, int atBats, double share) {
    Shrunk shrunk = new BetaPrior(101.4, 287.3).shrink(new Count(hits, atBats));
    assertEquals(share, shrunk.share(), 5e-5);
    assertEquals(388.7 / (388.7 + atBats), shrunk.priorWeight(), 1e-12);
  }

  /** Quantiles in closed form: of Beta(a, 1) it is part^(1/a), of Beta(1, b) the mirror image. */
  @ParameterizedTest
  @CsvSource({"0.05, 0.5", "1, 0.025", "3.5, 0.975", "400, 0.025", "1e5, 0.3"})
  void quantilesAreThoseOfTheClosedForm(double shape, double part) {
    double expected = Math.pow(part, 1 / shape);
    assertEquals(expected, new BetaPrior(shape, 1).quantile(part), 1e-11);
    assertEquals(1 - expected, new BetaPrior(1, shape).quantile(1 - part), 1e-11);
  }
}
