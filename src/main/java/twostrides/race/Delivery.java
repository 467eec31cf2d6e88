package twostrides.race;

import twostrides.stats.Count;

/**
 * How a puck is sent: the spread from which its unknown speed, direction and loft are simulated.
 *
 * <p>The speeds are those of pucks let go in the own half of two men's games (tracked, December
 * 2023), by where the puck was 0.25 to 1.2 s later; {@link #forLevel} scales them.
 *
 * @param slowest least release speed, m/s
 * @param usual most likely release speed, m/s
 * @param fastest greatest release speed, m/s
 * @param spread half of the width over which a target across the far goal line is simulated,
 *     metres; the target of a pass is not simulated
 * @param lofted share of releases that leave the ice, 0 to 1
 * @param missedPass whether it is a pass that is not received: {@link #headStart}
 */
public record Delivery(
    double slowest,
    double usual,
    double fastest,
    double spread,
    double lofted,
    boolean missedPass) {

  /** Sent on with no receiver: median 15.6 m/s, 5 to 95 % 7.8 to 24.2 (102 pucks). */
  public static final Delivery SENT = new Delivery(4, 15, 28, 11, 0.2, false);

  /** A pass that was not received: median 12.7 m/s, 5 to 95 % 5.8 to 22.9 (77 passes). */
  public static final Delivery MISSED_PASS = new Delivery(3, 9.5, 27.5, 4, 0.1, true);

  /** A shot at an empty net, elite men: from memory, graded low. */
  static final Delivery SHOT = new Delivery(14, 20, 30, 0, 0, false);

  /** Least and greatest loft of a flip, radians: 15 to 40 degrees (memory: 25 to 45). */
  static final double LEAST_LOFT = Math.toRadians(15);

  static final double MOST_LOFT = Math.toRadians(40);

  /**
   * Rejects speeds that do not ascend.
   *
   * @throws IllegalArgumentException for these
   */
  public Delivery {
    if (!(0 < slowest && slowest <= usual && usual <= fastest && fastest <= 60)) {
      throw new IllegalArgumentException(
          "release speeds ascend from above 0 to 60 m/s, not %s, %s, %s"
              .formatted(slowest, usual, fastest));
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
    return new Delivery(
        slowest * share, usual * share, fastest * share, spread, lofted, missedPass);
  }

  /** Seconds by which the other team is ahead in the race to the puck: it has read a pass. */
  double headStart() {
    return missedPass ? Fitted.HEAD_START : 0;
  }

  /** How many real ones were iced, of how many. */
  public Count iced() {
    return missedPass ? Fitted.MISSED_ICED : Fitted.SENT_ICED;
  }

  /** Whether the speed is known. */
  public boolean known() {
    return slowest == fastest;
  }

  /**
   * A release of one known speed.
   *
   * @param speed m/s
   */
  public Delivery atSpeed(double speed) {
    return new Delivery(speed, speed, speed, spread, lofted, missedPass);
  }
}
