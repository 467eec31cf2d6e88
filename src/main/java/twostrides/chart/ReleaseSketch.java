package twostrides.chart;

import java.util.List;

/**
 * What a drawing of one release shows. Places are metres, frame of the team that releases.
 *
 * @param x place of the release, metres from center ice
 * @param y place of the release, metres from the long axis
 * @param gap how far short of center, our own words
 * @param spread what the band shows, our own words
 * @param skaters skaters whose places are known
 * @param band the spread of the puck across the rink, from the release up ice
 * @param reach how far up ice the puck gets
 */
public record ReleaseSketch(
    double x,
    double y,
    String gap,
    String spread,
    List<SketchedSkater> skaters,
    List<Row> band,
    Reach reach) {

  /** Copies the lists. */
  public ReleaseSketch {
    skaters = List.copyOf(skaters);
    band = List.copyOf(band);
  }

  /**
   * A skater at the release.
   *
   * @param own whether he plays for the team that releases
   * @param x metres from center ice
   * @param y metres from the long axis
   * @param vx metres a second
   * @param vy metres a second
   */
  public record SketchedSkater(boolean own, double x, double y, double vx, double vy) {}

  /**
   * The band at one place.
   *
   * @param x metres from center ice
   * @param low its right edge seen up ice, metres from the long axis
   * @param middle the middle draw
   * @param high its left edge
   */
  public record Row(double x, double low, double middle, double high) {}

  /**
   * How far up ice, metres from center ice.
   *
   * @param low 10 % of the draws get no farther
   * @param high 90 % of them
   */
  public record Reach(double low, double high) {}
}
