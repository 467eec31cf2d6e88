package twostrides.findings;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Count;

/**
 * The one of several that most likely has the highest rate, however many cases each has: a maximum
 * of plain shares would be whoever has few cases and luck.
 *
 * @param one the one
 * @param count its count
 * @param chance how likely its rate is the highest, 0 to 1
 * @param of how many were compared, all with ten cases or more
 */
public record Likeliest<T>(T one, Count count, double chance, int of) {

  /** From this chance on it is more likely this one than all others together. */
  private static final double EVEN = 0.5;

  /**
   * The one of those with ten cases or more; the first of equals.
   *
   * @param all those that the rates were made from, or some of them
   * @param count what is counted of each
   * @param rates the adjusted rates
   * @return empty where fewer than two have ten cases, where there are too few to adjust by, and
   *     where nothing happened
   */
  public static <T> Optional<Likeliest<T>> of(
      List<T> all, Function<T, Count> count, AdjustedRates rates) {
    List<T> enough = all.stream().filter(t -> !count.apply(t).tooFew()).toList();
    List<Count> counts = enough.stream().map(count).toList();
    List<Double> chances = counts.size() < 2 ? List.of() : rates.highest(counts);
    int best = -1;
    for (int i = 0; i < chances.size(); i++) {
      if (counts.get(i).successes() > 0 && (best < 0 || chances.get(i) > chances.get(best))) {
        best = i;
      }
    }
    return best < 0
        ? Optional.empty()
        : Optional.of(
            new Likeliest<>(enough.get(best), counts.get(best), chances.get(best), enough.size()));
  }

  /** Whether it is more likely this one than all others together. */
  public boolean clear() {
    return chance >= EVEN;
  }
}
