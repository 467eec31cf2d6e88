/**
 * Icing rules: what a book says, and a ruling with its reason. Metres and seconds.
 *
 * <p>May import {@code rink}, {@code toml} and {@code rulebook.penalty}, which imports nothing of
 * the icing rules.
 */
package twostrides.rulebook;
