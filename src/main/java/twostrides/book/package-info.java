/**
 * The review book: pages, pictures and tables written to a folder. Escaping lives here.
 *
 * <p>May import {@code review} and {@code chart}, {@code exits} for the tables it writes out, and
 * {@code stats} for the counts it shows.
 */
package twostrides.book;
