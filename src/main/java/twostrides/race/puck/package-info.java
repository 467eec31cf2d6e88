/**
 * How a released puck moves with nobody in its way: along the ice, through the air, off the boards
 * and round the corners, until it lies still, is in a net or over the glass. Metres, seconds,
 * metres a second, radians; the frame of the team that releases.
 *
 * <p>{@link twostrides.race.puck.PuckPath} is the whole path and the one to ask; it is a list of
 * {@link twostrides.race.puck.PuckPiece}, each on a {@link twostrides.race.puck.Track} at the speed
 * of a {@link twostrides.race.puck.Slide} and at the height of a {@link
 * twostrides.race.puck.Flight}.
 *
 * <p>May import {@code rink} only. {@code race} imports this package, never the other way round.
 */
package twostrides.race.puck;
