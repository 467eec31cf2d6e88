package twostrides.stats;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Chances that allow for how many were looked at: the smallest of n is multiplied by n, the next by
 * n - 1 and so on, none below the one before it. Whichever of them are true, calling those at most
 * 0.05 real is wrong somewhere in at most 5 % of such lists. Source: Holm 1979, Scandinavian
 * Journal of Statistics 6:65.
 */
public final class Holm {

  private Holm() {}

  /**
   * The allowed-for chances, in the same order.
   *
   * @param chances each 0 to 1: of what was seen, or more, if there is nothing
   */
  public static List<Double> allowing(List<Double> chances) {
    List<Double> allowed = new ArrayList<>(chances);
    int left = chances.size();
    double least = 0;
    for (int i :
        IntStream.range(0, left)
            .boxed()
            .sorted(Comparator.comparingDouble(chances::get))
            .toList()) {
      least = Math.min(1, Math.max(least, left-- * chances.get(i)));
      allowed.set(i, least);
    }
    return List.copyOf(allowed);
  }
}
