package twostrides.review;

/**
 * One release short of center on a map.
 *
 * @param x metres from center ice, the releasing team attacking +x
 * @param y metres, positive to the left of the attack
 * @param outcome what came of it
 */
public record Mark(double x, double y, MarkOutcome outcome) {}
