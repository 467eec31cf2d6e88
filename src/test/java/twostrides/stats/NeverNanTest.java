package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Random and lopsided inputs: no result holds NaN or an infinite number. Records write all their
 * numbers, so their text is searched; reordered or impossible intervals throw by themselves.
 */
class NeverNanTest {

  private final SplittableRandom random = new SplittableRandom(99);

  private static void check(Object result, Object input) {
    String text = result.toString();
    assertFalse(text.contains("NaN") || text.contains("Infinity"), () -> input + " gives " + text);
  }

  /** Often nothing, everything, or a single trial. */
  private Count count() {
    int kind = random.nextInt(8);
    int trials = kind < 2 ? random.nextInt(3) : kind < 7 ? random.nextInt(40) : random.nextInt(600);
    int successes =
        switch (random.nextInt(4)) {
          case 0 -> 0;
          case 1 -> trials;
          default -> random.nextInt(trials + 1);
        };
    return new Count(successes, trials);
  }

  private List<Count> counts() {
    List<Count> counts = new ArrayList<>();
    int n = random.nextInt(9);
    for (int i = 0; i < n; i++) {
      counts.add(count());
    }
    return counts;
  }

  @Test
  void countsAndDifferences() {
    for (int run = 0; run < 5000; run++) {
      Count one = count();
      check(one.wilson(), one);
      Difference difference = new Difference(one, count());
      check(difference.value(), difference);
      check(difference.interval(), difference);
      check(difference.chance(), difference);
    }
  }

  @Test
  void spreadsAndTrends() {
    for (int run = 0; run < 400; run++) {
      List<Count> counts = counts();
      AdjustedRates rates = AdjustedRates.of(counts);
      counts.forEach(c -> check(rates.of(c), counts));
      check(rates.highest(counts), counts);
      check(Trend.of(counts), counts);
      check(BootstrapShare.of(new Bootstrap(run, 20), counts), counts);
    }
  }

  @Test
  void waits() {
    for (int run = 0; run < 2000; run++) {
      List<CensoredTime> first = waitsUpTo(random.nextInt(12));
      KaplanMeier curve = KaplanMeier.of(first);
      check(curve, first);
      check(curve.median(), first);
      curve.steps().forEach(step -> check(step.band(), first));
    }
  }

  private List<CensoredTime> waitsUpTo(int n) {
    List<CensoredTime> waits = new ArrayList<>();
    int ending = random.nextInt(4);
    for (int i = 0; i < n; i++) {
      waits.add(new CensoredTime(random.nextInt(7), random.nextInt(3) < ending));
    }
    return waits;
  }

  @Test
  void forecasts() {
    for (int run = 0; run < 2000; run++) {
      List<Forecast> forecasts = new ArrayList<>();
      int n = random.nextInt(12);
      for (int i = 0; i < n; i++) {
        double p = random.nextInt(3) == 0 ? random.nextInt(2) : random.nextDouble();
        forecasts.add(new Forecast(p, random.nextBoolean()));
      }
      Calibration.of(forecasts, 1 + random.nextInt(20))
          .ifPresent(
              c -> {
                check(c, forecasts);
                check(c.skill(), forecasts);
              });
    }
  }
}
