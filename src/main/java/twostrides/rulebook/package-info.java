/**
 * Icing rules: what a book says, and a ruling with its reason. Metres and seconds.
 *
 * <p>May import {@code rink} and {@code penalty}.
 */
package twostrides.rulebook;
