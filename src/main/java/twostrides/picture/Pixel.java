package twostrides.picture;

/**
 * A point of a picture.
 *
 * @param u picture elements to the right of its left edge
 * @param v picture elements below its upper edge
 */
public record Pixel(double u, double v) {

  /**
   * Rejects what is no point.
   *
   * @throws IllegalArgumentException for numbers that are not finite
   */
  public Pixel {
    if (!Double.isFinite(u) || !Double.isFinite(v)) {
      throw new IllegalArgumentException("a point needs two finite numbers, not " + u + ", " + v);
    }
  }
}
