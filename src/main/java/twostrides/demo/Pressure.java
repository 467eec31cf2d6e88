package twostrides.demo;

/** How close the nearest checker is, and what that means for a player who keeps the puck. */
enum Pressure {
  /** No checker near: 0.015 losses a second, assumed. */
  NONE("none", 0.015),
  /** A checker within reach in a moment: 0.075 losses a second, assumed. */
  LIGHT("light", 0.075),
  /** A checker on the carrier: 0.55 losses a second, assumed. */
  HEAVY("heavy", 0.55);

  /** Speed of a player who carries the puck up ice, m/s, assumed. */
  static final double CARRYING_SPEED = 5.2;

  private final String word;
  private final double lossesPerSecond;

  Pressure(String word, double lossesPerSecond) {
    this.word = word;
    this.lossesPerSecond = lossesPerSecond;
  }

  /** The word in the sheet. */
  String word() {
    return word;
  }

  /**
   * Chance of still having the puck after some seconds: exp(-losses a second x seconds).
   *
   * @param seconds 0 or more
   */
  double keeps(double seconds) {
    return StrictMath.exp(-lossesPerSecond * seconds);
  }

  /**
   * Chance of bringing the puck this far up ice. The chances of two stretches multiply to that of
   * both together, so a carry decided in parts is the same as one decided at once.
   *
   * @param metres 0 or more
   */
  double keepsFor(double metres) {
    return keeps(Math.max(0, metres) / CARRYING_SPEED);
  }

  /** Draws a pressure. */
  static Pressure draw(Dice dice, double heavyShare, double lightShare) {
    double mark = dice.between(0, 1);
    if (mark < heavyShare) {
      return HEAVY;
    }
    return mark < heavyShare + lightShare ? LIGHT : NONE;
  }
}
