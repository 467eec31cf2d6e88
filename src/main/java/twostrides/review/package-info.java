/**
 * What to show in a meeting: team and player summaries and the sentences of the opening page.
 *
 * <p>May import {@code exits} and {@code stats}.
 */
package twostrides.review;
