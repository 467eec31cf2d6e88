package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.stats.KaplanMeier.Band;

/**
 * Waits against the remission times that textbooks use: Freireich et al. 1963, Blood 21:699, weeks
 * under 6-MP and placebo (here as seconds; the unit cancels).
 */
class SurvivalTest {

  private static final List<CensoredTime> TREATED =
      waits("6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+");

  private static final List<CensoredTime> PLACEBO =
      waits("1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23");

  private static List<CensoredTime> waits(String text) {
    return Arrays.stream(text.split(" ", -1))
        .map(w -> new CensoredTime(Double.parseDouble(w.replace("+", "")), !w.endsWith("+")))
        .toList();
  }

  /**
   * Validation: Cox and Oakes 1984, Analysis of Survival Data; Kleinbaum and Klein, Survival
   * Analysis, chapter 2 (widely printed, from memory): curve with Greenwood's errors.
   */
  @Test
  void curveIsThePublishedOne() {
    KaplanMeier curve = KaplanMeier.of(TREATED);
    double[] seconds = {6, 7, 10, 13, 16, 22, 23};
    int[] atRisk = {21, 17, 15, 12, 11, 7, 6};
    double[] survival = {.857, .807, .753, .690, .627, .538, .448};
    double[] errors = {.0764, .0869, .0963, .1068, .1141, .1282, .1346};
    assertEquals(seconds.length, curve.steps().size());
    for (int i = 0; i < seconds.length; i++) {
      KaplanMeier.Step step = curve.steps().get(i);
      assertEquals(seconds[i], step.seconds());
      assertEquals(atRisk[i], step.atRisk());
      assertEquals(survival[i], step.survival(), 5.1e-4);
      assertEquals(errors[i], step.standardError().orElseThrow(), 5.1e-5);
      Interval plain = step.band(Band.PLAIN).orElseThrow();
      assertEquals(Math.max(0, survival[i] - 1.96 * errors[i]), plain.low(), 1e-3);
      assertEquals(Math.min(1, survival[i] + 1.96 * errors[i]), plain.high(), 1e-3);
    }
    assertEquals(3, curve.steps().get(0).events());
  }

  /**
   * Validation, from memory: R package survival on these data (MASS, gehan) prints medians 23 (16
   * to not reached) and 8 (4 to 12) with its band on log S, and means 23.29 (error 2.83, to 35) and
   * 8.67 (error 1.38).
   */
  @Test
  void mediansAndMeansAreThePublishedOnes() {
    KaplanMeier treated = KaplanMeier.of(TREATED);
    KaplanMeier placebo = KaplanMeier.of(PLACEBO);
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(
        new KaplanMeier.Median(OptionalDouble.of(23), OptionalDouble.of(16), none),
        treated.median(Band.LOG));
    assertEquals(
        new KaplanMeier.Median(OptionalDouble.of(8), OptionalDouble.of(4), OptionalDouble.of(12)),
        placebo.median(Band.LOG));
    KaplanMeier.RestrictedMean mean = treated.restrictedMean(35).orElseThrow();
    assertEquals(23.29, mean.seconds(), 0.005);
    assertEquals(2.83, mean.standardError(), 0.005);
    KaplanMeier.RestrictedMean all = placebo.restrictedMean(23).orElseThrow();
    assertEquals(8.67, all.seconds(), 0.005);
    assertEquals(1.38, all.standardError(), 0.005);
    assertEquals(all.seconds(), placebo.restrictedMean(60).orElseThrow().seconds(), 1e-12);
  }

  /**
   * Validation: the same textbooks, from memory: observed 9 and 21, expected 19.25 and 10.75,
   * chi-square 16.79.
   */
  @Test
  void groupsDifferAsPublished() {
    LogRank test = LogRank.of(TREATED, PLACEBO).orElseThrow();
    assertEquals(9, test.firstEvents());
    assertEquals(21, test.secondEvents());
    assertEquals(19.25, test.firstExpected(), 0.005);
    assertEquals(10.75, test.secondExpected(), 0.005);
    assertEquals(16.79, test.chiSquare(), 0.005);
    assertEquals(4.17e-5, test.p(), 1e-7);
    LogRank back = LogRank.of(PLACEBO, TREATED).orElseThrow();
    assertEquals(test.chiSquare(), back.chiSquare(), 1e-10);
  }

  /** All watched to the end: the curve is a share and its error is the binomial one. */
  @Test
  void withoutCensoringItIsAShare() {
    KaplanMeier curve = KaplanMeier.of(PLACEBO);
    for (KaplanMeier.Step step : curve.steps()) {
      double left = PLACEBO.stream().filter(w -> w.seconds() > step.seconds()).count();
      double share = left / PLACEBO.size();
      assertEquals(share, step.survival(), 1e-14);
      if (left > 0) {
        double error = Math.sqrt(share * (1 - share) / PLACEBO.size());
        assertEquals(error, step.standardError().orElseThrow(), 1e-14);
      }
    }
    KaplanMeier.Step last = curve.steps().get(curve.steps().size() - 1);
    assertEquals(0, last.survival());
    assertEquals(OptionalDouble.empty(), last.standardError());
    assertEquals(Optional.empty(), last.band(Band.LOG_LOG));
    assertEquals(OptionalDouble.of(0), curve.survival(99));
    double mean = PLACEBO.stream().mapToDouble(CensoredTime::seconds).average().orElseThrow();
    assertEquals(mean, curve.restrictedMean(23).orElseThrow().seconds(), 1e-12);
  }

  @Test
  void whoeverStopsBeingWatchedAtAnEventWasStillAtRisk() {
    KaplanMeier curve = KaplanMeier.of(waits("4+ 4 4+ 9"));
    assertEquals(4, curve.steps().get(0).atRisk());
    assertEquals(.75, curve.steps().get(0).survival());
    assertEquals(1, curve.steps().get(1).atRisk());
    assertEquals(OptionalDouble.of(1), curve.survival(3.99));
    assertEquals(OptionalDouble.of(.75), curve.survival(4));
  }

  @Test
  void whereNothingEndsNothingIsReached() {
    KaplanMeier curve = KaplanMeier.of(waits("3+ 5+ 8+"));
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(List.of(), curve.steps());
    assertEquals(new KaplanMeier.Median(none, none, none), curve.median(Band.LOG_LOG));
    assertEquals(OptionalDouble.of(1), curve.survival(8));
    assertEquals(none, curve.survival(8.1));
    assertEquals(Optional.empty(), curve.restrictedMean(9));
    assertEquals(new Range(8, 8), curve.restrictedMean(8).orElseThrow().interval());
    assertEquals(Optional.empty(), LogRank.of(waits("3+ 5+"), waits("8+")));
  }

  @Test
  void oneWaitAndNoWait() {
    KaplanMeier one = KaplanMeier.of(waits("7"));
    assertEquals(OptionalDouble.of(7), one.median(Band.LOG_LOG).seconds());
    assertEquals(OptionalDouble.empty(), one.median(Band.LOG_LOG).high());
    assertEquals(7, one.restrictedMean(20).orElseThrow().seconds());
    KaplanMeier none = KaplanMeier.of(List.of());
    assertEquals(OptionalDouble.empty(), none.survival(0));
    assertEquals(Optional.empty(), none.restrictedMean(5));
    assertEquals(Optional.empty(), LogRank.of(waits("7"), List.of()));
  }

  @Test
  void aMedianAtExactlyHalfIsReached() {
    assertEquals(
        OptionalDouble.of(3), KaplanMeier.of(waits("1 2 3 4 5 6")).median(Band.PLAIN).seconds());
  }

  @Test
  void orderDoesNotMatterAndBandsHoldTheCurve() {
    SplittableRandom random = new SplittableRandom(3);
    for (int run = 0; run < 200; run++) {
      List<CensoredTime> waits = new ArrayList<>();
      int n = 1 + random.nextInt(30);
      for (int i = 0; i < n; i++) {
        waits.add(new CensoredTime(random.nextInt(15), random.nextInt(3) > 0));
      }
      KaplanMeier curve = KaplanMeier.of(waits);
      Collections.reverse(waits);
      assertEquals(curve, KaplanMeier.of(waits));
      double before = 1;
      for (KaplanMeier.Step step : curve.steps()) {
        assertTrue(step.survival() < before);
        before = step.survival();
        for (Band band : Band.values()) {
          step.band(band)
              .ifPresent(
                  i -> assertTrue(i.low() <= step.survival() && step.survival() <= i.high()));
        }
      }
    }
  }

  /** Two groups of one kind: p below 0.05 about one time in twenty. */
  @Test
  void alikeGroupsSeldomDiffer() {
    SplittableRandom random = new SplittableRandom(8);
    int called = 0;
    for (int run = 0; run < 1000; run++) {
      List<List<CensoredTime>> pair = List.of(new ArrayList<>(), new ArrayList<>());
      for (int i = 0; i < 60; i++) {
        double end = -10 * Math.log(1 - random.nextDouble());
        double watched = 20 * random.nextDouble();
        pair.get(i % 2).add(new CensoredTime(Math.min(end, watched), end <= watched));
      }
      called += LogRank.of(pair.get(0), pair.get(1)).orElseThrow().p() < 0.05 ? 1 : 0;
    }
    assertEquals(50, called, 28); // four standard errors of a binomial count
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "-0.0, 1"})
  void negativeZeroIsZero(double seconds, int events) {
    KaplanMeier curve =
        KaplanMeier.of(List.of(new CensoredTime(seconds, true), new CensoredTime(0, false)));
    assertEquals(events, curve.steps().size());
    assertEquals(2, curve.steps().get(0).atRisk());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void impossibleWaitsAreRejected(double seconds) {
    assertThrows(IllegalArgumentException.class, () -> new CensoredTime(seconds, true));
  }
}
