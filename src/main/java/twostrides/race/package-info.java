/**
 * How a puck travels and how soon skaters get to it: the puck over ice, through the air and off the
 * boards, the skater's disc, the race that a rulebook asks about, and the chance of gaining center.
 * Metres, seconds, metres a second, radians; the frame of the team that releases.
 *
 * <p>May import {@code rink}, {@code rulebook} and {@code stats}.
 */
package twostrides.race;
