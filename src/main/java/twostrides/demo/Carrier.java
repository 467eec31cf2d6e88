package twostrides.demo;

import twostrides.rink.Place;

/**
 * A player with the puck.
 *
 * @param side the player's team
 * @param skater who
 * @param at where, metres in that team's frame
 * @param pressure how close the nearest checker is; it stays while this player has the puck
 */
record Carrier(Side side, Skater skater, Place at, Pressure pressure) {

  /** The same player farther on. */
  Carrier movedTo(Place place) {
    return new Carrier(side, skater, place, pressure);
  }
}
