package twostrides.exits;

import twostrides.game.Fixture;
import twostrides.race.SeededRandom;
import twostrides.race.SkaterLevel;
import twostrides.race.SkaterSet;

/**
 * What a run may choose about the race and the flags.
 *
 * @param seed seed of every simulation, together with the release's own id
 * @param simulations simulations of a release that an own-zone restart followed; the others take a
 *     tenth, 100 at the least
 * @param skaters what a skater of these games can do
 * @param threshold least chance of avoiding the restart at which a release is flagged, 0 to 1
 */
public record RaceSettings(long seed, int simulations, SkaterSet skaters, double threshold) {

  /** Simulations with which the race is off by less than a point: docs/checks.md. */
  public static final int DEFAULT_SIMULATIONS = 500;

  /** Seed 1, elite men, flagged from 0.6. Assumed. */
  public static final RaceSettings DEFAULT =
      new RaceSettings(1, DEFAULT_SIMULATIONS, SkaterLevel.ELITE_MEN, 0.6);

  /**
   * Settings at a level of play.
   *
   * @param seed seed of every simulation
   * @param simulations simulations of a release that a restart followed
   * @param level level of play
   * @param threshold least chance of avoiding the restart for a flag
   */
  public RaceSettings(long seed, int simulations, SkaterLevel level, double threshold) {
    this(seed, simulations, SkaterSet.of(level), threshold);
  }

  /** The level of play. */
  public SkaterLevel level() {
    return skaters.level();
  }

  /** Rejects simulations and a threshold that decide nothing. */
  public RaceSettings {
    if (simulations < 100 || simulations > 1_000_000) {
      throw new IllegalArgumentException("simulations are 100 to 1,000,000, not " + simulations);
    }
    if (!(threshold > 0 && threshold < 1)) {
      throw new IllegalArgumentException("a threshold lies between 0 and 1, not " + threshold);
    }
  }

  /** Simulations of a release that no restart followed. */
  public int fewer() {
    return Math.max(100, simulations / 10);
  }

  /**
   * The random numbers of a release.
   *
   * @param game its game
   * @param number its number in the game
   */
  public SeededRandom random(Fixture game, int number) {
    return new SeededRandom(seed, game.id() + "#" + number);
  }
}
