/**
 * What a skater can reach, the race that a rulebook asks about, the chance of gaining center, and
 * what other ways out would bring. How the puck moves stands in {@link twostrides.race.puck}, which
 * knows nothing of this package. Metres, seconds, metres a second, radians; the frame of the team
 * that releases.
 *
 * <p>{@link twostrides.race.MeasuredGain} is the race to the red line; {@link
 * twostrides.race.RaceModel} the race to an iced puck, one {@code Crowd} of skaters a simulation;
 * {@link twostrides.race.WaysOut} compares ways out. Random numbers are those of {@link
 * twostrides.race.SeededRandom}, numbers fitted on real games those of {@code Fitted}.
 *
 * <p>May import {@code rink}, {@code rulebook}, {@code rates}, {@code toml} and its own {@code
 * puck}.
 */
package twostrides.race;
