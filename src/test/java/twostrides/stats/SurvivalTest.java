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
      // exp(-exp(log(-log S) -+ 1.96 times its error)), the error of log S over |log S|.
      double logLog = Math.log(-Math.log(survival[i]));
      double reach = 1.96 * errors[i] / survival[i] / Math.abs(Math.log(survival[i]));
      Interval band = step.band().orElseThrow();
      assertEquals(Math.exp(-Math.exp(logLog + reach)), band.low(), 2e-3);
      assertEquals(Math.exp(-Math.exp(logLog - reach)), band.high(), 2e-3);
    }
    assertEquals(3, curve.steps().get(0).events());
  }

  /**
   * Validation, from memory: the band on log(-log S) of SAS (PROC LIFETEST) gives medians 23 (13 to
   * not reached) and 8 (4 to 11).
   */
  @Test
  void mediansAreThePublishedOnes() {
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(
        new KaplanMeier.Median(OptionalDouble.of(23), OptionalDouble.of(13), none),
        KaplanMeier.of(TREATED).median());
    assertEquals(
        new KaplanMeier.Median(OptionalDouble.of(8), OptionalDouble.of(4), OptionalDouble.of(11)),
        KaplanMeier.of(PLACEBO).median());
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
    assertEquals(Optional.empty(), last.band());
  }

  @Test
  void whoeverStopsBeingWatchedAtAnEventWasStillAtRisk() {
    KaplanMeier curve = KaplanMeier.of(waits("4+ 4 4+ 9"));
    assertEquals(4, curve.steps().get(0).atRisk());
    assertEquals(.75, curve.steps().get(0).survival());
    assertEquals(1, curve.steps().get(1).atRisk());
    assertEquals(4, curve.steps().get(0).seconds());
  }

  @Test
  void whereNothingEndsNothingIsReached() {
    KaplanMeier curve = KaplanMeier.of(waits("3+ 5+ 8+"));
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(List.of(), curve.steps());
    assertEquals(new KaplanMeier.Median(none, none, none), curve.median());
    assertEquals(3, curve.waits());
  }

  @Test
  void oneWaitAndNoWait() {
    KaplanMeier one = KaplanMeier.of(waits("7"));
    assertEquals(
        new KaplanMeier.Median(OptionalDouble.of(7), OptionalDouble.of(7), OptionalDouble.empty()),
        one.median());
    KaplanMeier none = KaplanMeier.of(List.of());
    assertEquals(new KaplanMeier(0, List.of()), none);
    assertEquals(OptionalDouble.empty(), none.median().seconds());
  }

  @Test
  void aMedianAtExactlyHalfIsReached() {
    assertEquals(OptionalDouble.of(3), KaplanMeier.of(waits("1 2 3 4 5 6")).median().seconds());
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
        step.band()
            .ifPresent(i -> assertTrue(i.low() <= step.survival() && step.survival() <= i.high()));
      }
    }
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
