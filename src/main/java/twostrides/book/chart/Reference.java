package twostrides.book.chart;

import java.util.Optional;
import twostrides.stats.Count;

/**
 * What values are compared with: one line with a name.
 *
 * @param label for example "team"; any text
 * @param value in the unit of the picture; a share is 0 to 1
 * @param from the cases that it comes from, for example "96 of 3,210"; any text
 */
public record Reference(String label, double value, String from) {

  /** For example "team 6 %, 58 of 1,014"; the value as the picture writes it. */
  String said(String written) {
    return label + " " + written + ", " + from;
  }

  /**
   * A share; empty where there are too few to say one.
   *
   * @param label any text
   * @param count so many of so many
   */
  public static Optional<Reference> of(String label, Count count) {
    return count.tooFew()
        ? Optional.empty()
        : Optional.of(new Reference(label, count.share().orElseThrow(), Words.counted(count)));
  }
}
