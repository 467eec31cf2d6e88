package twostrides.race;

/**
 * How a puck is sent: the spread from which its unknown speed, direction and loft are drawn.
 *
 * <p>No measurement of clearances or passes in games could be read: all speeds are from memory,
 * graded low, for elite men; {@link #forLevel} scales them.
 *
 * @param slowest least release speed, m/s
 * @param usual most likely release speed, m/s
 * @param fastest greatest release speed, m/s
 * @param spread half of the width over which a target across the far goal line is drawn, metres;
 *     the target of a pass is not drawn
 * @param lofted share of releases that leave the ice, 0 to 1
 */
public record Delivery(double slowest, double usual, double fastest, double spread, double lofted) {

  /** Sent on with no receiver: hard clears and rims 18 to 28 m/s, soft dumps from 8 (memory). */
  public static final Delivery SENT = new Delivery(8, 16, 28, 11, 0.2);

  /** A pass that was not received: ordinary 10 to 16, hard 15 to 22 m/s (memory). */
  public static final Delivery MISSED_PASS = new Delivery(8, 14, 22, 4, 0.1);

  /** Least and greatest loft of a flip, radians: 15 to 40 degrees (memory: 25 to 45). */
  static final double LEAST_LOFT = Math.toRadians(15);

  static final double MOST_LOFT = Math.toRadians(40);

  /** Rejects speeds that do not ascend. */
  public Delivery {
    if (!(0 < slowest && slowest <= usual && usual <= fastest && fastest <= 60)) {
      throw new IllegalArgumentException(
          "release speeds ascend from above 0 to 60 m/s, not "
              + slowest
              + ", "
              + usual
              + ", "
              + fastest);
    }
    if (!(spread >= 0) || !(lofted >= 0 && lofted <= 1)) {
      throw new IllegalArgumentException(
          "a spread is 0 m or more and a share from 0 to 1, not " + spread + " and " + lofted);
    }
  }

  /**
   * The same at a level of play. Women 0.8 (slap shots 23 to 26 against 29 m/s), juniors 0.9, U15
   * 0.75, U13 0.6 of elite men: from memory, graded low.
   *
   * @param level the level
   */
  public Delivery forLevel(SkaterLevel level) {
    double share =
        switch (level) {
          case ELITE_MEN -> 1;
          case ELITE_WOMEN -> 0.8;
          case JUNIOR -> 0.9;
          case YOUTH_U15 -> 0.75;
          case YOUTH_U13 -> 0.6;
        };
    return new Delivery(slowest * share, usual * share, fastest * share, spread, lofted);
  }

  /**
   * A release of one known speed.
   *
   * @param speed m/s
   */
  public Delivery atSpeed(double speed) {
    return new Delivery(speed, speed, speed, spread, lofted);
  }
}
