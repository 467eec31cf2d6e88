/**
 * Counts and waiting times and what they can carry: intervals of shares and of differences, rates
 * adjusted by those of a group, survival of waits, resampling by cluster, and trends. Counts stay
 * whole numbers in every interface, times are seconds; there is no word of the game here. What
 * cannot be said is an empty optional or a case of its own, never NaN.
 *
 * <p>May import nothing else of the project.
 */
package twostrides.stats;
