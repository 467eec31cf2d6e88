package twostrides.demo;

/** How close the nearest checker is, in the words of a sheet. */
enum Pressure {
  /** No checker near. */
  NONE,
  /** A checker there in a moment. */
  LIGHT,
  /** A checker on the player. */
  HEAVY;

  /** Seconds until a checker could be there below which pressure is heavy, and light; assumed. */
  private static final double HEAVY_S = 0.65;

  private static final double LIGHT_S = 1.3;

  /**
   * What somebody who logs the game calls it.
   *
   * @param contact seconds until the first checker could be there
   */
  static Pressure of(double contact) {
    return contact < HEAVY_S ? HEAVY : contact < LIGHT_S ? LIGHT : NONE;
  }
}
