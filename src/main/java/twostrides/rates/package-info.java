/**
 * Counts and what they can carry: intervals of shares and survival of waiting times. Counts stay
 * whole numbers in every interface; there is no hockey word here.
 *
 * <p>May import nothing else of the project.
 */
package twostrides.rates;
