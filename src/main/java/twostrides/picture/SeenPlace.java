package twostrides.picture;

import twostrides.rink.Place;

/**
 * A place that was clicked in a picture.
 *
 * @param place where, metres
 * @param error standard error in the direction in which the picture shows it worst, metres
 */
public record SeenPlace(Place place, double error) {}
