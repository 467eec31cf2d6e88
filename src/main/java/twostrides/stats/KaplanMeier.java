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
 * @param lastSeconds the longest time watched, 0 without waits
 */
public record KaplanMeier(int waits, List<Step> steps, double lastSeconds) {

  /** What counts as half in the search for the median: products of fractions round. */
  private static final double HALF = 0.5 + 1e-9;

  /** Copies the steps. */
  public KaplanMeier {
    steps = List.copyOf(steps);
  }

  /** How a 95 % band about the curve is made; each holds at one time, not for all at once. */
  public enum Band {
    /** On log(-log S): stays within 0 to 1. The one to use. Kalbfleisch and Prentice 1980. */
    LOG_LOG,
    /** On log S, cut at 1. */
    LOG,
    /** S plus or minus 1.96 standard errors, cut at 0 and 1, as textbooks print it. */
    PLAIN
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

    /** The band from here to the next step; empty once the curve is at 0. */
    public Optional<Interval> band(Band kind) {
      if (standardError.isEmpty()) {
        return Optional.empty();
      }
      double reach = Count.Z95 * standardError.getAsDouble();
      double logReach = reach / survival;
      double log = Math.log(survival);
      return Optional.of(
          switch (kind) {
            case PLAIN -> cut(survival - reach, survival + reach);
            case LOG -> cut(survival * Math.exp(-logReach), survival * Math.exp(logReach));
            case LOG_LOG ->
                cut(
                    Math.exp(log * Math.exp(-logReach / log)),
                    Math.exp(log * Math.exp(logReach / log)));
          });
    }

    private static Interval cut(double low, double high) {
      return new Interval(Math.max(0, low), Math.min(1, high));
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

  /**
   * The mean wait, each wait counted up to the horizon only.
   *
   * @param seconds area under the curve from 0 to the horizon
   * @param standardError by Greenwood's sums
   * @param interval 95 %, within 0 and the horizon
   */
  public record RestrictedMean(double seconds, double standardError, Range interval) {}

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
    double last = sorted.isEmpty() ? 0 : sorted.get(sorted.size() - 1).seconds();
    return new KaplanMeier(sorted.size(), steps, last);
  }

  /**
   * The share still waiting after so many seconds; at a step, after the fall. Empty without waits,
   * and later than the longest time watched unless the curve is at 0 by then.
   */
  public OptionalDouble survival(double seconds) {
    if (!reaches(seconds)) {
      return OptionalDouble.empty();
    }
    double survival = 1;
    for (Step step : steps) {
      if (step.seconds() <= seconds) {
        survival = step.survival();
      }
    }
    return OptionalDouble.of(survival);
  }

  private boolean reaches(double seconds) {
    boolean allEnded = !steps.isEmpty() && steps.get(steps.size() - 1).survival() == 0;
    return waits > 0 && seconds >= 0 && (seconds <= lastSeconds || allEnded);
  }

  /**
   * The median with the interval that the band gives. Source: Brookmeyer and Crowley 1982,
   * Biometrics 38:29.
   */
  public Median median(Band kind) {
    OptionalDouble at = OptionalDouble.empty();
    OptionalDouble low = OptionalDouble.empty();
    OptionalDouble high = OptionalDouble.empty();
    for (Step step : steps) {
      OptionalDouble now = OptionalDouble.of(step.seconds());
      Optional<Interval> band = step.band(kind);
      at = at.isEmpty() && step.survival() <= HALF ? now : at;
      // At 0 there is no band; the curve itself then bounds the lower end.
      double lower = band.map(Interval::low).orElse(step.survival());
      low = low.isEmpty() && lower <= HALF ? now : low;
      high = high.isEmpty() && band.isPresent() && band.get().high() <= HALF ? now : high;
    }
    return new Median(at, low, high);
  }

  /**
   * The mean wait to a horizon; empty where the curve does not reach so far. Variance: the sum over
   * steps of (area from the step to the horizon)² d / (n (n - d)). Source: Klein and Moeschberger
   * 2003, Survival Analysis, section 4.5 (from memory).
   *
   * @param horizon seconds, above 0
   */
  public Optional<RestrictedMean> restrictedMean(double horizon) {
    if (!(horizon > 0) || !reaches(horizon)) {
      return Optional.empty();
    }
    double area = 0;
    double variance = 0;
    double end = horizon;
    for (int i = steps.size() - 1; i >= 0; i--) {
      Step step = steps.get(i);
      if (step.seconds() < horizon) {
        area += step.survival() * (end - step.seconds());
        int left = step.atRisk() - step.events();
        variance += left == 0 ? 0 : area * area * step.events() / step.atRisk() / left;
        end = step.seconds();
      }
    }
    double mean = Math.min(horizon, area + end);
    double error = Math.sqrt(variance);
    double reach = Count.Z95 * error;
    Range interval = new Range(Math.max(0, mean - reach), Math.min(horizon, mean + reach));
    return Optional.of(new RestrictedMean(mean, error, interval));
  }
}
