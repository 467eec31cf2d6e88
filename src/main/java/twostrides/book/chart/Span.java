package twostrides.book.chart;

/**
 * From here to there, in the unit of the picture.
 *
 * @param low lower end
 * @param high upper end
 */
public record Span(double low, double high) {

  /**
   * Rejects ends out of order.
   *
   * @throws IllegalArgumentException when the upper end is not at or above the lower one
   */
  public Span {
    if (!(low <= high)) {
      throw new IllegalArgumentException("a span needs low <= high, not " + low + ", " + high);
    }
  }
}
