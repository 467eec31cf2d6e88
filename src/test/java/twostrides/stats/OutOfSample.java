package twostrides.stats;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How well shares counted earlier say what is counted later: raw as they are, adjusted by those of
 * the group, and the group's one share for all. The error is the mean of (said - later share)² over
 * later trials; the chance in the later share is in all three alike.
 */
public final class OutOfSample {
  private double raw;
  private double adjusted;
  private double pooled;
  private int members;
  private int before;
  private int trials;

  /**
   * One group of members, counted twice. A member counts where it has trials both times; nobody
   * does in a group too small to adjust by.
   *
   * @param earlier what was counted first
   * @param later what was counted then, in the same order
   */
  public void add(List<Count> earlier, List<Count> later) {
    AdjustedRates rates = AdjustedRates.of(earlier);
    Count all = earlier.stream().reduce(new Count(0, 0), Count::plus);
    for (int i = 0; i < earlier.size(); i++) {
      Count first = earlier.get(i);
      Count then = later.get(i);
      Optional<AdjustedRate> rate = rates.of(first);
      if (first.trials() == 0 || then.trials() == 0 || rate.isEmpty()) {
        continue;
      }
      double share = then.share().orElseThrow();
      members++;
      before += first.trials();
      trials += then.trials();
      raw += then.trials() * square(first.share().orElseThrow() - share);
      adjusted += then.trials() * square(rate.get().share() - share);
      pooled += then.trials() * square(all.share().orElseThrow() - share);
    }
  }

  /** Whether anything was counted. */
  public boolean empty() {
    return trials == 0;
  }

  /** Mean square error of raw shares. */
  public double raw() {
    return raw / trials;
  }

  /** Mean square error of adjusted rates. */
  public double adjusted() {
    return adjusted / trials;
  }

  /** Mean square error of one share for the whole group. */
  public double pooled() {
    return pooled / trials;
  }

  /** The figures on a line. */
  public String line(String name) {
    return empty()
        ? name + ": nobody was counted twice"
        : String.format(
            Locale.ROOT,
            "%s: %d members, %d trials before, %d after; mean square error raw %.5f, adjusted %.5f,"
                + " one share for all %.5f",
            name,
            members,
            before,
            trials,
            raw(),
            adjusted(),
            pooled());
  }

  private static double square(double x) {
    return x * x;
  }
}
