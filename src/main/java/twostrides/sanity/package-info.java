/**
 * What a true sheet cannot break: shots are taken at the end that a team attacks, face-offs stand
 * on spots, a pass that was received is followed by its team. A sheet, or a map, that contradicts
 * itself is a doubt: with its figures, and with the setting that would make it right where one
 * does. Thresholds stand beside each test; below the least number of rows nothing is said.
 *
 * <p>May import {@code game}, {@code sheet} and {@code rink}.
 */
package twostrides.sanity;
