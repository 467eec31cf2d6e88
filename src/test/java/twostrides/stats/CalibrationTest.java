package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Forecasts and what came of them, against published scores. */
class CalibrationTest {

  private static Calibration of(List<Forecast> forecasts, int bins) {
    return Calibration.of(forecasts, bins).orElseThrow();
  }

  /** Validation: the worked single values of the Brier score's article at en-academic.com. */
  @ParameterizedTest
  @CsvSource({"0.7, true, 0.09", "0.3, true, 0.49", "0.5, true, 0.25", "0.5, false, 0.25"})
  void singleForecastsAreThePublishedOnes(double p, boolean happened, double brier) {
    assertEquals(brier, of(List.of(new Forecast(p, happened)), 10).brier(), 1e-15);
  }

  /**
   * Validation: Brier 1950, Monthly Weather Review 78:1, table 1: ten forecasts of rain, P = 0.19
   * (the table from memory). Over two classes his score is twice the binary one.
   */
  @Test
  void brierOf1950IsThePublishedOne() {
    double[] rain = {.7, .9, .8, .4, .2, 0, 0, 0, 0, .1};
    List<List<Double>> probabilities = new ArrayList<>();
    List<Integer> came = List.of(1, 0, 0, 0, 1, 1, 1, 1, 1, 1);
    List<Forecast> binary = new ArrayList<>();
    for (int i = 0; i < rain.length; i++) {
      probabilities.add(List.of(rain[i], 1 - rain[i]));
      binary.add(new Forecast(rain[i], came.get(i) == 0));
    }
    assertEquals(.19, Calibration.brier1950(probabilities, came).orElseThrow(), 1e-12);
    assertEquals(.095, of(binary, 5).brier(), 1e-12);
    assertEquals(OptionalDouble.empty(), Calibration.brier1950(List.of(), List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> Calibration.brier1950(List.of(List.of(1.0)), List.of(1)));
  }

  /**
   * Murphy's parts by hand (ours, no publication): each bin holds one probability, so his three
   * terms suffice: .0029167 - .1179167 + .25 = .135.
   */
  @Test
  void murphysPartsAddUp() {
    double[] stated = {.1, .3, .5, .7, .9};
    int[] happened = {1, 5, 4, 11, 19};
    int[] trials = {20, 15, 10, 15, 20};
    List<Forecast> forecasts = new ArrayList<>();
    for (int k = 0; k < stated.length; k++) {
      for (int i = 0; i < trials[k]; i++) {
        forecasts.add(new Forecast(stated[k], i < happened[k]));
      }
    }
    Calibration c = of(forecasts, 5);
    assertEquals(.135, c.brier(), 1e-12);
    assertEquals(.00291667, c.parts().reliability(), 5e-9);
    assertEquals(.11791667, c.parts().resolution(), 5e-9);
    assertEquals(.25, c.parts().uncertainty(), 1e-12);
    assertEquals(0, c.parts().withinVariance(), 1e-12);
    assertEquals(0, c.parts().withinCovariance(), 1e-12);
    assertEquals(1 - .135 / .25, c.skill().orElseThrow(), 1e-12);
    for (int k = 0; k < stated.length; k++) {
      assertEquals(new Count(happened[k], trials[k]), c.bins().get(k).observed());
      assertEquals(stated[k], c.bins().get(k).meanForecast().orElseThrow(), 1e-12);
    }
  }

  /** Stephenson, Coelho and Jolliffe 2008: with the two terms inside bins the sum is exact. */
  @Test
  void partsAddUpWhateverTheForecasts() {
    SplittableRandom random = new SplittableRandom(4);
    for (int run = 0; run < 300; run++) {
      List<Forecast> forecasts = new ArrayList<>();
      int n = 1 + random.nextInt(60);
      for (int i = 0; i < n; i++) {
        double p = random.nextDouble();
        forecasts.add(new Forecast(p, random.nextDouble() < p));
      }
      for (int bins = 1; bins <= 12; bins++) {
        Calibration c = of(forecasts, bins);
        assertEquals(c.brier(), c.parts().sum(), 1e-12);
        assertEquals(n, c.bins().stream().mapToInt(b -> b.observed().trials()).sum());
      }
    }
  }

  @Test
  void edgesBelongToTheNextBinAndOneToTheLast() {
    List<Forecast> forecasts =
        List.of(
            new Forecast(0, false),
            new Forecast(.25, false),
            new Forecast(.5, true),
            new Forecast(1, true));
    Calibration c = of(forecasts, 4);
    assertEquals(
        List.of(new Count(0, 1), new Count(0, 1), new Count(1, 1), new Count(1, 1)),
        c.bins().stream().map(Calibration.Bin::observed).toList());
    assertEquals(OptionalDouble.empty(), of(forecasts, 100).bins().get(1).meanForecast());
  }

  @Test
  void logScoreSaysWhenItIsInfinite() {
    Calibration half = of(List.of(new Forecast(.5, true), new Forecast(.5, false)), 2);
    assertEquals(Math.log(2), half.logScore().orElseThrow(), 1e-15);
    List<Forecast> wrong =
        List.of(new Forecast(0, true), new Forecast(1, false), new Forecast(.5, true));
    Calibration ruledOut = of(wrong, 2);
    assertEquals(OptionalDouble.empty(), ruledOut.logScore());
    assertEquals(2, ruledOut.ruledOut());
    assertEquals(0, of(List.of(new Forecast(1, true)), 2).logScore().orElseThrow());
  }

  @Test
  void whereAllComeOutAlikeThereIsNoSkill() {
    Calibration c = of(Collections.nCopies(3, new Forecast(.8, true)), 10);
    assertEquals(OptionalDouble.empty(), c.skill());
    assertEquals(Optional.empty(), Calibration.of(List.of(), 10));
    assertThrows(IllegalArgumentException.class, () -> Calibration.of(List.of(), 0));
  }

  /** Honest forecasts have reliability near 0; the observed shares lie about their means. */
  @Test
  void honestForecastsAreReliable() {
    SplittableRandom random = new SplittableRandom(6);
    List<Forecast> forecasts = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      double p = random.nextDouble();
      forecasts.add(new Forecast(p, random.nextDouble() < p));
    }
    Calibration c = of(forecasts, 10);
    assertTrue(c.parts().reliability() < 5e-4);
    assertEquals(1.0 / 6, c.brier(), .004); // integral of p (1 - p)
    assertEquals(1.0 / 3, c.skill().orElseThrow(), .02);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-.1, 1.1, Double.NaN})
  void impossibleProbabilitiesAreRejected(double p) {
    assertThrows(IllegalArgumentException.class, () -> new Forecast(p, true));
  }
}
