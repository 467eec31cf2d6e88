/**
 * What is worth saying of a season, as numbers with their intervals: teams, players, moments for a
 * meeting, penalty kills, what icings cost, groups compared. The book writes them.
 *
 * <p>May import {@code season}, {@code exits}, {@code game}, {@code rink} and {@code stats}.
 */
package twostrides.findings;
