package twostrides.demo;

/**
 * What decides a game, and how much of the truth is told.
 *
 * @param game what happens
 * @param futures what would have happened; nothing of it changes the game
 * @param source what the sheet says
 * @param telling how much of the truth is worked out
 */
record Chance(Dice game, Dice futures, Source source, Telling telling) {
  /** Which dice besides those of the game. */
  private static final int FUTURES = 1;

  /** How much of the truth is worked out: futures take half the time of a game. */
  enum Telling {
    /** No chance of gaining center; it is 0 in the truth. */
    NO_FUTURES,
    /** The chance of those who let the puck go. */
    RELEASED,
    /** Also of those who kept it, to hold the futures against what happened. */
    KEPT_TOO
  }

  static Chance of(long seed, int number, Telling telling) {
    return new Chance(
        new Dice(seed, number), Dice.beside(seed, number, FUTURES), Source.of(number), telling);
  }
}
