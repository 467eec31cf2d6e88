package twostrides.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The share still waiting after so many seconds, where some were not watched to the end.
 *
 * <p>S(t) is the product over event times up to t of (n - d) / n, with n at risk just before and d
 * events. Whoever stops being watched at the same instant as an event still counts as at risk
 * there. Source: Kaplan and Meier 1958, JASA 53:457.
 *
 * @param waits how many waits there are
 * @param steps one for each time with an event, rising; empty where nothing ended
 */
public record KaplanMeier(int waits, List<Step> steps) {

  /** What counts as half in the search for the median: products of fractions round. */
  private static final double HALF = 0.5 + 1e-9;

  /** Copies the steps. */
  public KaplanMeier {
    steps = List.copyOf(steps);
  }

  /**
   * A fall of the curve.
   *
   * @param seconds when
   * @param atRisk how many were still waiting and watched just before
   * @param events how many ended then, 1 or more
   * @param survival the share still waiting from then on, 0 to 1
   * @param standardError Greenwood's, S sqrt(sum d / (n (n - d))); empty once the curve is at 0,
   *     where the formula has no value. Source: Greenwood 1926, the natural duration of cancer
   */
  public record Step(
      double seconds, int atRisk, int events, double survival, OptionalDouble standardError) {

    /**
     * The 95 % band from here to the next step, on log(-log S), which stays within 0 to 1; it holds
     * at one time, not for all at once. Empty once the curve is at 0. Source: Kalbfleisch and
     * Prentice 1980.
     */
    public Optional<Interval> band() {
      if (standardError.isEmpty()) {
        return Optional.empty();
      }
      double log = Math.log(survival);
      double factor = Math.exp(Count.Z95 * standardError.getAsDouble() / survival / log);
      return Optional.of(new Interval(Math.exp(log / factor), Math.exp(log * factor)));
    }
  }

  /**
   * When half have ended.
   *
   * @param seconds first time at which the curve is at half or below; empty: not reached
   * @param low first time at which the band's lower edge is; empty: not reached
   * @param high first time at which the band's upper edge is; empty: not reached
   */
  public record Median(OptionalDouble seconds, OptionalDouble low, OptionalDouble high) {}

  /** The curve of these waits; their order does not matter. */
  public static KaplanMeier of(List<CensoredTime> waits) {
    List<CensoredTime> sorted =
        waits.stream().sorted(Comparator.comparingDouble(CensoredTime::seconds)).toList();
    List<Step> steps = new ArrayList<>();
    double survival = 1;
    double greenwood = 0;
    int i = 0;
    while (i < sorted.size()) {
      double seconds = sorted.get(i).seconds();
      int atRisk = sorted.size() - i;
      int events = 0;
      while (i < sorted.size() && sorted.get(i).seconds() <= seconds) {
        events += sorted.get(i).ended() ? 1 : 0;
        i++;
      }
      if (events > 0) {
        int left = atRisk - events;
        survival *= (double) left / atRisk;
        greenwood += left == 0 ? 0 : (double) events / atRisk / left;
        OptionalDouble error =
            left == 0 ? OptionalDouble.empty() : OptionalDouble.of(survival * Math.sqrt(greenwood));
        steps.add(new Step(seconds, atRisk, events, survival, error));
      }
    }
    return new KaplanMeier(sorted.size(), steps);
  }

  /**
   * The median with the interval that the band gives. Source: Brookmeyer and Crowley 1982,
   * Biometrics 38:29.
   */
  public Median median() {
    OptionalDouble at = OptionalDouble.empty();
    OptionalDouble low = OptionalDouble.empty();
    OptionalDouble high = OptionalDouble.empty();
    for (Step step : steps) {
      OptionalDouble now = OptionalDouble.of(step.seconds());
      Optional<Interval> band = step.band();
      at = at.isEmpty() && step.survival() <= HALF ? now : at;
      // At 0 there is no band; the curve itself then bounds the lower end.
      double lower = band.map(Interval::low).orElse(step.survival());
      low = low.isEmpty() && lower <= HALF ? now : low;
      high = high.isEmpty() && band.isPresent() && band.get().high() <= HALF ? now : high;
    }
    return new Median(at, low, high);
  }
}
