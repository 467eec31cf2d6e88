/**
 * Penalties become manpower at any instant: who is on the ice by penalties, who is shorthanded, and
 * why. Seconds of play.
 *
 * <p>Knows no sheet, no file and no icing book, which is why it stands below {@code rulebook}. May
 * import nothing of the project.
 */
package twostrides.rulebook.penalty;
