package twostrides.race;

import twostrides.rink.Rink;

/**
 * How long a carrier needs to bring the puck to the red line: a sprint straight up ice from the
 * speed he has, with the puck.
 */
public final class ToCenter {
  private ToCenter() {}

  /**
   * Speed up ice of a carrier whose speed no sheet tells, m/s: assumed, 3 to 7 with 5 most likely.
   */
  public static final double USUAL_SPEED = 5;

  /**
   * Seconds to the red line.
   *
   * @param rink the rink
   * @param x place of the carrier, metres from center ice, his frame
   * @param speed his speed up ice, m/s
   * @param legs his legs
   * @return seconds, 0 when the puck already touches the line
   */
  public static double seconds(Rink rink, double x, double speed, SkaterSettings legs) {
    double metres = rink.shortOfCenter(x);
    if (metres <= 0) {
      return 0;
    }
    double top = legs.carryingSpeed();
    double vx = Math.min(speed, top);
    // Already under way with the puck: no reaction time, no stick ahead of it.
    return Skater.timeTo(metres, 0, vx, 0, top, legs.tau(), 0, 0);
  }
}
