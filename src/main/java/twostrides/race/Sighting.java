package twostrides.race;

/**
 * A skater who was seen at a release.
 *
 * @param racer where he was; his velocity counts only where it is known
 * @param speedKnown whether the velocity is known; where it is not, it is simulated about standing
 *     still
 */
public record Sighting(Racer racer, boolean speedKnown) {}
