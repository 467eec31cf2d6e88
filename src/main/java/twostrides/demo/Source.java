package twostrides.demo;

/**
 * What the sheet of a game says besides touches and stoppages: real sources differ.
 *
 * @param places where the skaters were, and how fast, as a tracking system has them
 * @param pressure how close the nearest checker was, in words
 * @param whistleTouches who got to an iced puck, at the second of the whistle
 */
record Source(boolean places, boolean pressure, boolean whistleTouches) {
  /** Every third game is tracked, every third tagged with pressure; the others have neither. */
  private static final int KINDS = 3;

  /** Every fifth game has whistle touches, from the second on: some of each kind. */
  private static final int TOUCHES = 5;

  /** That of a game of the season, from 1. */
  static Source of(int game) {
    return new Source(game % KINDS == 0, game % KINDS == 1, game % TOUCHES == 2);
  }
}
