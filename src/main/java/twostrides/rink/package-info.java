/**
 * Rink descriptions, lines with a width, places and units. Lengths are metres; feet appear only
 * where a rink or a sheet is written in them. The frame has its origin at center ice and +x toward
 * the goal that the acting team attacks.
 *
 * <p>May import nothing else of the project.
 */
package twostrides.rink;
