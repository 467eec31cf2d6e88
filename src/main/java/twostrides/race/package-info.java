/**
 * How a puck travels and how soon a skater is there: bounds on a puck's travel, skaters by level,
 * their sprint and the places they can be at, how sure an arrival is, and the draws of a
 * simulation. Metres, seconds, metres a second.
 *
 * <p>May import {@code rink}, {@code rulebook} and {@code rates}.
 */
package twostrides.race;
