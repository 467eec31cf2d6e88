package twostrides.chart;

import java.awt.Color;

/**
 * The colours of a picture on its white card.
 *
 * @param ink text, outlines and axes
 * @param quiet second-rank text: notes, tick labels
 * @param grid grid lines, separators and the card's edge
 * @param bar the part of a bar that did not lead to an own-zone restart
 * @param restart the part of a bar that led to one; always drawn with a hatch as well
 */
public record Theme(Color ink, Color quiet, Color grid, Color bar, Color restart) {

  /**
   * The colours of the book. Restarts are vermillion, source: Okabe and Ito, "Color Universal
   * Design" (2002, revised 2008), a palette told apart with every common kind of colour vision. The
   * other colours are assumed. The relative luminance (WCAG 2.1) of the two parts of a bar is 0.22
   * and 0.63, so that they differ in print without colour too.
   */
  public static final Theme BOOK =
      new Theme(
          new Color(0x1F2A33),
          new Color(0x55616B),
          new Color(0xDDE2E6),
          new Color(0xBFD3E3),
          new Color(0xD55E00));
}
