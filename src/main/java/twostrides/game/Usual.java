package twostrides.game;

import twostrides.rink.Rink;

/**
 * What holds where a sheet map does not say.
 *
 * @param rink the rink's lengths
 * @param periodLength seconds of a regular period
 */
public record Usual(Rink rink, double periodLength) {

  /** The 200 by 85 foot rink and periods of twenty minutes. */
  public static final Usual DEFAULT = new Usual(Rink.NORTH_AMERICAN, 1200);

  /**
   * The same on another rink.
   *
   * @param other its lengths
   */
  public Usual on(Rink other) {
    return new Usual(other, periodLength);
  }
}
