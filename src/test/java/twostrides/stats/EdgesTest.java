package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import twostrides.stats.Bootstrap.Resampled;

/** The first and the last value of everything, and counts that lie far out. */
class EdgesTest {

  private static Count c(int successes, int trials) {
    return new Count(successes, trials);
  }

  /**
   * Newton's method overshoots here and has to halve its step. Non-regression, found by a search;
   * at the maximum the expected successes and their places are those counted.
   */
  @Test
  void aSteepLineIsFound() {
    List<Count> falling = List.of(c(6, 12), c(0, 2074), c(2, 2), c(0, 4), c(0, 18), c(0, 29));
    LogisticFit fit = isAtTheMaximum(falling, new double[] {0, 1, 2, 3, 4, 5});
    assertEquals(-5.555875605452432, fit.slope(), 1e-9);
    assertEquals(0.7908682191542441, fit.slopeError(), 1e-9);
    assertEquals(Trend.Direction.FALLING, Trend.of(falling).direction());
    Trend.Slope slope = Trend.of(falling).slope().orElseThrow();
    assertEquals(Math.exp(fit.slope()), slope.oddsRatio(), 1e-15);
    double reach = 1.959963984540054 * fit.slopeError();
    assertEquals(Math.exp(fit.slope() - reach), slope.interval().low(), 1e-15);
    assertEquals(Math.exp(fit.slope() + reach), slope.interval().high(), 1e-15);
    List<Count> late = List.of(c(0, 23), c(6, 12), c(0, 15), c(2268, 2336));
    double[] places = {0, 73.66494726077251, 73.72357580971489, 73.73370475361097};
    assertEquals(59.060240037322345, isAtTheMaximum(late, places).slope(), 1e-6);
    assertEquals(9.081619218308903, isAtTheMaximum(late, places).slopeError(), 1e-6);
    List<Count> rising = List.of(c(0, 14), c(2001, 2001), c(16, 22), c(4, 4), c(15, 15), c(12, 12));
    isAtTheMaximum(rising, new double[] {0, 1, 2, 3, 4, 5});
  }

  private static LogisticFit isAtTheMaximum(List<Count> counts, double[] places) {
    LogisticFit fit = LogisticFit.of(counts, places).orElseThrow();
    double off = 0;
    double offAlong = 0;
    for (int i = 0; i < places.length; i++) {
      double p = 1 / (1 + Math.exp(-fit.intercept() - fit.slope() * places[i]));
      double rest = counts.get(i).successes() - counts.get(i).trials() * p;
      off += rest;
      offAlong += rest * places[i];
    }
    assertEquals(0, off, 1e-6);
    assertEquals(0, offAlong, 1e-4);
    return fit;
  }

  /** Without an overlap there is no line: all successes lie past all failures, or at one place. */
  @Test
  void whatDoesNotOverlapHasNoLine() {
    double[] places = {0, 1, 2};
    assertEquals(Optional.empty(), LogisticFit.of(List.of(c(0, 5), c(0, 5), c(5, 5)), places));
    assertEquals(Optional.empty(), LogisticFit.of(List.of(c(5, 5), c(0, 5), c(0, 5)), places));
    assertEquals(Optional.empty(), LogisticFit.of(List.of(c(0, 5), c(2, 5), c(5, 5)), places));
    assertEquals(Optional.empty(), LogisticFit.of(List.of(c(5, 5), c(2, 5), c(0, 5)), places));
    assertEquals(Optional.empty(), LogisticFit.of(List.of(c(5, 5), c(5, 5), c(5, 5)), places));
    assertEquals(Optional.empty(), LogisticFit.of(List.of(c(0, 5), c(0, 5), c(0, 5)), places));
    assertTrue(LogisticFit.of(List.of(c(1, 5), c(2, 5), c(5, 5)), places).isPresent());
    assertEquals(Trend.Direction.RISING, Trend.of(List.of(c(0, 9), c(2, 9), c(9, 9))).direction());
    assertEquals(Trend.Direction.FALLING, Trend.of(List.of(c(9, 9), c(2, 9), c(0, 9))).direction());
  }

  @Test
  void aTrendIsSaidInWordsFromTenTrialsOn() {
    assertEquals(
        List.of("rising", "falling", "flat or unclear", "too few to say"),
        List.of(Trend.Direction.values()).stream().map(Trend.Direction::word).toList());
    assertEquals(Trend.Direction.TOO_FEW, Trend.of(List.of(c(1, 3), c(1, 3), c(1, 3))).direction());
    assertEquals(
        Trend.Direction.FLAT_OR_UNCLEAR, Trend.of(List.of(c(1, 3), c(1, 4), c(1, 3))).direction());
    assertEquals(Trend.Direction.TOO_FEW, Trend.of(List.of(c(5, 50), c(5, 50))).direction());
  }

  /** 1 to 101 in some order: the points lie between them by the tail of ten clusters. */
  @Test
  void pointsOfDrawsLieBetweenValues() {
    AtomicInteger next = new AtomicInteger(-1);
    Resampled drawn =
        new Bootstrap(3, 101)
            .of(
                IntStream.range(0, 10).boxed().toList(),
                list -> OptionalDouble.of(next.incrementAndGet() * 37 % 101 + 1));
    double tail = Bootstrap.tail(10);
    assertEquals(1 + 100 * tail, drawn.interval().orElseThrow().low(), 1e-9);
    assertEquals(101 - 100 * tail, drawn.interval().orElseThrow().high(), 1e-9);
    Resampled one = new Bootstrap(3, 1).of(ten(), list -> OptionalDouble.of(4));
    assertEquals(Optional.of(new Range(4, 4)), one.interval());
    assertThrows(IllegalArgumentException.class, () -> new Bootstrap(3, 0));
  }

  private static List<Integer> ten() {
    return Collections.nCopies(10, 1);
  }

  /** One draw in twenty without a value could hide a tail; one in twenty-one may. */
  @Test
  void drawsWithoutValueHideATail() {
    assertEquals(Optional.empty(), oneWithoutValue(20).interval());
    assertEquals(Optional.of(new Range(4, 4)), oneWithoutValue(21).interval());
    assertEquals(1, oneWithoutValue(21).withoutValue());
  }

  private static Resampled oneWithoutValue(int draws) {
    AtomicInteger asked = new AtomicInteger();
    return new Bootstrap(3, draws)
        .of(
            ten(),
            list -> asked.incrementAndGet() == 2 ? OptionalDouble.empty() : OptionalDouble.of(4));
  }

  @Test
  void endsBelong() {
    Range range = new Range(-1, 2);
    assertTrue(range.contains(-1) && range.contains(2) && range.contains(0));
    assertFalse(range.contains(-1.001) || range.contains(2.001));
    assertDoesNotThrow(() -> new Interval(0, 1));
    assertDoesNotThrow(() -> new Interval(0.5, 0.5));
    assertThrows(IllegalArgumentException.class, () -> new Interval(-0.001, 1));
    assertThrows(IllegalArgumentException.class, () -> new Interval(0, 1.001));
    assertThrows(IllegalArgumentException.class, () -> new Interval(0.6, 0.5));
    Interval all = new Interval(0, 1);
    assertDoesNotThrow(() -> new AdjustedRate(c(0, 1), 0, all));
    assertDoesNotThrow(() -> new AdjustedRate(c(0, 1), 1, all));
    assertThrows(IllegalArgumentException.class, () -> new AdjustedRate(c(0, 1), -0.001, all));
    assertThrows(IllegalArgumentException.class, () -> new AdjustedRate(c(0, 1), 1.001, all));
  }

  @Test
  void countsAreAddedAndTakenApart() {
    assertEquals(c(3, 10), c(4, 17).minus(c(1, 7)));
    assertEquals(c(4, 17), c(3, 10).plus(c(1, 7)));
    assertThrows(IllegalArgumentException.class, () -> c(1, 9).minus(c(2, 3)));
  }

  /** Who never tried says nothing of the group; who tried once says something, and is no judge. */
  @Test
  void membersWithoutTrialsSayNothing() {
    List<Count> members = List.of(c(3, 10), c(1, 12), c(6, 9), c(2, 2));
    List<Count> more = new ArrayList<>(members);
    more.addAll(Collections.nCopies(20, c(0, 0)));
    AdjustedRates rates = AdjustedRates.of(members);
    for (Count member : members) {
      assertEquals(rates.of(member), AdjustedRates.of(more).of(member));
    }
    assertEquals(Optional.empty(), AdjustedRates.of(more).of(c(0, 0)));
    List<Count> once = new ArrayList<>(members);
    once.add(c(1, 1));
    assertNotEquals(rates.of(c(3, 10)), AdjustedRates.of(once).of(c(3, 10)));
    assertEquals(
        Optional.empty(), AdjustedRates.of(List.of(c(3, 9), c(1, 8), c(1, 1))).of(c(3, 9)));
    assertTrue(AdjustedRates.of(List.of(c(3, 9), c(1, 8), c(1, 2))).of(c(3, 9)).isPresent());
  }
}
