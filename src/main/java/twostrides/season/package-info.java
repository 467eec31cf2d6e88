/**
 * All games of a season: their records as Tablesaw tables with one description each, what only a
 * season knows (what an icing costs, how carriers fare), and the flags. Every count of the book is
 * asked here.
 *
 * <p>May import {@code exits}, {@code game}, {@code race}, {@code rates} and {@code rink}.
 */
package twostrides.season;
