package twostrides.book.chart;

import java.util.Optional;
import twostrides.stats.Count;

/**
 * What values are compared with: one line with a name.
 *
 * @param label for example "team"; any text
 * @param value in the unit of the picture; a share is 0 to 1
 */
public record Reference(String label, double value) {

  /**
   * A share; empty where there are too few to say one.
   *
   * @param label any text
   * @param count so many of so many
   */
  public static Optional<Reference> of(String label, Count count) {
    return count.tooFew()
        ? Optional.empty()
        : Optional.of(new Reference(label, count.share().orElseThrow()));
  }
}
