/**
 * The review book: pages, pictures and tables written to a folder. Escaping lives here.
 *
 * <p>May import {@code review} and {@code chart}, and {@code exits} for the tables it writes out.
 */
package twostrides.book;
