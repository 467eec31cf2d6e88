/**
 * How a puck travels: the simplest honest bound on its time to the far goal line, and its whole
 * path over ice, through the air and off the boards. Metres, seconds, metres a second, radians.
 *
 * <p>May import {@code rink}, {@code rulebook} and {@code rates}.
 */
package twostrides.race;
