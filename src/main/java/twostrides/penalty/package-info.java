/**
 * Penalties become manpower at any instant: who is on the ice by penalties, who is shorthanded, and
 * why. Seconds of play.
 *
 * <p>Knows no sheet and no file. May import nothing of the project.
 */
package twostrides.penalty;
