package twostrides.demo;

import twostrides.rink.Place;

/**
 * A player with the puck.
 *
 * @param side the player's team
 * @param skater who
 * @param at where, metres in that team's frame
 * @param contact seconds until the first checker could be there
 */
record Carrier(Side side, Skater skater, Place at, double contact) implements Next {

  Pressure pressure() {
    return Pressure.of(contact);
  }

  /** The same player farther on. */
  Carrier movedTo(Place place) {
    return new Carrier(side, skater, place, contact);
  }
}
