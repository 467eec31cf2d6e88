package twostrides.race;

/** How soon someone can be at a place: what a path asks of a skater. */
@FunctionalInterface
public interface Reach {

  /**
   * Seconds after the puck's release at which the skater can be at a place; infinite when never.
   *
   * @param x metres from center ice
   * @param y metres from the long axis
   */
  double secondsTo(double x, double y);
}
