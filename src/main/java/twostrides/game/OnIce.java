package twostrides.game;

import twostrides.rink.Place;

/**
 * A skater whose place a row writes down.
 *
 * @param own whether he plays for the acting team
 * @param place where, metres, acting team's frame
 * @param speedKnown whether the row says how fast he goes
 * @param vx metres a second along the rink, same frame; 0 when not known
 * @param vy metres a second across the rink; 0 when not known
 */
public record OnIce(boolean own, Place place, boolean speedKnown, double vx, double vy) {

  /** The skater turned half round about center ice. */
  OnIce turned() {
    return new OnIce(own, place.seenByOpponent(), speedKnown, 0.0 - vx, 0.0 - vy);
  }
}
