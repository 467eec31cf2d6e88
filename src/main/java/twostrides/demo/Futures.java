package twostrides.demo;

import twostrides.rink.Rink;

/**
 * What would have come of it had he kept the puck: the world as it was at the release, started over
 * some times with the player carrying on, until he is at center or a checker gets to him.
 */
final class Futures {
  /** Worlds started over for each release. */
  static final int RUNS = 40;

  /** A carrier who is not there by then has not gained center, s. */
  static final double LONGEST_S = 9;

  /** Share of his top speed at which a player carries the puck, and what he gives of it. */
  private static final double WITH_PUCK = 0.84;

  private final Dice dice;
  private final Ice again;
  private final double line;

  Futures(Rink rink, Dice dice) {
    this.dice = dice;
    again = new Ice(rink, dice);
    line = new Spots(rink).toCenter();
  }

  /** The speed at which a player means to carry now, m/s. */
  static double speed(Body carrier, Dice dice) {
    return carrier.skater.legs().topSpeed() * carrier.legs * WITH_PUCK * dice.between(0.82, 1);
  }

  /** Share of futures in which the holder of the puck brings it to center. */
  double chance(Ice now) {
    int gained = 0;
    for (int i = 0; i < RUNS; i++) {
      again.likeAround(now);
      again.freshMinds();
      double speed = speed(again.holder().orElseThrow(), dice);
      Ice.CarryEnd end = again.carry(line, speed, LONGEST_S, again::step);
      gained += end == Ice.CarryEnd.THERE ? 1 : 0;
    }
    return (double) gained / RUNS;
  }
}
