/**
 * Rows become one frame and one clock: touches, stoppages, penalties, and the manpower at an
 * instant. Places in metres in the acting team's frame, time in seconds of play since the period
 * began.
 *
 * <p>May import {@code sheet}, {@code rink} and {@code rulebook.penalty}.
 */
package twostrides.game;
