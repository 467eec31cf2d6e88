/**
 * Charts of a review: bars with JFreeChart, rink drawings with Java2D. Draws on a canvas that it is
 * given and writes no files.
 *
 * <p>May import {@code review}, {@code exits}, {@code rink} and {@code stats}.
 */
package twostrides.chart;
