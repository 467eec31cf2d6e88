package twostrides.chart;

import java.awt.BasicStroke;

/** Pens whose ends and corners are those an SVG has unasked, so that the text stays short. */
final class Strokes {

  /** Default of {@code stroke-miterlimit}, source: SVG 1.1 (second edition), 11.4. */
  private static final float MITER_LIMIT = 4;

  private Strokes() {}

  /**
   * An even pen without caps.
   *
   * @param width pixels at scale 1
   */
  static BasicStroke even(double width) {
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, MITER_LIMIT);
  }
}
