/**
 * How a puck travels: here the simplest honest bound on how long a released puck needs to the far
 * goal line. Metres, seconds, metres a second.
 *
 * <p>May import {@code rink}, {@code rulebook} and {@code rates}.
 */
package twostrides.race;
