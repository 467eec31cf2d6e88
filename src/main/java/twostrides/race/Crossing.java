package twostrides.race;

import twostrides.rink.Place;

/**
 * A puck's center at a plane across the ice. The plane has no upper limit: a puck in the air above
 * a line crosses it too.
 *
 * @param time seconds since the release
 * @param place where, or where the puck was at the release when it began beyond the plane
 * @param height metres above the ice
 * @param speed horizontal speed, m/s
 */
public record Crossing(double time, Place place, double height, double speed) {}
