package twostrides.chart;

import java.util.Objects;
import java.util.function.Supplier;

/**
 * A finished picture: an SVG document for the page and a way to the PNG.
 *
 * @param alternative title and description in words, for those who do not see it
 * @param svg one {@code <svg>} element with a view box and the same words, ready to stand inside an
 *     HTML page or alone; it has no prolog, no fixed size and refers to nothing outside itself
 * @param width width of the view box, in pixels at scale 1
 * @param height height of the view box, in pixels at scale 1
 * @param png draws the same picture as a PNG file of twice the width and height, on each call anew
 */
public record Picture(String alternative, String svg, int width, int height, Supplier<byte[]> png) {

  /** Rejects what a page could not inline. */
  public Picture {
    Objects.requireNonNull(png, "png");
    if (!svg.startsWith("<svg")) {
      throw new IllegalArgumentException("a picture's text begins with <svg");
    }
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("a picture has a size, not " + width + " by " + height);
    }
  }
}
